/** How hard a tyre may be inflated on its rim, and what to suggest inside that. */

import { ok, type Result, refuse } from '../base';
import {
  type Kilograms,
  type Kilopascals,
  kilopascals,
  kilopascalsFrom,
  type Millimetres,
} from '../units';
import type { Tyre } from './tyre-marking';

export interface Rim {
  /** Between the flanges, mm. */
  readonly innerWidth?: Millimetres | undefined;
  /** As marked on the rim, kPa. */
  readonly max?: Kilopascals | undefined;
  readonly hookless?: boolean | undefined;
}

export interface InflationWindow {
  readonly min?: Kilopascals;
  readonly max: Kilopascals;
  readonly limitedBy: 'tyre' | 'rim' | 'hookless';
}

/** 5 bar. Source: ISO 4210-1, 2.27 as collected; ETRTO. */
export const hooklessCeiling = kilopascals(500);

/**
 * The pressures that tyre and rim both allow, in kPa (gauge): the ceiling is the lowest of tyre maximum, rim maximum and,
 * on a hookless rim, 5 bar. Refuses when the tyre's maximum is not known, because no rim says what a tyre can hold, and
 * when the tyre asks for more than the rim allows. Source: ISO 4210-1, 2.27; ETRTO.
 */
export function inflationWindow(asked: {
  readonly tyre: Pick<Tyre, 'min' | 'max'>;
  readonly rim: Rim;
}): Result<InflationWindow, TyreMaximumUnknown | InflationWindowEmpty> {
  const { min, max } = asked.tyre;
  if (max === undefined) return refuse({ code: 'tyre-maximum-unknown' });
  let ceiling: Omit<InflationWindow, 'min'> = { max, limitedBy: 'tyre' };
  if (asked.rim.max !== undefined && asked.rim.max < ceiling.max) {
    ceiling = { max: asked.rim.max, limitedBy: 'rim' };
  }
  if (asked.rim.hookless && hooklessCeiling < ceiling.max) {
    ceiling = { max: hooklessCeiling, limitedBy: 'hookless' };
  }
  if (min === undefined) return ok(ceiling);
  if (min > ceiling.max) return refuse({ code: 'inflation-window-empty', min, ...ceiling });
  return ok({ min, ...ceiling });
}
export type TyreMaximumUnknown = { readonly code: 'tyre-maximum-unknown' };
export type InflationWindowEmpty = Required<InflationWindow> & {
  readonly code: 'inflation-window-empty';
};

/**
 * Advice inside the window, in kPa, never outside it. With the load on the wheel (kg): the pressure at which the tyre
 * drops by 15 %. Without: the middle of the range. Nothing when there is neither a load nor a lower end.
 * Source: DOI 10.5281/zenodo.20671797, whose fit differs from others by 10–15 %; the middle: common practice, no source.
 */
export function suggestInflation(asked: {
  readonly window: Pick<InflationWindow, 'min' | 'max'>;
  readonly width: Millimetres;
  readonly wheelLoad?: Kilograms | undefined;
}): Kilopascals | undefined {
  const { min, max } = asked.window;
  if (asked.wheelLoad === undefined) {
    return min === undefined ? undefined : kilopascals((min + max) / 2);
  }
  const wanted = fifteenPercentDrop(asked.wheelLoad, asked.width);
  return kilopascals(Math.min(max, Math.max(min ?? 0, wanted)));
}

const POUND_IN_KILOGRAMS = 0.45359237;

/**
 * P = 600·L/W² + 0.75·W − 25, with P in psi, L in lb, W in mm, falls with W until W³ = 1600·L and then rises, which no
 * tyre does. From there on its lowest value is kept, or a second published fit when that is lower: P = 120·L/W^1.5,
 * made with tyres up to 102 mm.
 */
function fifteenPercentDrop(wheelLoad: Kilograms, width: Millimetres): Kilopascals {
  const pounds = wheelLoad / POUND_IN_KILOGRAMS;
  const turn = Math.cbrt(1600 * pounds);
  const falling = Math.min(width, turn);
  const first = (600 * pounds) / falling ** 2 + 0.75 * falling - 25;
  const psi = width <= turn ? first : Math.min(first, (120 * pounds) / width ** 1.5);
  return kilopascalsFrom(psi, 'psi');
}
