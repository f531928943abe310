/** Wrench deviations, bands, test points and adapters against ISO 6789-1 and published worked examples. */

import { describe, expect, test } from 'vitest';
import {
  type Adapter,
  adapterFactor,
  calibrationPoints,
  deliveredInterval,
  OPERATIONS_BETWEEN_CALIBRATIONS,
  permissibleDeviation,
  relativeDeviation,
  type WrenchClass,
  type WrenchType,
} from '../../src/engine/torque';
import { millimetres } from '../../src/engine/units';
import { wrench } from '../support/wrenches';

describe('ISO 6789-1:2017', () => {
  test.each<[WrenchType, WrenchClass, upTo10: number, above10: number, source: string]>([
    ['II', 'A', 0.06, 0.04, 'limits restated in a torque wrench manual'],
    ['II', 'B', 0.06, 0.04, 'from memory'],
    ['II', 'C', 0.06, 0.04, 'from memory'],
    ['II', 'D', 0.06, 0.06, 'from memory'],
    ['II', 'E', 0.06, 0.06, 'from memory'],
    ['II', 'F', 0.06, 0.06, 'from memory'],
    ['II', 'G', 0.06, 0.06, 'from memory'],
    ['I', 'A', 0.06, 0.06, 'from memory'],
    ['I', 'B', 0.06, 0.04, 'from memory'],
    ['I', 'C', 0.06, 0.04, 'from memory'],
    ['I', 'D', 0.06, 0.06, 'from memory'],
    ['I', 'E', 0.06, 0.04, 'from memory'],
  ])(
    '[T4] type %s class %s deviates by at most %d up to 10 N·m, %d above (%s)',
    (type, letter, upTo10, above10) => {
      expect(permissibleDeviation(wrench({ type, class: letter, highest: 10 }))).toBe(upTo10);
      expect(permissibleDeviation(wrench({ type, class: letter, highest: 10.5 }))).toBe(above10);
      expect(permissibleDeviation(wrench({ type, class: letter, highest: 25 }))).toBe(above10);
    },
  );

  // computed from the definition of the deviation, ISO 6789-1 clause 7, from memory
  test.each<[set: number, maximum: number, low: number, high: number]>([
    [20, 25, 19.2308, 20.8333],
    [5, 6, 4.717, 5.3191],
    [10, 10, 9.434, 10.6383],
  ])('[T5] set to %d, a wrench up to %d N·m delivers %d to %d', (set, highest, low, high) => {
    const band = deliveredInterval(set, permissibleDeviation(wrench({ highest })));
    expect(Math.abs(band.low - low)).toBeLessThanOrEqual(0.001);
    expect(Math.abs(band.high - high)).toBeLessThanOrEqual(0.001);
  });

  // formula of ISO 6789-1:2017 clause 7, from memory
  test.each<[indicated: number, reference: number, percent: number]>([
    [100, 96, 4.167],
    [10, 10.5, -4.762],
    [5, 5.3, -5.66],
  ])('[T5] indicating %d at a true %d is a deviation of %d %%', (indicated, reference, percent) => {
    expect(Math.abs(relativeDeviation(indicated, reference) * 100 - percent)).toBeLessThan(0.002);
  });

  test('[T4] a wrench 5–25 is tested at its lowest value, 60 % and 100 % (torque wrench manual: 5, 15, 25)', () => {
    expect(calibrationPoints({ lowest: 5, highest: 25 })).toEqual([5, 15, 25]);
  });

  test('[T6] calibration lasts 5000 operations (published article on calibration intervals)', () => {
    expect(OPERATIONS_BETWEEN_CALIBRATIONS).toBe(5000);
  });
});

describe('adapters', () => {
  const factorOf = (grip: number, offset: number, angle: number): number => {
    const adapter: Adapter = { grip: millimetres(grip), offset: millimetres(offset), angle };
    const factor = adapterFactor(adapter, { type: 'II', class: 'A' });
    if (!factor.ok) throw new Error(factor.refusal.because);
    return factor.value;
  };

  test.each<
    [
      target: number,
      grip: number,
      offset: number,
      angle: number,
      set: number,
      within: number,
      source: string,
    ]
  >([
    [50, 16, 2, 0, 44.44, 0.01, 'a torque wrench instruction sheet'],
    [40, 300, 40, 0, 35.2941, 0.001, 'computed after US Army TM 9-254'],
    [40, 300, 40, 45, 36.5537, 0.001, 'computed after US Army TM 9-254'],
    [40, 300, 40, 180, 46.1538, 0.001, 'computed after US Army TM 9-254'],
    [5, 150, 25, 0, 4.2857, 0.001, 'computed after US Army TM 9-254'],
    [80, 40, 5, 90, 80, 0.0001, 'a published engineering example'],
  ])(
    '[T7] %d with grip %d, offset %d at %d° is set as %d (±%d, %s)',
    (target, grip, offset, angle, set, within) => {
      expect(Math.abs(target / factorOf(grip, offset, angle) - set)).toBeLessThanOrEqual(within);
    },
  );

  // a published engineering page: how far the bolt is out when the setting is left uncorrected, E/L = 0.25
  test.each<[angle: number, percent: number]>([
    [75, 6.5],
    [85, 2.2],
    [90, 0],
    [100, -4.3],
  ])('[T7] left uncorrected at %d°, the bolt is %d %% out', (angle, percent) => {
    expect(Math.abs((factorOf(100, 25, angle) - 1) * 100 - percent)).toBeLessThanOrEqual(0.06);
  });

  test('[T7] a straight extension on the drive axis changes nothing (common practice, no source)', () => {
    expect(factorOf(180, 0, 37)).toBe(1);
  });
});
