/** One torque out of what a wrench typed, in the wrench's own unit where it typed none. */

import {
  type NewtonMetres,
  newtonMetresFrom,
  parseTorqueMarking,
  type TorqueUnit,
} from '../../engine/units';

export interface Shown {
  readonly value: NewtonMetres;
  /** N·m: half of the last digit that was shown. */
  readonly halfStep: number;
}

/** Undefined for anything that is not one plain value: a range, two units, words. */
export function readTyped(typed: string, unit: TorqueUnit): Shown | undefined {
  const text = typed
    .trim()
    .replace(/^\+/, '')
    .replace(/^0+(?=\d)/, '');
  const marked = parseTorqueMarking(text);
  const isBare = !marked.ok && marked.refusal.code === 'unit-missing';
  const read = isBare ? parseTorqueMarking(`${text} ${unit}`) : marked;
  if (!read.ok || read.value.figure === undefined || read.value.printed.length !== 1)
    return undefined;
  const { min, max, target } = read.value.figure;
  const [printed] = read.value.printed;
  if (target === undefined || min !== undefined || max !== undefined || printed === undefined)
    return undefined;
  const decimals = /^\d+[.,](\d+)/.exec(text)?.[1]?.length ?? 0;
  return { value: target, halfStep: newtonMetresFrom(0.5 * 10 ** -decimals, printed.unit) };
}
