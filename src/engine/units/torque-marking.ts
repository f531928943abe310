/** Reads and writes torque as it is printed beside a bolt: `4–6 N·m`, `max. 5 Nm`, `5-6 N.m (44-53 in.lb)`. */

import type { Result } from '../base';
import {
  type Limits,
  type Marking,
  type MarkingRefusal,
  readMarking,
  type UnitFamily,
} from './marking';
import type { NewtonMetres } from './quantities';
import { newtonMetresFrom, newtonMetresTo, type TorqueUnit } from './torque-units';
import { torqueWriting } from './torque-writing';

export type TorqueMarking = Marking<NewtonMetres, TorqueUnit>;

const family: UnitFamily<NewtonMetres, TorqueUnit> = {
  base: 'N·m',
  from: newtonMetresFrom,
  writing: torqueWriting,
};

/**
 * Reads a torque marking into limits in N·m. A figure printed in two units comes back only when some one value
 * rounds to both; otherwise `disagree` is true, each printed range is kept and none is chosen. Of two that agree the
 * one in N·m is the figure. Refuses what it does not understand whole, naming the part, and a number without a unit.
 */
export function parseTorqueMarking(text: string): Result<TorqueMarking, MarkingRefusal> {
  return readMarking(text, family);
}

/**
 * Writes limits as a marking in one unit, rounded to `decimals` (0 to 6); what it writes, `parseTorqueMarking` reads.
 * A target inside a whole range is not written: a marking says the range or the value.
 */
export function writeTorqueMarking(
  limits: Limits<NewtonMetres>,
  unit: TorqueUnit = 'N·m',
  decimals = 1,
): string {
  const { min, max, target } = limits;
  const write = (torque: NewtonMetres) => Number(newtonMetresTo(torque, unit).toFixed(decimals));
  if (min !== undefined && max !== undefined) return `${write(min)}–${write(max)} ${unit}`;
  const value = target === undefined ? [] : [`${write(target)} ${unit}`];
  const upper = max === undefined ? [] : [`max ${write(max)} ${unit}`];
  const lower = min === undefined ? [] : [`min ${write(min)} ${unit}`];
  const [first = '', second] = [...value, ...upper, ...lower];
  return second === undefined ? first : `${first} (${second})`;
}
