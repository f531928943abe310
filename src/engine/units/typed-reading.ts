/** Reads what an electronic wrench types as if it were a keyboard: `5.02 N.m⏎`, `+005.0 Nm`, `44.3 in-lb`, `5,02`. */

import { ok, type Result } from '../base';
import { type MarkingNotUnderstood, notUnderstood, tokensOf } from './marking-tokens';
import type { NewtonMetres } from './quantities';
import { newtonMetresFrom, type TorqueUnit } from './torque-units';
import { torqueSpellings } from './torque-writing';

export type TypedReading = {
  /** As typed, in `unit`. */
  readonly value: number;
  readonly unit: TorqueUnit;
  /** False when nothing but the number was typed and `unit` is the wrench's own. */
  readonly unitTyped: boolean;
  readonly torque: NewtonMetres;
  /** N·m: half of the last digit typed, by which the wrench may have rounded. */
  readonly halfStep: NewtonMetres;
};

/**
 * One reading, above zero, in the unit typed or else in `fallbackUnit`; blanks, Enter and Tab round it do not count. A sign
 * says which way the wrench was turned: plus the way a right-hand thread tightens, minus the way a left-hand one does, so
 * that the other one is a bolt being loosened. Refuses that, and whatever is not one number and at most one unit, naming the
 * part: a second reading, a counter or a state typed with it, a comma before three digits, which may mean a thousand.
 */
export function parseTypedReading(
  text: string,
  fallbackUnit: TorqueUnit,
  hand: 'right' | 'left' = 'right',
): Result<TypedReading, MarkingNotUnderstood> {
  const typed = text.normalize('NFKC').replace(/^[\s\0]+|[\s\0]+$/g, '');
  const sign = /^[-+−]\s*/.exec(typed)?.[0] ?? '';
  const tightens = hand === 'right' ? '+' : '-';
  if (sign !== '' && sign.trim().replace('−', '-') !== tightens) {
    return notUnderstood(text, sign.trim());
  }
  const rest = typed.slice(sign.length);
  if (!/^[\d.]/.test(rest)) return notUnderstood(text, rest === '' ? text : rest);
  const tokens = tokensOf(rest, { spellings: torqueSpellings });
  if (!tokens.ok) return notUnderstood(text, tokens.refusal.part);
  const [number, unit, more] = tokens.value;
  if (number?.kind !== 'number' || number.value <= 0) return notUnderstood(text, rest);
  if (unit !== undefined && unit.kind !== 'unit')
    return notUnderstood(text, rest.slice(unit.start));
  if (more !== undefined) return notUnderstood(text, rest.slice(more.start));
  const inUnit = unit?.unit ?? fallbackUnit;
  return ok({
    value: number.value,
    unit: inUnit,
    unitTyped: unit !== undefined,
    torque: newtonMetresFrom(number.value, inUnit),
    halfStep: newtonMetresFrom(number.halfStep, inUnit),
  });
}
