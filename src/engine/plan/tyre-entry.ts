/** What is wrong with a wheel's tyre and pressure as they are entered, before a plan would refuse them. */

import { ok, type Result, refuse } from '../base';
import { type PressureLimits, parseTyreMarking, pressureLimits } from '../tyres';
import { parsePressureMarking } from '../units';
import { type TyreAndRim, type TyreLimitRefusal, tyreLimit, type Wheel } from './tyre-limit';

export interface TyreEntryFault {
  /** The place in the description that has to be looked at again. */
  readonly place: `${Wheel}.${'tyre' | 'tyrePressure'}`;
  readonly refusal: TyreEntryRefusal;
}

/** Where the greatest pressures of tyres lie, kPa: from the widest tyres to the narrowest on a track. Source: from memory. */
const likelyMaximum = { least: 100, greatest: 1600 } as const;

/**
 * Everything by which a plan would refuse this wheel, each with its place, and a greatest pressure (kPa) that no bicycle
 * tyre has: most often its unit is another. Empty for a wheel that can be planned.
 */
export function tyreEntryFaults(wheel: Wheel, entry: TyreAndRim): readonly TyreEntryFault[] {
  const limit = tyreLimit(wheel, entry);
  const pressure = readPressure(wheel, entry);
  const faults: TyreEntryFault[] = [];
  if (!limit.ok && (pressure.ok || !isOfPressure(limit.refusal)))
    faults.push({ place: placeOf(wheel, limit.refusal, entry), refusal: limit.refusal });
  if (!pressure.ok) faults.push({ place: pressurePlace(wheel, entry), refusal: pressure.refusal });
  return faults;
}
export type TyreEntryRefusal = TyreLimitRefusal | TyrePressureUnlikely;
export interface TyrePressureUnlikely {
  readonly code: 'tyre-pressure-unlikely';
  readonly wheel: Wheel;
  readonly marking: string;
  /** As it was read, kPa. */
  readonly max: number;
  /** Between which the greatest pressures of bicycle tyres lie, kPa. */
  readonly least: number;
  readonly greatest: number;
}

function placeOf(
  wheel: Wheel,
  refusal: TyreLimitRefusal,
  entry: TyreAndRim,
): TyreEntryFault['place'] {
  return isOfPressure(refusal) ? pressurePlace(wheel, entry) : `${wheel}.tyre`;
}

function isOfPressure({ code }: TyreLimitRefusal): boolean {
  return code === 'tyre-pressure-not-understood' || code === 'tyre-window-empty';
}

/** A pressure may stand beside the size. */
function pressurePlace(wheel: Wheel, { tyrePressure }: TyreAndRim): TyreEntryFault['place'] {
  return tyrePressure === undefined ? `${wheel}.tyre` : `${wheel}.tyrePressure`;
}

function readPressure(
  wheel: Wheel,
  { tyre, tyrePressure }: TyreAndRim,
): Result<PressureLimits, TyreEntryRefusal> {
  const marking = tyrePressure ?? tyre;
  const limits = tyrePressure === undefined ? besideTheSize(tyre) : printed(tyrePressure);
  if (!limits.ok) {
    const cause = limits.refusal;
    return refuse({ code: 'tyre-pressure-not-understood', wheel, marking, cause });
  }
  const { max } = limits.value;
  const { least, greatest } = likelyMaximum;
  if (max === undefined || (max >= least && max <= greatest)) return limits;
  return refuse({ code: 'tyre-pressure-unlikely', wheel, marking, max, least, greatest });
}

function printed(marking: string) {
  const pressure = parsePressureMarking(marking);
  return pressure.ok ? pressureLimits(pressure.value) : pressure;
}

/** A size that is not understood is refused as such. */
function besideTheSize(tyre: string): Result<PressureLimits, never> {
  const size = parseTyreMarking(tyre);
  return ok(size.ok ? size.value : {});
}
