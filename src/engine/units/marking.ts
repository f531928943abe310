/** Reads a marking as printed: every unit it carries, the figure they give, and whether they disagree. */

import { ok, type Result, refuse } from '../base';
import { type Group, groupsOf, type UnitMissing } from './marking-groups';
import {
  type MarkingNotUnderstood,
  type PrintedNumber,
  tokensOf,
  type Writing,
} from './marking-tokens';

/** Limits of a figure: any of the three may be absent, never all. */
export type Limits<Quantity extends number> = {
  readonly min?: Quantity;
  readonly max?: Quantity;
  readonly target?: Quantity;
};

/** One printed figure: its numbers in the unit as printed, and the same in the base unit. */
export type Printed<Quantity extends number, Unit extends string> = Limits<number> & {
  readonly unit: Unit;
  /** As printed, and readable by itself: a bound it shares, or its other half, stands in it too. */
  readonly text: string;
  readonly inBaseUnit: Limits<Quantity>;
};

export type Marking<Quantity extends number, Unit extends string> = {
  /** Absent when the printed units disagree by more than their rounding explains. */
  readonly figure?: Limits<Quantity>;
  readonly printed: readonly Printed<Quantity, Unit>[];
  readonly units: readonly Unit[];
  readonly disagree: boolean;
};

export type MarkingRefusal = MarkingNotUnderstood | UnitMissing;

/** How a family of units is read: the first spelling that fits wins; the base unit's figure is preferred. */
export type UnitFamily<Quantity extends number, Unit extends string> = {
  readonly base: Unit;
  readonly writing: Writing<Unit>;
  readonly from: (value: number, unit: Unit) => Quantity;
};

export function readMarking<Quantity extends number, Unit extends string>(
  text: string,
  family: UnitFamily<Quantity, Unit>,
): Result<Marking<Quantity, Unit>, MarkingRefusal> {
  const plain = text.normalize('NFKC');
  const tokens = tokensOf(plain, family.writing);
  if (!tokens.ok) return refuse({ ...tokens.refusal, text });
  const read = groupsOf(plain, tokens.value);
  if (!read.ok) return refuse({ ...read.refusal, text });
  const groups = joined(withInheritedBounds(read.value));
  const printed = groups.map((group) => printedOf(group, family));
  const disagree = groups.some((group) => !agrees(groups[0] ?? group, group, family.from));
  const chosen = printed.find((one) => one.unit === family.base) ?? printed[0];
  return ok({
    ...(chosen === undefined || disagree ? {} : { figure: chosen.inBaseUnit }),
    printed,
    units: [...new Set(groups.map((group) => group.unit))],
    disagree,
  });
}

/** In `max 5 N·m (44 lbf·in)` the word holds for the bracket too: a bare value in another unit takes the bound on. */
function withInheritedBounds<Unit extends string>(
  groups: readonly Group<Unit>[],
): readonly Group<Unit>[] {
  const heirs: Group<Unit>[] = [];
  for (const group of groups) {
    const before = heirs.at(-1);
    const { target, min, max, unit, text } = group;
    const bare = target !== undefined && min === undefined && max === undefined;
    const bound = before === undefined || before.unit === unit ? undefined : onlyBound(before);
    heirs.push(
      bare && bound !== undefined ? { unit, text: `${bound} ${text}`, [bound]: target } : group,
    );
  }
  return heirs;
}

function onlyBound({ min, max, target }: Group<string>): 'min' | 'max' | undefined {
  if (target !== undefined || (min === undefined) === (max === undefined)) return undefined;
  return min === undefined ? 'max' : 'min';
}

/** `min 2 bar / max 3.5 bar` is one figure in two halves: groups of one unit that add to each other are joined. */
function joined<Unit extends string>(groups: readonly Group<Unit>[]): readonly Group<Unit>[] {
  const whole: Group<Unit>[] = [];
  for (const group of groups) {
    const index = whole.findIndex(
      (other) => other.unit === group.unit && complements(other, group),
    );
    const partner = whole[index];
    if (partner === undefined) whole.push(group);
    else whole[index] = { ...partner, ...group, text: `${partner.text} / ${group.text}` };
  }
  return whole;
}

const limitNames = ['min', 'max', 'target'] as const;

function complements(a: Group<string>, b: Group<string>): boolean {
  const apart = limitNames.every((name) => a[name] === undefined || b[name] === undefined);
  const min = a.min ?? b.min;
  const max = a.max ?? b.max;
  const target = a.target ?? b.target;
  // a single value beside a whole range is a contradiction to show, not a target to adopt
  if (!apart || (target !== undefined && min !== undefined && max !== undefined)) return false;
  const low = min ?? target;
  const high = max ?? target;
  return low === undefined || high === undefined || low.value <= high.value;
}

function agrees<Unit extends string>(
  a: Group<Unit>,
  b: Group<Unit>,
  from: (value: number, unit: Unit) => number,
): boolean {
  const sameShape = limitNames.every((name) => (a[name] === undefined) === (b[name] === undefined));
  const bothAim = a.target !== undefined && b.target !== undefined;
  const bothSpan = [a.min, a.max, b.min, b.max].every((limit) => limit !== undefined);
  const saysLess =
    a.unit === b.unit && limitNames.every((name) => b[name] === undefined || a[name] !== undefined);
  return (
    (sameShape || bothAim || bothSpan || saysLess) &&
    limitNames.every((name) => meet(a[name], a.unit, b[name], b.unit, from))
  );
}

/** Two printed numbers agree when some one value rounds to both; in one and the same unit, when the coarser is the finer rounded. */
function meet<Unit extends string>(
  a: PrintedNumber | undefined,
  unitOfA: Unit,
  b: PrintedNumber | undefined,
  unitOfB: Unit,
  from: (value: number, unit: Unit) => number,
): boolean {
  if (a === undefined || b === undefined) return true;
  const apart = Math.abs(from(a.value, unitOfA) - from(b.value, unitOfB));
  if (unitOfA === unitOfB) return isSameRounded(a, b);
  const rounding = from(a.halfStep, unitOfA) + from(b.halfStep, unitOfB);
  return apart <= rounding * (1 + 1e-9);
}

function isSameRounded(a: PrintedNumber, b: PrintedNumber): boolean {
  const coarser = a.halfStep === b.halfStep ? 0 : Math.max(a.halfStep, b.halfStep);
  return Math.abs(a.value - b.value) <= coarser + 1e-9 * a.value;
}

function printedOf<Quantity extends number, Unit extends string>(
  group: Group<Unit>,
  family: UnitFamily<Quantity, Unit>,
): Printed<Quantity, Unit> {
  const limits: { -readonly [K in keyof Limits<number>]: number } = {};
  const inBaseUnit: { -readonly [K in keyof Limits<number>]: Quantity } = {};
  for (const name of limitNames) {
    const number = group[name];
    if (number === undefined) continue;
    limits[name] = number.value;
    inBaseUnit[name] = family.from(number.value, group.unit);
  }
  return { unit: group.unit, ...limits, text: group.text, inBaseUnit };
}
