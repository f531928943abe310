import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Measure, tyreEntryFaults, workedMeasure } from '../../../src/engine/plan';
import { bikeFrom, mountainBike } from '../../support/bikes';

const frontPressure: Measure = {
  id: 'front-pressure',
  name: 'Pressure',
  how: 'Read the gauge.',
  unit: 'kPa',
  limit: { rule: 'tyre-window-front' },
};

const faultsOf = (changes: Record<string, unknown>) =>
  tyreEntryFaults('front', bikeFrom(mountainBike, { front: changes }).front).map(
    ({ place, refusal }) => [place, refusal.code],
  );

describe('a wheel that is entered', () => {
  test.each([
    ['a size that is none', { tyre: 'big' }, [['front.tyre', 'tyre-not-understood']]],
    [
      'pressures backwards, psi',
      { tyrePressure: '65-40 psi' },
      [['front.tyrePressure', 'tyre-pressure-not-understood']],
    ],
    [
      'pressures backwards, bar',
      { tyrePressure: '5-2.5 bar' },
      [['front.tyrePressure', 'tyre-pressure-not-understood']],
    ],
    [
      'a pressure without a unit',
      { tyrePressure: '40-65' },
      [['front.tyrePressure', 'tyre-pressure-not-understood']],
    ],
    [
      'psi written as bar',
      { tyrePressure: '40-65 bar' },
      [['front.tyrePressure', 'tyre-pressure-unlikely']],
    ],
    [
      'bar written as psi',
      { tyrePressure: 'max 4.5 psi' },
      [['front.tyrePressure', 'tyre-pressure-unlikely']],
    ],
    [
      'a pressure beside the size',
      { tyre: '57-622 max 99 bar', tyrePressure: undefined },
      [['front.tyre', 'tyre-pressure-unlikely']],
    ],
    [
      'size and pressure both',
      { tyre: 'big', tyrePressure: '65-40 psi' },
      [
        ['front.tyre', 'tyre-not-understood'],
        ['front.tyrePressure', 'tyre-pressure-not-understood'],
      ],
    ],
    [
      'a tyre as narrow as its rim',
      { tyre: '25-622', tyrePressure: undefined, rimInnerWidth: 25 },
      [['front.tyre', 'tyre-narrower-than-rim']],
    ],
    [
      'a tyre that asks for more than its rim holds',
      { tyrePressure: '4-6 bar', rimMaxKpa: 350 },
      [['front.tyrePressure', 'tyre-window-empty']],
    ],
  ])('[P51] is refused with its place: %s', (_, changes, expected) => {
    expect(faultsOf(changes)).toEqual(expected);
  });

  // From memory: greatest pressures as printed on tyres for sand, for the trail, for the town and for the track.
  test.each(['5-20 psi', '30-50 psi', '2.5-5 bar', '220 psi', '350 kPa'])(
    '[P51] may have %s printed on its tyre',
    (tyrePressure) => {
      expect(faultsOf({ tyrePressure, rimMaxKpa: undefined, hookless: false })).toEqual([]);
    },
  );

  test('[P51] without a fault is planned; with one other than its unit it is not', () => {
    const entry = fc.record({
      tyre: fc.constantFrom('57-622', '28 x 1.75', '26 x 1', 'big', '25-622', '57-622 9-4 bar'),
      tyrePressure: fc.constantFrom(undefined, '65-40 psi', '40-65', '2-4 bar', '6 bar', '6-9 bar'),
      rimInnerWidth: fc.constantFrom(undefined, 21, 30),
      rimMaxKpa: fc.constantFrom(undefined, 350, 900),
      hookless: fc.boolean(),
    });
    fc.assert(
      fc.property(entry, (changes) => {
        const bike = bikeFrom(mountainBike, { front: changes });
        const planned = workedMeasure(bike, frontPressure).ok;
        expect(tyreEntryFaults('front', bike.front).length === 0).toBe(planned);
      }),
    );
  });
});
