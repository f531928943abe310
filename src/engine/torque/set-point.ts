/** What to set on this wrench so that the joint surely ends inside its figure. */

import { ok, type Refused, type Result, refuse } from '../base';
import { type NewtonMetres, newtonMetres, newtonMetresTo, type TorqueUnit } from '../units';
import type { Adapter } from './adapter.schema';
import { readyWrench, type WrenchNotReady } from './calibration';
import { type Demand, demandOf, type FigureRefusal } from './demand';
import { deliveredInterval, permissibleDeviation } from './deviation';
import type { Figure } from './figure.schema';
import { type AdapterImpossible, adapterFactor } from './leverage';
import { riskOutside } from './risk';
import { type Setting, settingsAround } from './scale';
import { printedLimits, type SettingWindow, settingWindow } from './window';
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
  readonly deviation: number;
  readonly adapterFactor: number;
};

/**
 * The setting of a wrench for a figure on a day (`YYYY-MM-DD`), on the wrench's own scale, whose whole delivered interval
 * keeps to the figure, as near the target as possible (the lower of two equally near). A plan that comes back is always
 * covered; when none is, the refusal `wrench-too-coarse` carries the least risky setting, so that nobody uses it unawares.
 * A single value is covered when the setting is the nearest on the scale and the delivered interval contains it.
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
  const deviation = permissibleDeviation(wrench);
  const window = settingWindow(demand, deviation, factor);
  const side = beyondScale(demand, window, wrench, factor);
  if (side !== undefined) return outsideRange(side, demand, window, wrench, factor);
  const nearest = Math.min(Math.max(window.wanted, window.from), window.to);
  const covering = settingsAround(wrench, nearest).filter(({ torque }) => isWithin(torque, window));
  const best = leastBy(covering, ({ torque }) => Math.abs(torque - window.wanted));
  if (best !== undefined) return ok(planned(demand, best, wrench, deviation, factor, true));
  return tooCoarse(demand, window, wrench, deviation, factor);
}

function isWithin(torque: number, { from, to }: SettingWindow): boolean {
  return torque >= from * (1 - DUST) && torque <= to * (1 + DUST);
}

/** On which side the needed settings miss the scale altogether; a single value itself must lie on the scale. */
function beyondScale(
  demand: Demand,
  window: SettingWindow,
  wrench: Wrench,
  factor: number,
): 'below' | 'above' | undefined {
  const { from, to } = neededSettings(demand, window, factor);
  const onScale = (torque: number) => newtonMetresTo(newtonMetres(torque), wrench.unit);
  if (onScale(to) < wrench.lowest * (1 - DUST)) return 'below';
  return onScale(from) > wrench.highest * (1 + DUST) ? 'above' : undefined;
}

function neededSettings(demand: Demand, window: SettingWindow, factor: number) {
  if (demand.kind === 'single') return { from: window.wanted, to: window.wanted };
  if (window.from <= window.to) return window;
  const { min, max } = printedLimits(demand);
  return { from: min / factor, to: max / factor };
}

function outsideRange(
  side: 'below' | 'above',
  demand: Demand,
  window: SettingWindow,
  wrench: Wrench,
  factor: number,
): Refused<FigureOutsideWrenchRange> {
  const { id, lowest, highest, unit } = wrench;
  const needed = neededSettings(demand, window, factor);
  return refuse<FigureOutsideWrenchRange>({
    code: 'figure-outside-wrench-range',
    wrench: id,
    side,
    neededFrom: newtonMetresTo(newtonMetres(needed.from), unit),
    neededTo: newtonMetresTo(newtonMetres(needed.to), unit),
    lowest,
    highest,
    unit,
  });
}

/** Risk falls towards the edges of the window and rises beyond them, so the least lies next to an edge or the target. */
function tooCoarse(
  demand: Demand,
  window: SettingWindow,
  wrench: Wrench,
  deviation: number,
  factor: number,
): Refused<WrenchTooCoarse> {
  const settings = [window.from, window.to, window.wanted]
    .flatMap((torque) => settingsAround(wrench, torque))
    .sort((a, b) => Math.abs(a.torque - window.wanted) - Math.abs(b.torque - window.wanted));
  const least = leastBy(settings, ({ torque }) => riskOutside(demand, torque * factor, deviation));
  const leastRisky = planned(demand, least as Setting, wrench, deviation, factor, false); // the scale is never empty
  return refuse<WrenchTooCoarse>({
    code: 'wrench-too-coarse',
    wrench: wrench.id,
    because: window.from > window.to ? 'deviation' : 'scale',
    deviation,
    ...(demand.kind === 'range'
      ? { neededDeviation: (demand.max - demand.min) / (demand.max + demand.min) }
      : {}),
    leastRisky,
  });
}

function planned(
  demand: Demand,
  { torque, onScale }: Setting,
  wrench: Wrench,
  deviation: number,
  factor: number,
  covered: boolean,
): SetPoint {
  const { low, high } = deliveredInterval(torque * factor, deviation);
  const { min, max } = printedLimits(demand);
  return {
    setPoint: torque,
    onScale,
    unit: wrench.unit,
    jointLow: newtonMetres(onto(min, low)),
    jointHigh: newtonMetres(onto(max, high)),
    covered,
    riskOutside: covered ? 0 : riskOutside(demand, torque * factor, deviation),
    deviation,
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
