/** Whether rider, luggage and bike stay within the total that the maker allows. */

import { ok, type Result, refuse } from '../base';
import { type Kilograms, kilograms } from '../units';

export interface LoadAsked {
  /** Greatest total of rider, luggage and bike that the maker allows, kg. */
  readonly limit?: Kilograms | undefined;
  readonly rider: Kilograms;
  readonly luggage?: Kilograms | undefined;
  readonly bike?: Kilograms | undefined;
}

export interface LoadWithin {
  readonly total: Kilograms;
  readonly limit: Kilograms;
  /** What may still be added, kg. */
  readonly left: Kilograms;
  /** The weights that were not given and so are not in the total. */
  readonly notCounted: readonly ('luggage' | 'bike')[];
}

/**
 * Adds up what is known, in kg, and compares it with the maker's limit (the limit itself is allowed). Refuses when no
 * limit is known or the total is over it. Source: the maker's own limit; ISO 4210-2 asks that it be stated (from memory).
 */
export function loadCheck({
  limit,
  rider,
  luggage,
  bike,
}: LoadAsked): Result<LoadWithin, LoadLimitUnknown | LoadOverLimit> {
  const total = toTheGram(rider + (luggage ?? 0) + (bike ?? 0));
  if (limit === undefined) return refuse({ code: 'load-limit-unknown', total });
  if (total > limit) {
    return refuse({ code: 'load-over-limit', total, limit, over: toTheGram(total - limit) });
  }
  const notCounted = [
    ...(luggage === undefined ? (['luggage'] as const) : []),
    ...(bike === undefined ? (['bike'] as const) : []),
  ];
  return ok({ total, limit, left: toTheGram(limit - total), notCounted });
}
export type LoadLimitUnknown = { readonly code: 'load-limit-unknown'; readonly total: Kilograms };
export type LoadOverLimit = {
  readonly code: 'load-over-limit';
  readonly total: Kilograms;
  readonly limit: Kilograms;
  readonly over: Kilograms;
};

/** No scale here reads finer, and a sum of decimals must not go over a limit by a rounding error. */
function toTheGram(weight: number): Kilograms {
  return kilograms(Math.round(weight * 1000) / 1000);
}
