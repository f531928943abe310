/** The units torque is printed in, and their exact size in newton metres. */

import { FOOT_IN_INCHES, INCH_IN_METRES, POUND_FORCE_IN_NEWTONS, STANDARD_GRAVITY } from './exact';
import { type NewtonMetres, newtonMetres } from './quantities';

export const torqueUnits = ['N·m', 'lbf·in', 'lbf·ft', 'kgf·cm', 'kgf·m'] as const;

export type TorqueUnit = (typeof torqueUnits)[number];

const POUND_FORCE_INCH = POUND_FORCE_IN_NEWTONS * INCH_IN_METRES;

const newtonMetresByUnit: Readonly<Record<TorqueUnit, number>> = {
  N·m: 1,
  lbf·in: POUND_FORCE_INCH,
  lbf·ft: POUND_FORCE_INCH * FOOT_IN_INCHES,
  kgf·cm: STANDARD_GRAVITY / 100,
  kgf·m: STANDARD_GRAVITY,
};

/** A torque in newton metres, from a value in any unit torque is printed in. */
export function newtonMetresFrom(value: number, unit: TorqueUnit): NewtonMetres {
  return newtonMetres(value * newtonMetresByUnit[unit]);
}

/** A torque as a plain number in the given unit. */
export function newtonMetresTo(torque: NewtonMetres, unit: TorqueUnit): number {
  return torque / newtonMetresByUnit[unit];
}
