/** Gauge and temperature. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { gaugeAt } from '../../../src/engine/tyres';
import { kilopascals } from '../../../src/engine/units';

const celsius = fc.integer({ min: -20, max: 50 });

test('[Y12] there and back is where it began, and warmer is more', () => {
  fc.assert(
    fc.property(fc.integer({ min: 100, max: 900 }), celsius, celsius, (start, a, b) => {
      const pressure = kilopascals(start);
      const there = gaugeAt({ pressure, fromCelsius: a, toCelsius: b });
      expect(gaugeAt({ pressure: there, fromCelsius: b, toCelsius: a })).toBeCloseTo(start, 6);
      if (b !== a) expect(there > start).toBe(b > a);
    }),
  );
});
