/** Whether a measured value lies inside its limits, as far as the measurement can tell. */

import type { Limit } from '../plan';

export const judgements = ['inside', 'outside', 'undecided'] as const;
export type Judgement = (typeof judgements)[number];

/**
 * Judges a value against limits in the value's own unit. `uncertainty` is the expanded uncertainty (k = 2), 0 when
 * none is stated. Inside: within the limits reduced by it, a value exactly on a limit counting as inside. Outside:
 * beyond a limit by more than it. Otherwise, or with no limit or no finite value to judge, undecided.
 * Source: ISO 14253-1 and ILAC-G8:09/2019 (guard band of the whole expanded uncertainty, not of 0.83 of it).
 */
export function judgeMeasure(
  limit: Pick<Limit, 'min' | 'max'>,
  value: number,
  uncertainty = 0,
): Judgement {
  const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } = limit;
  const hasLimit = Number.isFinite(min) || Number.isFinite(max);
  if (!hasLimit || !Number.isFinite(value)) return 'undecided';
  const guard = Math.abs(uncertainty);
  if (isBeyond(min - guard, value) || isBeyond(value, max + guard)) return 'outside';
  const clearOfMin = value >= min + guard || isSame(value, min + guard);
  const clearOfMax = value <= max - guard || isSame(value, max - guard);
  return clearOfMin && clearOfMax ? 'inside' : 'undecided';
}

function isBeyond(greater: number, lesser: number): boolean {
  return greater > lesser && !isSame(greater, lesser);
}

/** Sums of decimal readings leave dust in the last binary digits (0.3 − 0.1 is not 0.2): it decides nothing. */
function isSame(a: number, b: number): boolean {
  const greatest = Math.max(Math.abs(a), Math.abs(b));
  return Number.isFinite(greatest) && Math.abs(a - b) <= 1e-9 * greatest;
}
