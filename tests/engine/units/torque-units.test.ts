/** Torque converts there and back; the factors themselves are checked in tests/reference. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { newtonMetresFrom, newtonMetresTo, torqueUnits } from '../../../src/engine/units';

describe('newtonMetresFrom and newtonMetresTo', () => {
  test('[U1] each is the other one backwards, in every unit', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...torqueUnits),
        fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
        (unit, value) => {
          expect(newtonMetresTo(newtonMetresFrom(value, unit), unit) / value).toBeCloseTo(1, 12);
        },
      ),
    );
  });

  test('[U1] newton metres stay what they are', () => {
    expect(newtonMetresFrom(5.1, 'N·m')).toBe(5.1);
    expect(newtonMetresTo(newtonMetresFrom(5.1, 'N·m'), 'N·m')).toBe(5.1);
  });
});
