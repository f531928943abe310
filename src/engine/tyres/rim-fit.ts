/** Which tyre widths go with which inner rim width. */

import type { Millimetres } from '../units';

interface RimRow {
  readonly innerWidth: number;
  readonly narrowest: number;
  readonly widest: number;
}

/**
 * Tyre widths by inner rim width, mm. Source: the ETRTO table as reprinted by tyre and rim makers, its narrow side as
 * widened since 2020; all from memory. The makers' own lists rule.
 */
export const tyreWidthsByRim: readonly RimRow[] = [
  { innerWidth: 13, narrowest: 18, widest: 25 },
  { innerWidth: 15, narrowest: 23, widest: 32 },
  { innerWidth: 17, narrowest: 25, widest: 52 },
  { innerWidth: 19, narrowest: 25, widest: 62 },
  { innerWidth: 21, narrowest: 28, widest: 64 },
  { innerWidth: 23, narrowest: 30, widest: 66 },
  { innerWidth: 25, narrowest: 32, widest: 71 },
  { innerWidth: 30, narrowest: 47, widest: 81 },
  { innerWidth: 35, narrowest: 54, widest: 84 },
  { innerWidth: 40, narrowest: 62, widest: 102 },
  { innerWidth: 50, narrowest: 71, widest: 118 },
  { innerWidth: 65, narrowest: 88, widest: 125 },
  { innerWidth: 80, narrowest: 98, widest: 130 },
];

/**
 * Whether a tyre of this nominal width, mm, is usual on a rim of this inner width, mm. No means: ask both makers before
 * riding. Between two rows the stricter bound of each counts; outside the table the answer is no.
 */
export function rimFits(width: Millimetres, rimInner: Millimetres): boolean {
  const below = tyreWidthsByRim.filter((row) => row.innerWidth <= rimInner).at(-1);
  const above = tyreWidthsByRim.find((row) => row.innerWidth >= rimInner);
  if (below === undefined || above === undefined) return false;
  return width >= above.narrowest && width <= below.widest;
}

/**
 * The inner rim width, mm, that suits a tyre of this width, mm, best: 65 % below 30 mm, 55 % from there on.
 * Source: rule of thumb kept with ISO 5775.
 */
export function usualRimWidth(width: Millimetres): number {
  return width * (width < 30 ? 0.65 : 0.55);
}
