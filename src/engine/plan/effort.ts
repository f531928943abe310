/** Three-point estimates of effort: what to expect, and how wide it spreads. */

import { type Minutes, minutes } from '../units';

/** Least, likely and most, in minutes. */
export type ThreePoints = readonly [least: number, likely: number, most: number];

export type Effort = {
  readonly expected: Minutes;
  /** One standard deviation. */
  readonly spread: Minutes;
};

/**
 * The effort of several pieces of work done one after the other: expected (least + 4·likely + most)/6 each,
 * spread by the root of the summed variances ((most − least)/6)², in minutes.
 * Source: PERT (Malcolm and others, 1959); the pieces are taken as independent.
 */
export function effortOf(pieces: readonly ThreePoints[]): Effort {
  let expected = 0;
  let variance = 0;
  for (const [least, likely, most] of pieces) {
    expected += (least + 4 * likely + most) / 6;
    variance += ((most - least) / 6) ** 2;
  }
  return { expected: minutes(expected), spread: minutes(Math.sqrt(variance)) };
}
