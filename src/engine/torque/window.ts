/** The settings that satisfy a demand: from where to where the wrench may be set, and what to come nearest to. */

import type { Demand } from './demand';

/** In N·m at the wrench, before its scale is considered; `from` above `to` means that none satisfies. */
export type SettingWindow = { readonly from: number; readonly to: number; readonly wanted: number };

/**
 * A figure with one limit leaves the other end open; joints for which both ends are published keep their lower end at
 * about two thirds of their upper or more, so a setting further away than that would leave the joint too loose (or
 * take it too far). ISO 4210-2 4.3.2 has parts hold 1.5 times the recommended torque; two thirds itself: common practice, no source.
 */
const OPEN_END = 2 / 3;

/**
 * Keeps the whole delivered interval inside the demand, with the adapter's factor. A range aims at its target; a maximum
 * at the highest setting whose upper end stays at or below it; a minimum at the lowest whose lower end reaches it; a
 * single value at itself, and the delivered interval must contain it.
 */
export function settingWindow(demand: Demand, deviation: number, factor: number): SettingWindow {
  const lowerEndAt = (torque: number) => (torque * (1 + deviation)) / factor;
  const upperEndAt = (torque: number) => (torque * (1 - deviation)) / factor;
  switch (demand.kind) {
    case 'range':
      return {
        from: lowerEndAt(demand.min),
        to: upperEndAt(demand.max),
        wanted: demand.target / factor,
      };
    case 'maximum': {
      const to = upperEndAt(demand.max);
      return { from: (demand.max * OPEN_END) / factor, to, wanted: to };
    }
    case 'minimum': {
      const from = lowerEndAt(demand.min);
      return { from, to: demand.min / OPEN_END / factor, wanted: from };
    }
    case 'single':
      return {
        from: Math.max(upperEndAt(demand.target), lowerEndAt(demand.min ?? 0)),
        to: Math.min(lowerEndAt(demand.target), upperEndAt(demand.max ?? Infinity)),
        wanted: demand.target / factor,
      };
  }
}

/** The limits that are printed; an end that is not printed is open. */
export function printedLimits(demand: Demand): { readonly min: number; readonly max: number } {
  const min = 'min' in demand ? demand.min : undefined;
  const max = 'max' in demand ? demand.max : undefined;
  return { min: min ?? 0, max: max ?? Infinity };
}
