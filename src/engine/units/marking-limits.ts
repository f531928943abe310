/** Reads one figure out of tokens: a range, a bound, a value, or a value with its tolerance. */

import type { Cursor } from './marking-cursor';
import type { PrintedNumber } from './marking-tokens';

export type PrintedLimits = {
  readonly min?: PrintedNumber;
  readonly max?: PrintedNumber;
  readonly target?: PrintedNumber;
};

type Read = PrintedLimits | undefined;

/** The figure that starts at the cursor, the cursor left after it; none when it makes no sense as one. */
export function readLimits(cursor: Cursor<string>): Read {
  const bound = cursor.bound();
  if (bound !== undefined) return readBounded(cursor, bound);
  if (cursor.take('between')) return readBetween(cursor);
  const first = cursor.number();
  if (first === undefined) return undefined;
  if (isTolerance(cursor)) return readTolerance(cursor, first);
  if (cursor.take('to')) return readUpTo(cursor, first);
  if (cursor.hasTrailingBound()) return readTrailing(cursor, first);
  return { target: first };
}

function readBounded(cursor: Cursor<string>, bound: 'min' | 'max'): Read {
  const first = cursor.number();
  if (first === undefined) return undefined;
  const isJoined = cursor.nextIs('to') || (cursor.nextIs('break') && cursor.units.length === 0);
  if (isJoined && cursor.nextIs('bound', 1) && cursor.nextIs('number', 2)) cursor.at += 1;
  if (cursor.nextIs('to') || isTolerance(cursor)) return undefined;
  if (!cursor.nextIs('bound') || !cursor.nextIs('number', 1)) return boundedBy(bound, first);
  const second = cursor.bound();
  const other = cursor.number();
  return second === bound || other === undefined
    ? undefined
    : { ...boundedBy(bound, first), ...boundedBy(second, other) };
}

/** `between 4 and 6`, `from 4 to 6`. */
function readBetween(cursor: Cursor<string>): Read {
  const min = cursor.number();
  if (min === undefined || !(cursor.take('and') || cursor.take('to'))) return undefined;
  return readUpTo(cursor, min);
}

function readUpTo(cursor: Cursor<string>, min: PrintedNumber): Read {
  const max = cursor.number();
  const more = cursor.nextIs('to') || isTolerance(cursor);
  return max === undefined || more || cursor.hasTrailingBound() ? undefined : { min, max };
}

/** `5 N·m max`, `4 (min) - 6 (max) N·m`. */
function readTrailing(cursor: Cursor<string>, first: PrintedNumber): Read {
  const bound = cursor.bound();
  cursor.skipUnit();
  if (!cursor.nextAre('to', 'number', 'bound')) return boundedBy(bound, first);
  cursor.take('to');
  const second = cursor.number();
  const other = cursor.bound();
  cursor.skipUnit();
  return second === undefined || other === bound
    ? undefined
    : { ...boundedBy(bound, first), ...boundedBy(other, second) };
}

function boundedBy(bound: 'min' | 'max' | undefined, number: PrintedNumber): PrintedLimits {
  return bound === 'min' ? { min: number } : { max: number };
}

/** `±1`, `+1/−0`, `−0/+1`, each perhaps in brackets. */
function isTolerance(cursor: Cursor<string>): boolean {
  return (
    cursor.nextAre('plus-minus') ||
    cursor.nextAre('plus') ||
    cursor.nextAre('open', 'plus-minus') ||
    cursor.nextAre('open', 'plus') ||
    cursor.nextAre('open', 'to') ||
    startsBelow(cursor)
  );
}

/** A minus that a plus answers is no dash of a range. */
function startsBelow(cursor: Cursor<string>): boolean {
  return (
    cursor.nextAre('to', 'number', 'plus') ||
    cursor.nextAre('to', 'number', 'break', 'plus') ||
    cursor.nextAre('to', 'number', 'percent', 'plus') ||
    cursor.nextAre('to', 'number', 'percent', 'break', 'plus')
  );
}

function readTolerance(cursor: Cursor<string>, target: PrintedNumber): Read {
  const opened = cursor.take('open');
  const widths = cursor.take('plus-minus') ? readEven(cursor, target) : readUneven(cursor, target);
  if (widths === undefined || (opened && !cursor.take('close'))) return undefined;
  cursor.skipUnit();
  const { above, below } = widths;
  return {
    min: { value: clean(target.value - below.value), halfStep: below.halfStep },
    max: { value: clean(target.value + above.value), halfStep: above.halfStep },
    target,
  };
}

type Widths = { readonly above: PrintedNumber; readonly below: PrintedNumber };

function readEven(cursor: Cursor<string>, target: PrintedNumber): Widths | undefined {
  const width = readWidth(cursor, target);
  return width && { above: width, below: width };
}

/** One plus and one minus, in either order; a nought needs no sign. */
function readUneven(cursor: Cursor<string>, target: PrintedNumber): Widths | undefined {
  const first = readSigned(cursor, target);
  cursor.take('break');
  const second = readSigned(cursor, target);
  if (first === undefined || second === undefined) return undefined;
  const isUnder = (one: Signed) =>
    one.sign === 'minus' || (one.sign === undefined && one.width.value === 0);
  const isOver = (one: Signed) =>
    one.sign === 'plus' || (one.sign === undefined && one.width.value === 0);
  if (isOver(first) && isUnder(second)) return { above: first.width, below: second.width };
  if (isUnder(first) && isOver(second)) return { above: second.width, below: first.width };
  return undefined;
}

type Signed = { readonly sign: 'plus' | 'minus' | undefined; readonly width: PrintedNumber };

function readSigned(cursor: Cursor<string>, target: PrintedNumber): Signed | undefined {
  const plus = cursor.take('plus');
  const minus = !plus && cursor.take('to');
  const width = readWidth(cursor, target);
  const sign = plus ? ('plus' as const) : minus ? ('minus' as const) : undefined;
  return width && { sign, width };
}

/** A width in the figure's own unit or in per cent of the target. */
function readWidth(cursor: Cursor<string>, target: PrintedNumber): PrintedNumber | undefined {
  const by = cursor.number();
  if (by === undefined) return undefined;
  const share = cursor.take('percent');
  cursor.skipUnit();
  return {
    value: share ? (target.value * by.value) / 100 : by.value,
    halfStep: share ? target.halfStep : target.halfStep + by.halfStep,
  };
}

/** Rids a sum of two decimals of the dust that binary fractions leave. */
function clean(value: number): number {
  return Number(value.toPrecision(12));
}
