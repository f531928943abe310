/** The deviation along a scale: by hand between points, and gapless from zero upwards. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Certificate, deviationAt, permissibleDeviation } from '../../../src/engine/torque';
import { stretchesOf } from '../../../src/engine/torque/deviation-curve';
import { newtonMetresFrom } from '../../../src/engine/units';
import { wrench } from '../../support/wrenches';

const found = {
  points: [
    { at: 20, deviation: -0.01, uncertainty: 0.02 },
    { at: 4, deviation: 0.03, uncertainty: 0.01 },
    { at: 12, deviation: 0.01 },
  ],
};

describe('deviationAt', () => {
  test.each<
    [situation: string, Certificate | undefined, indicated: number, low: number, high: number]
  >([
    ['without a certificate, the class', undefined, 5, -0.04, 0.04],
    ['one deviation is ± it', { deviation: 0.015 }, 5, -0.015, 0.015],
    ['at a point', found, 4, 0.02, 0.04],
    ['at a point without uncertainty', found, 12, 0.01, 0.01],
    ['half-way between two', found, 8, 0.015, 0.025],
    ['three quarters on the way', found, 18, -0.02, 0.01],
    ['below the first it is held', found, 2, 0.02, 0.04],
    ['above the last it is held', found, 25, -0.03, 0.01],
    ['one point holds everywhere', { points: [{ at: 5, deviation: -0.02 }] }, 20, -0.02, -0.02],
    [
      'one value tested twice: both count',
      {
        points: [
          { at: 5, deviation: -0.02 },
          { at: 5, deviation: 0.01 },
        ],
      },
      5,
      -0.02,
      0.01,
    ],
    [
      'a general deviation is never narrowed',
      { deviation: 0.02, points: [{ at: 5, deviation: 0.03 }] },
      5,
      -0.02,
      0.03,
    ],
  ])('[T4] %s', (_, certificate, indicated, low, high) => {
    const tool = certificate === undefined ? wrench() : wrench({ certificate });
    const band = deviationAt(tool, indicated);
    expect(band.low).toBeCloseTo(low, 12);
    expect(band.high).toBeCloseTo(high, 12);
  });

  test('[T4] the points are in the unit of the scale', () => {
    const inches = wrench({
      unit: 'lbf·in',
      lowest: 20,
      highest: 200,
      certificate: {
        points: [
          { at: 40, deviation: 0.02 },
          { at: 80, deviation: 0.04 },
        ],
      },
    });
    expect(deviationAt(inches, newtonMetresFrom(60, 'lbf·in')).high).toBeCloseTo(0.03, 12);
  });

  const certificates = fc.record(
    {
      deviation: fc.double({ min: 0, max: 0.1, noNaN: true }),
      points: fc.array(
        fc.record({
          at: fc.integer({ min: 2, max: 25 }),
          deviation: fc.double({ min: -0.1, max: 0.1, noNaN: true }),
          uncertainty: fc.double({ min: 0, max: 0.05, noNaN: true }),
        }),
        { minLength: 1, maxLength: 6 },
      ),
    },
    { requiredKeys: ['points'] },
  );

  test('[T4] never wider than the worst of the certificate, and without a jump or a gap', () => {
    fc.assert(
      fc.property(
        certificates,
        fc.double({ min: 0.1, max: 40, noNaN: true }),
        (certificate, indicated) => {
          const tool = wrench({ certificate });
          const { low, high } = deviationAt(tool, indicated);
          const worst = permissibleDeviation(tool) + 1e-12;
          expect(low).toBeLessThanOrEqual(high);
          expect(Math.max(Math.abs(low), Math.abs(high))).toBeLessThanOrEqual(worst);
          const near = deviationAt(tool, indicated * (1 + 1e-9));
          expect(near.low).toBeCloseTo(low, 6);
          expect(near.high).toBeCloseTo(high, 6);
          const stretches = stretchesOf(tool);
          expect(stretches[0]?.from).toBe(0);
          expect(stretches.at(-1)?.to).toBe(Infinity);
          for (const [index, { to }] of stretches.entries()) {
            if (index + 1 < stretches.length) expect(stretches[index + 1]?.from).toBe(to);
          }
        },
      ),
    );
  });
});
