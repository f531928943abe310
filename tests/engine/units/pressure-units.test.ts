/** Pressure converts there and back; the factors themselves are checked in tests/reference. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { kilopascalsFrom, kilopascalsTo, pressureUnits } from '../../../src/engine/units';

describe('kilopascalsFrom and kilopascalsTo', () => {
  test('[U1] each is the other one backwards, in every unit', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...pressureUnits),
        fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
        (unit, value) => {
          expect(kilopascalsTo(kilopascalsFrom(value, unit), unit) / value).toBeCloseTo(1, 12);
        },
      ),
    );
  });

  test('[U1] a bar is exactly a hundred kilopascals', () => {
    expect(kilopascalsFrom(1, 'bar')).toBe(100);
  });
});
