/** Reads tokens into groups: one figure with one unit each, such as the two halves of `5-6 N·m (44-53 lbf·in)`. */

import { ok, type Refused, type Result, refuse } from '../base';
import {
  type MarkingNotUnderstood,
  notUnderstood,
  type PrintedNumber,
  type Token,
} from './marking-tokens';

export type Group<Unit extends string> = {
  readonly unit: Unit;
  readonly min?: PrintedNumber;
  readonly max?: PrintedNumber;
  readonly target?: PrintedNumber;
  readonly text: string;
};

export type UnitMissing = {
  readonly code: 'unit-missing';
  readonly text: string;
  readonly part: string;
};

type Refusals = MarkingNotUnderstood | UnitMissing;
type Limits = Pick<Group<string>, 'min' | 'max' | 'target'>;

/** Walks the tokens once; every number must end up in a group that has exactly one unit. */
export function groupsOf<Unit extends string>(
  text: string,
  tokens: readonly Token<Unit>[],
): Result<readonly Group<Unit>[], Refusals> {
  const groups: Group<Unit>[] = [];
  let at = 0;
  while (at < tokens.length) {
    if (tokens[at]?.kind === 'break') {
      at += 1;
      continue;
    }
    const cursor = new Cursor(tokens, at);
    const limits = readLimits(cursor);
    const part = text.slice(tokens[at]?.start, tokens[Math.max(at, cursor.at - 1)]?.end);
    if (limits === undefined || !isSound(limits)) return notUnderstood(text, part);
    const [unit, other] = cursor.units;
    if (other !== undefined) return notUnderstood(text, part);
    if (unit === undefined) return unitMissing(text, part);
    groups.push({ unit, ...limits, text: part });
    at = cursor.at;
  }
  return groups.length === 0 ? notUnderstood(text, text) : ok(groups);
}

function unitMissing(text: string, part: string): Refused<UnitMissing> {
  return refuse<UnitMissing>({ code: 'unit-missing', text, part });
}

/** A place in the tokens that remembers the different units it has passed. */
class Cursor<Unit extends string> {
  readonly units: Unit[] = [];

  constructor(
    private readonly tokens: readonly Token<Unit>[],
    public at: number,
  ) {}

  number(): PrintedNumber | undefined {
    const token = this.tokens[this.at];
    if (token?.kind !== 'number') return undefined;
    this.at += 1;
    this.skipUnit();
    return { value: token.value, halfStep: token.halfStep };
  }

  bound(): 'min' | 'max' | undefined {
    const token = this.tokens[this.at];
    if (token?.kind !== 'bound') return undefined;
    this.at += 1;
    return token.bound;
  }

  take(kind: 'to' | 'plus-minus' | 'percent'): boolean {
    if (!this.nextIs(kind)) return false;
    this.at += 1;
    return true;
  }

  nextIs(kind: Token<Unit>['kind'], ahead = 0): boolean {
    return this.tokens[this.at + ahead]?.kind === kind;
  }

  skipUnit(): void {
    const token = this.tokens[this.at];
    if (token?.kind !== 'unit') return;
    if (!this.units.includes(token.unit)) this.units.push(token.unit);
    this.at += 1;
  }
}

function readLimits(cursor: Cursor<string>): Limits | undefined {
  const bound = cursor.bound();
  if (bound !== undefined) return readBounded(cursor, bound);
  const first = cursor.number();
  if (first === undefined) return undefined;
  if (cursor.take('to')) return readUpTo(cursor, first);
  if (cursor.take('plus-minus')) return readTolerance(cursor, first);
  // "5 N·m max": the word belongs to the number before it unless another number follows
  if (cursor.nextIs('bound') && !cursor.nextIs('number', 1)) {
    const trailing = cursor.bound();
    cursor.skipUnit();
    return trailing === 'min' ? { min: first } : { max: first };
  }
  return { target: first };
}

function readBounded(cursor: Cursor<string>, bound: 'min' | 'max'): Limits | undefined {
  const first = cursor.number();
  if (first === undefined) return undefined;
  if (cursor.nextIs('to') && cursor.nextIs('bound', 1)) cursor.take('to');
  if (cursor.nextIs('to') || cursor.nextIs('plus-minus')) return undefined;
  if (!cursor.nextIs('bound') || !cursor.nextIs('number', 1)) {
    return bound === 'min' ? { min: first } : { max: first };
  }
  const second = cursor.bound();
  const other = cursor.number();
  if (second === bound || other === undefined) return undefined;
  return bound === 'min' ? { min: first, max: other } : { min: other, max: first };
}

function readUpTo(cursor: Cursor<string>, min: PrintedNumber): Limits | undefined {
  const max = cursor.number();
  const more = cursor.nextIs('to') || cursor.nextIs('plus-minus');
  const trailingBound = cursor.nextIs('bound') && !cursor.nextIs('number', 1);
  return max === undefined || more || trailingBound ? undefined : { min, max };
}

function readTolerance(cursor: Cursor<string>, target: PrintedNumber): Limits | undefined {
  const by = cursor.number();
  if (by === undefined) return undefined;
  const share = cursor.take('percent');
  cursor.skipUnit();
  const width = share ? (target.value * by.value) / 100 : by.value;
  const halfStep = share ? target.halfStep : target.halfStep + by.halfStep;
  return {
    min: { value: clean(target.value - width), halfStep },
    max: { value: clean(target.value + width), halfStep },
    target,
  };
}

/** Rids a sum of two decimals of the dust that binary fractions leave. */
function clean(value: number): number {
  return Number(value.toPrecision(12));
}

/** Torques and pressures are above zero, and a range does not run backwards. */
function isSound({ min, max, target }: Limits): boolean {
  const above = [min, max, target].every((limit) => limit === undefined || limit.value > 0);
  return above && (min === undefined || max === undefined || min.value <= max.value);
}
