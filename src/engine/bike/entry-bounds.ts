/** Between which numbers a description is believed when it is entered anew; what is stored reads as it was written. */

import { ok, type Result, refuse } from '../base';

export interface EntryBounds {
  readonly min: number;
  readonly max: number;
  readonly unit: 'mm' | 'kPa' | 'kg' | '';
  /** A number as it is found on many bikes. */
  readonly example: number;
  /** Counted, not measured. */
  readonly isWhole: boolean;
}

const post = measured(22, 36, 'mm', 27.2);
const insertion = measured(40, 300, 'mm', 80);
const rimWidth = measured(11, 105, 'mm', 21);
const rimPressure = measured(100, 1600, 'kPa', 400);
const load = measured(20, 500, 'kg', 120);

/**
 * By dotted question. Seat posts run from 22.0 mm on children's bikes to 35 mm; rims from 13 mm on track bikes to
 * 100 mm under the widest tyres. Source: common practice, no source. What is counted has the schema's own bounds.
 */
export const entryBounds: Readonly<Record<string, EntryBounds>> = {
  'seat.postDiameter': post,
  'frame.minimumInsertion': insertion,
  'front.rimInnerWidth': rimWidth,
  'rear.rimInnerWidth': rimWidth,
  'front.rimMaxKpa': rimPressure,
  'rear.rimMaxKpa': rimPressure,
  'gears.chainrings': counted(0, 3, 1),
  'gears.speeds': counted(1, 14, 7),
  loadLimit: load,
};

/** Whether a number may be entered as the answer to this question. Refuses one that no bike has, with the bounds. */
export function checkEntry(question: string, value: number): Result<number, EntryOutOfBounds> {
  const bounds = entryBounds[question];
  if (bounds === undefined) return ok(value);
  const { min, max, isWhole } = bounds;
  const isInside = value >= min && value <= max;
  if (isInside && (!isWhole || Number.isInteger(value))) return ok(value);
  return refuse({ code: 'entry-out-of-bounds', question, value, ...bounds });
}
export interface EntryOutOfBounds extends EntryBounds {
  readonly code: 'entry-out-of-bounds';
  readonly question: string;
  /** Not a number where none was typed. */
  readonly value: number;
}

function measured(
  min: number,
  max: number,
  unit: EntryBounds['unit'],
  example: number,
): EntryBounds {
  return { min, max, unit, example, isWhole: false };
}

function counted(min: number, max: number, example: number): EntryBounds {
  return { min, max, unit: '', example, isWhole: true };
}
