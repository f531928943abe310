/** Reads pressure as it is printed on a tyre or a rim: `40-65 psi`, `MIN. 2.0 MAX. 3.5 BAR (30-50 PSI)`. */

import type { Result } from '../base';
import { type Marking, type MarkingRefusal, readMarking, type UnitFamily } from './marking';
import { kilopascalsFrom, type PressureUnit } from './pressure-units';
import type { Kilopascals } from './quantities';

export type PressureMarking = Marking<Kilopascals, PressureUnit>;

const family: UnitFamily<Kilopascals, PressureUnit> = {
  base: 'kPa',
  from: kilopascalsFrom,
  writing: {
    spellings: [
      { unit: 'kPa', pattern: /k\s?pa(?!\p{L})(?:\.(?!\d|\.))?/iuy },
      { unit: 'bar', pattern: /bars?(?!\p{L})(?:\.(?!\d|\.))?/iuy },
      {
        unit: 'psi',
        pattern:
          /(?:p\.?\s?s\.?\s?i|(?:lbf?|lbs)\.?\s*(?:\/|per)\s*(?:sq\.?\s*in|in\.?\s*(?:2|\^2)))(?!\p{L})(?:\.(?!\d|\.))?/iuy,
      },
    ],
  },
};

/**
 * Reads a pressure marking into limits in kPa (gauge). Two units that disagree by more than rounding explains are
 * reported and neither is chosen; of units that agree the one in kPa is the figure, else the first printed. Refuses
 * what it does not understand whole, naming the part, and a number without a unit.
 */
export function parsePressureMarking(text: string): Result<PressureMarking, MarkingRefusal> {
  return readMarking(text, family);
}
