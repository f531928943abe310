/** The rule of the maximum and the certificate that overrides it; the class table is checked in tests/reference. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Certificate,
  deliveredInterval,
  permissibleDeviation,
  relativeDeviation,
} from '../../../src/engine/torque';
import { newtonMetres, newtonMetresTo, torqueUnits } from '../../../src/engine/units';
import { wrench } from '../../support/wrenches';

describe('permissibleDeviation', () => {
  test.each(torqueUnits.map((unit) => [unit]))(
    '[T4] ten newton metres is the boundary on a scale in %s',
    (unit) => {
      const highestAt = (torque: number) => newtonMetresTo(newtonMetres(torque), unit);
      const own = { unit, lowest: 0.01, increment: 0.01 };
      expect(permissibleDeviation(wrench({ ...own, highest: highestAt(10) }))).toBe(0.06);
      expect(permissibleDeviation(wrench({ ...own, highest: highestAt(10.01) }))).toBe(0.04);
    },
  );

  test.each<[situation: string, certificate: Certificate, deviation: number]>([
    ['better than its class', { deviation: 0.015 }, 0.015],
    ['worse than its class', { deviation: 0.07 }, 0.07],
    [
      'the worst point counts',
      {
        points: [
          { at: 5, deviation: 0.01 },
          { at: 25, deviation: -0.03 },
        ],
      },
      0.03,
    ],
    ['its uncertainty added', { points: [{ at: 5, deviation: -0.01, uncertainty: 0.01 }] }, 0.02],
    ['the worse of both', { deviation: 0.02, points: [{ at: 5, deviation: 0.01 }] }, 0.02],
  ])('[T4] a certificate overrides the class: %s', (_, certificate, deviation) => {
    expect(permissibleDeviation(wrench({ certificate }))).toBeCloseTo(deviation, 12);
  });

  test('[T4] a class that a type does not have is a bug', () => {
    expect(() => permissibleDeviation({ ...wrench(), type: 'I', class: 'G' })).toThrow(
      'has no class',
    );
  });
});

describe('deliveredInterval', () => {
  test('[T5] its ends deviate by exactly the deviation, either way', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 500, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (set, deviation) => {
          const { low, high } = deliveredInterval(set, deviation);
          expect(relativeDeviation(set, low)).toBeCloseTo(deviation, 9);
          expect(relativeDeviation(set, high)).toBeCloseTo(-deviation, 9);
        },
      ),
    );
  });
});
