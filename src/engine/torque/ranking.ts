/** Which wrench on the tool board to take for a figure, best first, with the reasons. */

import { compareNumbers, compareText } from '../base';
import { parseTorqueMarking, type TorqueUnit } from '../units';
import type { Adapter } from './adapter.schema';
import { demandOf } from './demand';
import type { Figure } from './figure.schema';
import { positionOnScale } from './scale';
import { planSetPoint, type SetPoint, type SetPointRefusal } from './set-point';
import type { Wrench } from './wrench.schema';

export const wrenchReasons = [
  'keeps-the-joint-inside',
  'middle-of-its-scale',
  'near-the-end-of-its-scale',
  'set-once-for-all',
  'in-another-unit',
  'little-room',
  'due-today',
] as const;

export type WrenchReason = (typeof wrenchReasons)[number] | SetPointRefusal['code'];

export type RankedWrench = {
  readonly wrench: Wrench;
  readonly plan?: SetPoint;
  readonly refusal?: SetPointRefusal;
  readonly reasons: readonly WrenchReason[];
};

type Limits = Pick<Figure, 'min' | 'max' | 'target'>;
type Asked = Limits & Partial<Pick<Figure, 'source'>>;

/**
 * The wrenches that can do it first: those that leave ample room inside the figure before those that leave some or little;
 * then those with a scale in a unit printed on the part (N·m where nothing printed is known); then by how near the middle of
 * its scale each is used; the last sliver of room, and the id, decide only between wrenches alike in all that. Then those
 * that cannot, the least risky first. The order given does not matter.
 */
export function rankWrenches(
  figure: Asked,
  wrenches: readonly Wrench[],
  on: string,
  adapter?: Adapter,
): readonly RankedWrench[] {
  const units = printedUnits(figure);
  return wrenches
    .map((wrench) => rated({ figure, units, on, adapter }, wrench))
    .sort((a, b) => compareRatings(a.rating, b.rating) || compareText(a.wrench.id, b.wrench.id))
    .map(({ rating, ...ranked }) => ranked);
}

/** Compared place by place; the smaller is the better. */
type Rating = readonly number[];

type Search = {
  readonly figure: Asked;
  readonly units: readonly TorqueUnit[];
  readonly on: string;
  readonly adapter: Adapter | undefined;
};

function rated(
  { figure, units, on, adapter }: Search,
  wrench: Wrench,
): RankedWrench & { readonly rating: Rating } {
  const planned = planSetPoint({ figure, wrench, adapter, on });
  if (!planned.ok) {
    const { refusal } = planned;
    const risk = refusal.code === 'wrench-too-coarse' ? refusal.leastRisky.riskOutside : 2;
    return { wrench, refusal, reasons: [refusal.code], rating: [1, risk] };
  }
  const plan = planned.value;
  const fromMiddle = withoutDust(Math.abs(positionOnScale(wrench, plan.onScale) - 0.5));
  const room = withoutDust(roomInside(figure, plan));
  const traits: Traits = {
    room: levelOf(room, roomLevels(figure)),
    inAnotherUnit: !units.includes(wrench.unit),
    place: levelOf(-fromMiddle, PLACES),
  };
  return {
    wrench,
    plan,
    reasons: reasonsFor(wrench, traits, on),
    rating: [0, traits.room, Number(traits.inAnotherUnit), traits.place, -room, fromMiddle],
  };
}

/** Levels count from 0, the best. */
type Traits = {
  readonly room: number;
  readonly inAnotherUnit: boolean;
  readonly place: number;
};

function reasonsFor(wrench: Wrench, traits: Traits, on: string): readonly WrenchReason[] {
  const reasons: WrenchReason[] = ['keeps-the-joint-inside'];
  if (wrench.lowest === wrench.highest) reasons.push('set-once-for-all');
  else reasons.push(traits.place === 2 ? 'near-the-end-of-its-scale' : 'middle-of-its-scale');
  if (traits.inAnotherUnit) reasons.push('in-another-unit');
  if (traits.room === 2) reasons.push('little-room');
  if (wrench.dueOn === on) reasons.push('due-today');
  return reasons;
}

/** The units the part is marked in; N·m where the marking is not known or cannot be read. */
function printedUnits({ source }: Asked): readonly TorqueUnit[] {
  const read = source?.kind === 'part' ? parseTorqueMarking(source.printed) : undefined;
  return read?.ok === true ? read.value.units : ['N·m'];
}

/** The inner six tenths of a scale, the next tenth on either side, and the outer tenths. Common practice, no source. */
const PLACES = [-0.3, -0.4];

/**
 * Ample and some room: a quarter and a tenth of a range on its tighter side; with one limit, or a single value, straying by
 * no more than a tenth and a fifth of it. Common practice, no source.
 */
function roomLevels({ min, max }: Limits): readonly number[] {
  return min !== undefined && max !== undefined && min < max ? [0.25, 0.1] : [-0.1, -0.2];
}

function levelOf(value: number, levels: readonly number[]): number {
  const level = levels.findIndex((least) => value >= least);
  return level === -1 ? levels.length : level;
}

/**
 * How much of the figure is left on the tighter side, as a share of its width. With one end open, or a single value, it
 * is how far the interval strays at worst from the limit or the value, counted below zero.
 */
function roomInside(figure: Limits, { jointLow, jointHigh }: SetPoint): number {
  const read = demandOf(figure);
  if (!read.ok) return 0;
  const demand = read.value;
  switch (demand.kind) {
    case 'range':
      return Math.min(jointLow - demand.min, demand.max - jointHigh) / (demand.max - demand.min);
    case 'maximum':
      return (jointLow - demand.max) / demand.max;
    case 'minimum':
      return (demand.min - jointHigh) / demand.min;
    case 'single':
      return Math.min(jointLow - demand.target, demand.target - jointHigh) / demand.target;
  }
}

function withoutDust(value: number): number {
  return Math.round(value * 1e9) / 1e9;
}

function compareRatings(a: Rating, b: Rating): number {
  for (const [place, value] of a.entries()) {
    const difference = compareNumbers(value, b[place] ?? value);
    if (difference !== 0) return difference;
  }
  return 0;
}
