/** Measured values as this stand reads them: pressures in the unit of its gauge, everything else in its own. */

import type { PlanMeasure } from '../engine/plan';
import { kilopascals, kilopascalsFrom, kilopascalsTo, type PressureUnit } from '../engine/units';
import { words } from '../words';

export function shownUnit(measure: PlanMeasure, preferred: PressureUnit): string {
  return measure.unit === 'kPa' ? preferred : measure.unit;
}

export function shownValue(value: number, measure: PlanMeasure, preferred: PressureUnit): string {
  if (measure.unit !== 'kPa') return words.writing.figure(value);
  const decimals = preferred === 'bar' ? 1 : 0;
  return words.writing.figure(kilopascalsTo(kilopascals(value), preferred), decimals);
}

/** What was read, in the measure's own unit. */
export function keptValue(
  value: number,
  measure: PlanMeasure | undefined,
  preferred: PressureUnit,
): number {
  return measure?.unit === 'kPa' ? kilopascalsFrom(value, preferred) : value;
}

/** The limit in the unit that is shown. */
export function shownLimit(
  { limit, unit }: PlanMeasure,
  preferred: PressureUnit,
): { readonly min?: number; readonly max?: number } {
  const shown = (value: number) =>
    unit === 'kPa' ? kilopascalsTo(kilopascals(value), preferred) : value;
  return {
    ...(limit.min !== undefined && { min: shown(limit.min) }),
    ...(limit.max !== undefined && { max: shown(limit.max) }),
  };
}

/** The limit as a range with its unit, and where it comes from; no range where it has to be read on the part. */
export function limitOf(
  measure: PlanMeasure,
  preferred: PressureUnit,
): { readonly range: string; readonly source: string } {
  const { min, max, source } = measure.limit;
  const shown = (value: number | undefined) =>
    value === undefined ? undefined : Number(shownValue(value, measure, preferred));
  const range = words.writing.range({ min: shown(min), max: shown(max) });
  return { range: range === '' ? '' : `${range} ${shownUnit(measure, preferred)}`, source };
}

/** The limit as a sentence, with its source. */
export function limitText(measure: PlanMeasure, preferred: PressureUnit): string {
  const { range, source } = limitOf(measure, preferred);
  return range === ''
    ? `${words.stand.unlimited} (${source}).`
    : `${words.stand.limit} ${range} (${source}).`;
}
