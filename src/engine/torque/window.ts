/** The settings that satisfy a demand: from where to where the wrench may be set, and what to come nearest to. */

import type { Demand } from './demand';
import { type DeviationBand, hull, type Stretch } from './deviation-curve';

/** In N·m at the wrench, before its scale is considered; `from` above `to` means that none satisfies. */
export type SettingWindow = { readonly from: number; readonly to: number };

/** A demand as one wrench meets it: the adapter's factor, and how far a single value may be missed, a fraction. */
export type Task = {
  readonly demand: Demand;
  readonly factor: number;
  readonly tolerance: number;
};

/**
 * A figure with one limit leaves the other end open; joints for which both ends are published keep their lower end at
 * about two thirds of their upper or more, so a setting further away than that would leave the joint too loose (or
 * take it too far). ISO 4210-2 4.3.2 has parts hold 1.5 times the recommended torque; two thirds itself: common practice, no source.
 */
const OPEN_END = 2 / 3;

/**
 * The settings of one stretch of the deviation curve that keep the whole delivered interval inside the demand. A joint ends
 * at setting × factor / (1 + deviation), and along a stretch the deviation is a straight line, so every limit is a linear
 * inequality in the setting.
 */
export function settingWindow(
  { demand, factor, tolerance }: Task,
  stretch: Stretch,
): SettingWindow {
  const { low, high } = linesOf(stretch);
  const { min, max } = printedLimits(demand);
  const reaches = (torque: number, line: Line) =>
    atLeast(factor - torque * line.slope, torque * (1 + line.at0));
  const staysUnder = (torque: number, line: Line) =>
    atLeast(torque * line.slope - factor, -torque * (1 + line.at0));
  const limits = [{ from: stretch.from, to: stretch.to }];
  if (min > 0) limits.push(reaches(min, high));
  if (max < Infinity) limits.push(staysUnder(max, low));
  limits.push(openEnd(demand, factor));
  if (demand.kind === 'single') {
    const wide = linesOf(toleranceOn(stretch, tolerance));
    limits.push(staysUnder(demand.target, wide.high), reaches(demand.target, wide.low));
  }
  return {
    from: Math.max(...limits.map(({ from }) => from)),
    to: Math.min(...limits.map(({ to }) => to)),
  };
}

/** How far from its one limit a setting may be; no bound where the figure says more. */
export function openEnd(demand: Demand, factor: number): SettingWindow {
  return {
    from: demand.kind === 'maximum' ? (demand.max * OPEN_END) / factor : 0,
    to: demand.kind === 'minimum' ? demand.min / OPEN_END / factor : Infinity,
  };
}

/** The setting of a stretch whose likeliest outcome is the target; with one limit the setting that comes nearest to it. */
export function wantedSetting(task: Task, stretch: Stretch, window: SettingWindow): number {
  const { demand, factor } = task;
  if (demand.kind === 'maximum') return window.to;
  if (demand.kind === 'minimum') return window.from;
  const wanted = settingThatGives(demand.target, linesOf(stretch).middle, factor);
  return Math.min(Math.max(wanted, window.from), window.to);
}

/** Where along a stretch the risk of missing a limit may turn: an end of the interval meets a limit, or the stretch ends. */
export function turningPoints({ demand, factor }: Task, stretch: Stretch): readonly number[] {
  const { low, middle, high } = linesOf(stretch);
  const { min, max } = printedLimits(demand);
  const met = demand.kind === 'single' ? [settingThatGives(demand.target, middle, factor)] : [];
  for (const limit of [min, max]) {
    if (limit > 0 && limit < Infinity)
      met.push(settingThatGives(limit, low, factor), settingThatGives(limit, high, factor));
  }
  const inStretch = met.map((place) => Math.min(Math.max(place, stretch.from), stretch.to));
  return [...inStretch, stretch.from, stretch.to].filter(Number.isFinite);
}

/** The band a single value has to lie in: a known deviation, corrected as far as the scale allows, is no fault. */
export function toleranceBand(band: DeviationBand, tolerance: number): DeviationBand {
  const likely = 1 + (band.low + band.high) / 2;
  return hull(band, {
    low: likely * (1 - tolerance) - 1,
    high: likely * (1 + tolerance) - 1,
  });
}

/** The limits that are printed; an end that is not printed is open. */
export function printedLimits(demand: Demand): { readonly min: number; readonly max: number } {
  const min = 'min' in demand ? demand.min : undefined;
  const max = 'max' in demand ? demand.max : undefined;
  return { min: min ?? 0, max: max ?? Infinity };
}

/** A deviation that is `at0 + slope` × setting, N·m. */
type Line = { readonly at0: number; readonly slope: number };

function linesOf({ from, to, atFrom, atTo }: Stretch): {
  readonly low: Line;
  readonly middle: Line;
  readonly high: Line;
} {
  const through = (a: number, b: number): Line => {
    const slope = a === b ? 0 : (b - a) / (to - from);
    return { at0: a - slope * from, slope };
  };
  const middleOf = ({ low, high }: DeviationBand) => (low + high) / 2;
  return {
    low: through(atFrom.low, atTo.low),
    middle: through(middleOf(atFrom), middleOf(atTo)),
    high: through(atFrom.high, atTo.high),
  };
}

function toleranceOn(stretch: Stretch, tolerance: number): Stretch {
  return {
    ...stretch,
    atFrom: toleranceBand(stretch.atFrom, tolerance),
    atTo: toleranceBand(stretch.atTo, tolerance),
  };
}

function settingThatGives(torque: number, { at0, slope }: Line, factor: number): number {
  return (torque * (1 + at0)) / (factor - torque * slope);
}

/** The x for which slope · x is at least `least`. */
function atLeast(slope: number, least: number): SettingWindow {
  if (slope > 0) return { from: least / slope, to: Infinity };
  if (slope < 0) return { from: 0, to: least / slope };
  return least <= 0 ? { from: 0, to: Infinity } : { from: Infinity, to: 0 };
}
