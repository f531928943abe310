/** Which wrench on the tool board to take for a figure, best first, with the reasons. */

import { compareNumbers, compareText } from '../base';
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

/**
 * The wrenches that can do it first: by the room they leave inside the figure, then by how near the middle of its scale
 * each is used, then by id. Then those that cannot, the least risky first. The order given does not matter.
 */
export function rankWrenches(
  figure: Limits,
  wrenches: readonly Wrench[],
  on: string,
  adapter?: Adapter,
): readonly RankedWrench[] {
  return wrenches
    .map((wrench) => rated(figure, wrench, on, adapter))
    .sort((a, b) => compareRatings(a.rating, b.rating) || compareText(a.wrench.id, b.wrench.id))
    .map(({ rating, ...ranked }) => ranked);
}

/** Compared place by place; the smaller is the better. */
type Rating = readonly number[];

function rated(
  figure: Limits,
  wrench: Wrench,
  on: string,
  adapter: Adapter | undefined,
): RankedWrench & { readonly rating: Rating } {
  const planned = planSetPoint({ figure, wrench, adapter, on });
  if (!planned.ok) {
    const { refusal } = planned;
    const risk = refusal.code === 'wrench-too-coarse' ? refusal.leastRisky.riskOutside : 2;
    return { wrench, refusal, reasons: [refusal.code], rating: [1, risk] };
  }
  const plan = planned.value;
  const fromMiddle = Math.abs(positionOnScale(wrench, plan.onScale) - 0.5);
  return {
    wrench,
    plan,
    reasons: reasonsFor(wrench, fromMiddle, on),
    rating: [0, -roomInside(figure, plan), fromMiddle].map(withoutDust),
  };
}

function reasonsFor(wrench: Wrench, fromMiddle: number, on: string): readonly WrenchReason[] {
  const reasons: WrenchReason[] = ['keeps-the-joint-inside'];
  if (wrench.lowest === wrench.highest) reasons.push('set-once-for-all');
  else
    reasons.push(fromMiddle > NEAR_THE_END ? 'near-the-end-of-its-scale' : 'middle-of-its-scale');
  if (wrench.dueOn === on) reasons.push('due-today');
  return reasons;
}

/** The outer tenth of a scale at either end. Common practice, no source. */
const NEAR_THE_END = 0.4;

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
