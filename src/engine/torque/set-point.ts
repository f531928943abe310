/** What to set on this wrench so that the joint surely ends inside its figure. */

import { ok, type Refused, type Result, refuse } from '../base';
import { type NewtonMetres, newtonMetres, newtonMetresTo, type TorqueUnit } from '../units';
import type { Adapter } from './adapter.schema';
import { readyWrench, type WrenchNotReady } from './calibration';
import { type Demand, demandOf, type FigureRefusal } from './demand';
import { singleValueTolerance } from './deviation';
import { type Stretch, stretchesOf } from './deviation-curve';
import type { Figure } from './figure.schema';
import { type AdapterImpossible, adapterFactor } from './leverage';
import { awayFromAim, isCovered, type Outcome, outcomeOf } from './outcome';
import { riskOutside } from './risk';
import { settingsAround } from './scale';
import {
  openEnd,
  printedLimits,
  type SettingWindow,
  settingWindow,
  type Task,
  turningPoints,
  wantedSetting,
} from './window';
import type { Wrench } from './wrench.schema';

export type SetPoint = {
  /** N·m at the wrench. */
  readonly setPoint: NewtonMetres;
  /** The same as the number on the wrench's own scale. */
  readonly onScale: number;
  readonly unit: TorqueUnit;
  /** N·m at the fastener: where it can end, the adapter included. */
  readonly jointLow: NewtonMetres;
  readonly jointHigh: NewtonMetres;
  /** The whole interval keeps to the figure. */
  readonly covered: boolean;
  readonly riskOutside: number;
  /** The largest the deviation may be at this setting, as a fraction, and the band it lies in, signed. */
  readonly deviation: number;
  readonly deviationLow: number;
  readonly deviationHigh: number;
  readonly adapterFactor: number;
};

/**
 * The setting of a wrench for a figure on a day (`YYYY-MM-DD`), on the wrench's own scale, whose whole delivered interval
 * keeps to the figure, its likeliest torque as near the target as possible (the lower of two equally near). A plan that comes
 * back is always covered; when none is, the refusal `wrench-too-coarse` carries the least risky setting, so that nobody uses
 * it unawares. A single value is covered when the likeliest torque differs from it by no more than the wrench may deviate.
 */
export function planSetPoint(asked: {
  readonly figure: Pick<Figure, 'min' | 'max' | 'target'>;
  readonly wrench: Wrench;
  readonly adapter?: Adapter | undefined;
  readonly on: string;
}): Result<SetPoint, SetPointRefusal> {
  const { figure, wrench, adapter, on } = asked;
  const ready = readyWrench(wrench, on);
  if (!ready.ok) return ready;
  const factor = adapter === undefined ? ok(1) : adapterFactor(adapter, wrench);
  if (!factor.ok) return factor;
  const demand = demandOf(figure);
  if (!demand.ok) return demand;
  return settingFor(demand.value, wrench, factor.value);
}

export type FigureOutsideWrenchRange = {
  readonly code: 'figure-outside-wrench-range';
  readonly wrench: string;
  /** The figure lies below or above what the wrench can be set to. */
  readonly side: 'below' | 'above';
  /** The settings the figure asks for, and those the wrench has, in its own unit. */
  readonly neededFrom: number;
  readonly neededTo: number;
  readonly lowest: number;
  readonly highest: number;
  readonly unit: TorqueUnit;
};
export type WrenchTooCoarse = {
  readonly code: 'wrench-too-coarse';
  readonly wrench: string;
  /** Its deviation is wider than the figure, or its scale has no setting where one is needed. */
  readonly because: 'deviation' | 'scale';
  readonly deviation: number;
  /** The largest deviation with which some setting would do; only for a figure with two limits. */
  readonly neededDeviation?: number;
  /** The settings of which one would do, in the wrench's own unit; only where its scale is to blame. */
  readonly neededFrom?: number;
  readonly neededTo?: number;
  readonly leastRisky: SetPoint;
};
export type SetPointRefusal =
  | WrenchNotReady
  | AdapterImpossible
  | FigureRefusal
  | FigureOutsideWrenchRange
  | WrenchTooCoarse;

const DUST = 1e-9;

function settingFor(
  demand: Demand,
  wrench: Wrench,
  factor: number,
): Result<SetPoint, FigureOutsideWrenchRange | WrenchTooCoarse> {
  const task: Task = { demand, factor, tolerance: singleValueTolerance(wrench) };
  const stretches = stretchesOf(wrench);
  const open = stretches
    .map((stretch) => ({ stretch, window: settingWindow(task, stretch) }))
    .filter(({ window }) => window.from <= window.to * (1 + DUST));
  const keeping = hullOf(open.map(({ window }) => window));
  const needed = neededSettings(task, keeping);
  const side = beyondScale(needed, wrench);
  if (side !== undefined) return outsideRange(side, needed, wrench);
  const covering = open
    .flatMap(({ stretch, window }) => settingsAround(wrench, wantedSetting(task, stretch, window)))
    .map((setting) => outcomeOf(setting, task, stretches))
    .filter((outcome) => isCovered(outcome, task));
  const best = leastBy(lowFirst(covering), (outcome) => awayFromAim(outcome, task));
  if (best !== undefined) return ok(planned(best, task, wrench, true));
  return tooCoarse(task, stretches, wrench, keeping);
}

/** The settings the figure asks for: those that keep it, or what its limits come to when none do; a single value itself. */
function neededSettings({ demand, factor }: Task, keeping: SettingWindow | undefined) {
  if (demand.kind === 'single') return { from: demand.target / factor, to: demand.target / factor };
  if (keeping !== undefined) return keeping;
  const { min, max } = printedLimits(demand);
  const { from, to } = openEnd(demand, factor);
  return { from: Math.max(from, min / factor), to: Math.min(to, max / factor) };
}

function hullOf(windows: readonly SettingWindow[]): SettingWindow | undefined {
  if (windows.length === 0) return undefined;
  const from = Math.min(...windows.map((window) => window.from));
  return { from, to: Math.max(...windows.map((window) => window.to)) };
}

/** On which side the needed settings miss the scale altogether; a single value itself must lie on the scale. */
function beyondScale({ from, to }: SettingWindow, wrench: Wrench): 'below' | 'above' | undefined {
  const onScale = (torque: number) => newtonMetresTo(newtonMetres(torque), wrench.unit);
  if (onScale(to) < wrench.lowest * (1 - DUST)) return 'below';
  return onScale(from) > wrench.highest * (1 + DUST) ? 'above' : undefined;
}

function outsideRange(
  side: 'below' | 'above',
  needed: SettingWindow,
  wrench: Wrench,
): Refused<FigureOutsideWrenchRange> {
  const { id, lowest, highest, unit } = wrench;
  return refuse<FigureOutsideWrenchRange>({
    code: 'figure-outside-wrench-range',
    wrench: id,
    side,
    ...inItsUnit(needed, wrench),
    lowest,
    highest,
    unit,
  });
}

function inItsUnit({ from, to }: SettingWindow, { unit }: Wrench) {
  return {
    neededFrom: newtonMetresTo(newtonMetres(from), unit),
    neededTo: newtonMetresTo(newtonMetres(to), unit),
  };
}

/** Between two turning points the risk only rises or only falls, so the least lies next to one of them. */
function tooCoarse(
  task: Task,
  stretches: readonly Stretch[],
  wrench: Wrench,
  keeping: SettingWindow | undefined,
): Refused<WrenchTooCoarse> {
  const { demand } = task;
  const outcomes = stretches
    .flatMap((stretch) => turningPoints(task, stretch))
    .flatMap((torque) => settingsAround(wrench, torque))
    .map((setting) => outcomeOf(setting, task, stretches))
    .sort((a, b) => awayFromAim(a, task) - awayFromAim(b, task));
  const least = leastBy(outcomes, ({ indicated, band }) =>
    riskOutside(demand, indicated, band, task.tolerance),
  );
  const leastRisky = planned(least as Outcome, task, wrench, false); // the scale is never empty
  return refuse<WrenchTooCoarse>({
    code: 'wrench-too-coarse',
    wrench: wrench.id,
    because: keeping === undefined ? 'deviation' : 'scale',
    deviation: leastRisky.deviation,
    ...(demand.kind === 'range'
      ? { neededDeviation: (demand.max - demand.min) / (demand.max + demand.min) }
      : {}),
    ...(keeping === undefined ? {} : inItsUnit(keeping, wrench)),
    leastRisky,
  });
}

function planned(
  { torque, onScale, indicated, band, low, high }: Outcome,
  { demand, factor, tolerance }: Task,
  wrench: Wrench,
  covered: boolean,
): SetPoint {
  const { min, max } = printedLimits(demand);
  return {
    setPoint: torque,
    onScale,
    unit: wrench.unit,
    jointLow: newtonMetres(onto(min, low)),
    jointHigh: newtonMetres(onto(max, high)),
    covered,
    riskOutside: covered ? 0 : riskOutside(demand, indicated, band, tolerance),
    deviation: Math.max(Math.abs(band.low), Math.abs(band.high)),
    deviationLow: band.low,
    deviationHigh: band.high,
    adapterFactor: factor,
  };
}

/** A value that misses a limit by the dust of binary fractions only is at the limit. */
function onto(limit: number, value: number): number {
  return Number.isFinite(limit) && Math.abs(value - limit) <= limit * DUST ? limit : value;
}

/** The first of those with the least cost; a cost lower by dust only is no lower. */
function leastBy<T>(items: readonly T[], cost: (item: T) => number): T | undefined {
  let best: T | undefined;
  for (const item of items) {
    if (best === undefined || cost(item) < cost(best) - DUST) best = item;
  }
  return best;
}

function lowFirst(outcomes: readonly Outcome[]): readonly Outcome[] {
  return [...outcomes].sort((a, b) => a.torque - b.torque);
}
