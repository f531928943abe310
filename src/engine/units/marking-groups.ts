/** Reads tokens into groups: one figure with one unit each, such as the two halves of `5-6 N·m (44-53 lbf·in)`. */

import { ok, type Refused, type Result, refuse } from '../base';
import { Cursor } from './marking-cursor';
import { type PrintedLimits, readLimits } from './marking-limits';
import { type MarkingNotUnderstood, notUnderstood, type Token } from './marking-tokens';

export type Group<Unit extends string> = PrintedLimits & {
  readonly unit: Unit;
  readonly text: string;
};

export type UnitMissing = {
  readonly code: 'unit-missing';
  readonly text: string;
  readonly part: string;
};

type Refusals = MarkingNotUnderstood | UnitMissing;

/** Walks the tokens once; every number must end up in a group that has exactly one unit. */
export function groupsOf<Unit extends string>(
  text: string,
  tokens: readonly Token<Unit>[],
): Result<readonly Group<Unit>[], Refusals> {
  const groups: Group<Unit>[] = [];
  let at = 0;
  while (at < tokens.length) {
    if (isBetweenFigures(tokens[at])) {
      at += 1;
      continue;
    }
    const cursor = new Cursor(tokens, at);
    const limits = readLimits(cursor);
    const start = closesBeforeItsUnit(cursor, tokens[at - 1]) ? at - 1 : at;
    const part = text.slice(tokens[start]?.start, tokens[Math.max(at, cursor.at - 1)]?.end);
    if (limits === undefined || !isSound(limits)) return notUnderstood(text, part);
    const [unit, other] = cursor.units;
    if (other !== undefined) return notUnderstood(text, part);
    if (unit === undefined) return unitMissing(text, part);
    groups.push({ unit, ...limits, text: part });
    at = cursor.at;
  }
  return groups.length === 0 ? notUnderstood(text, text) : ok(groups);
}

function isBetweenFigures(token: Token<string> | undefined): boolean {
  return token?.kind === 'break' || token?.kind === 'open' || token?.kind === 'close';
}

/** `(5-6) N·m`: the unit stands behind the bracket. */
function closesBeforeItsUnit(cursor: Cursor<string>, before: Token<string> | undefined): boolean {
  const isOutside = before?.kind === 'open' && cursor.units.length === 0;
  if (!isOutside || !cursor.nextIs('close') || !cursor.nextIs('unit', 1)) return false;
  cursor.take('close');
  cursor.skipUnit();
  return true;
}

function unitMissing(text: string, part: string): Refused<UnitMissing> {
  return refuse<UnitMissing>({ code: 'unit-missing', text, part });
}

/** Torques and pressures are above zero, and a range does not run backwards. */
function isSound({ min, max, target }: PrintedLimits): boolean {
  const above = [min, max, target].every((limit) => limit === undefined || limit.value > 0);
  return above && (min === undefined || max === undefined || min.value <= max.value);
}
