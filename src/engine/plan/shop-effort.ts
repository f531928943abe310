/** What a step takes in this shop: the catalogue's estimate, giving way to the shop's own history as that grows. */

import { minutes } from '../units';
import { type Effort, effortOf, type ThreePoints } from './effort';

/** The catalogue's estimate weighs as much as this many builds of the shop's own. A choice of the house, no source. */
export const catalogueWeight = 5;

/**
 * Expected minutes and their spread from the catalogue's three points and the minutes the step really took, most of
 * them shrunk towards the catalogue while they are few. Credibility n/(n + k) with k = `catalogueWeight`
 * (Bühlmann, 1967), the spread pooled as the normal model with unknown variance pools it (Gelman and others, Bayesian
 * Data Analysis, 3.3). What took less than a third of the least or more than thrice the most was interrupted or tapped
 * late, and counts as that bound (winsorised).
 */
export function shopEffort(estimate: ThreePoints, taken: readonly number[]): Effort {
  const { expected, spread } = effortOf([estimate]);
  const [least, , most] = estimate;
  const kept = taken.map((value) => Math.min(Math.max(value, least / 3), most * 3));
  const count = kept.length;
  if (count === 0) return { expected, spread };
  const mean = kept.reduce((sum, value) => sum + value, 0) / count;
  const squares = kept.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const weight = count + catalogueWeight;
  const apart = ((count * catalogueWeight) / weight) * (mean - expected) ** 2;
  return {
    expected: minutes((count * mean + catalogueWeight * expected) / weight),
    spread: minutes(Math.sqrt((squares + catalogueWeight * spread ** 2 + apart) / weight)),
  };
}
