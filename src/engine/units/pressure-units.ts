/** The units tyre pressure is printed in, and their exact size in kilopascals. */

import { INCH_IN_METRES, POUND_FORCE_IN_NEWTONS } from './exact';
import { type Kilopascals, kilopascals } from './quantities';

export const pressureUnits = ['kPa', 'bar', 'psi'] as const;

export type PressureUnit = (typeof pressureUnits)[number];

const kilopascalsByUnit: Readonly<Record<PressureUnit, number>> = {
  kPa: 1,
  bar: 100,
  psi: POUND_FORCE_IN_NEWTONS / INCH_IN_METRES ** 2 / 1000,
};

/** A gauge pressure in kilopascals, from a value in any unit pressure is printed in. */
export function kilopascalsFrom(value: number, unit: PressureUnit): Kilopascals {
  return kilopascals(value * kilopascalsByUnit[unit]);
}

/** A gauge pressure as a plain number in the given unit. */
export function kilopascalsTo(pressure: Kilopascals, unit: PressureUnit): number {
  return pressure / kilopascalsByUnit[unit];
}
