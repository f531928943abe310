/** The quantities of the trade, each a number in one unit only. */

import { assert, type Branded } from '../base';

export type NewtonMetres = Branded<'N·m'>;
export type Newtons = Branded<'N'>;
export type Kilopascals = Branded<'kPa'>;
export type Millimetres = Branded<'mm'>;
export type Kilograms = Branded<'kg'>;
export type Minutes = Branded<'min'>;

export const newtonMetres = (value: number): NewtonMetres => quantity(value);
export const newtons = (value: number): Newtons => quantity(value);
export const kilopascals = (value: number): Kilopascals => quantity(value);
export const millimetres = (value: number): Millimetres => quantity(value);
export const kilograms = (value: number): Kilograms => quantity(value);
export const minutes = (value: number): Minutes => quantity(value);

/** The one place where a plain number takes on a unit; a number that is not finite is a bug. */
function quantity<Unit extends string>(value: number): Branded<Unit> {
  assert(Number.isFinite(value), `a quantity must be a finite number, not ${value}`);
  return value as Branded<Unit>; // a brand exists only in the type
}
