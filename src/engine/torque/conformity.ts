/** A measured value against limits when the measurement itself is uncertain: guard bands and probabilities. */

import { normalBelow, normalBetween, normalQuantile } from './normal';

type Limits = { readonly min?: number | undefined; readonly max?: number | undefined };

/**
 * What is known of a measurement's error, in the value's own unit: its standard uncertainty, errors normally distributed, or
 * the greatest error there can be, all equally likely (GUM, JCGM 100:2008, 4.3.7).
 */
export type Uncertainty =
  | { readonly distribution: 'normal'; readonly standard: number }
  | { readonly distribution: 'rectangular'; readonly halfWidth: number };

/** The probability, 0 to 1, that the true value lies within the limits, given the measured one (JCGM 106:2012, clause 7). */
export function conformityProbability(
  value: number,
  { min = -Infinity, max = Infinity }: Limits,
  uncertainty: Uncertainty,
): number {
  if (uncertainty.distribution === 'normal' && uncertainty.standard > 0) {
    const { standard } = uncertainty;
    return normalBetween((min - value) / standard, (max - value) / standard);
  }
  const halfWidth = uncertainty.distribution === 'rectangular' ? uncertainty.halfWidth : 0;
  if (halfWidth > 0) {
    const from = Math.max(min, value - halfWidth);
    const to = Math.min(max, value + halfWidth);
    const share = Math.max(0, to - from) / (2 * halfWidth);
    return share > 1 - DUST ? 1 : share;
  }
  return value >= min && value <= max ? 1 : 0;
}

/** The expanded uncertainty U, k = 2 for a normal distribution; a rectangular one reaches no further than its half width. */
export function expandedUncertainty(uncertainty: Uncertainty): number {
  return uncertainty.distribution === 'normal' ? 2 * uncertainty.standard : uncertainty.halfWidth;
}

export const guardedVerdicts = ['pass', 'conditional pass', 'conditional fail', 'fail'] as const;

export type GuardedVerdict = (typeof guardedVerdicts)[number];

/**
 * The four answers with a guard band w (the value's own unit) on either side of each limit: pass inside the limits less w,
 * fail beyond them by more than w, conditional between, the limits themselves on the better side (ILAC-G8:09/2019, 4.2.3).
 */
export function guardedVerdict(value: number, limits: Limits, guard: number): GuardedVerdict {
  const { min = -Infinity, max = Infinity } = limits;
  const room = Math.min(value - min, max - value);
  const dust = DUST * Math.abs(value);
  if (room >= guard - dust) return 'pass';
  if (room >= -dust) return 'conditional pass';
  return room >= -guard - dust ? 'conditional fail' : 'fail';
}

/**
 * The guard band, as a share of the expanded uncertainty U (coverage factor k), that keeps a confidence of conformity
 * (0.5 to 1) at one limit: 0.82 for 95 % and k = 2, which ISO 14253-1:2017 and ILAC-G8 print as 0.83.
 */
export function guardFactor(confidence: number, k = 2): number {
  return normalQuantile(confidence) / k;
}

/** The greatest probability that a value accepted with a guard band of `share` × U is beyond its limit (ILAC-G8, table 1). */
export function falseAcceptance(share: number, k = 2): number {
  return normalBelow(-k * share);
}

const DUST = 1e-9;
