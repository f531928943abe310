/** The chance of ending outside, against plain counting. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Demand } from '../../../src/engine/torque/demand';
import { plusMinus } from '../../../src/engine/torque/deviation-curve';
import { riskOutside } from '../../../src/engine/torque/risk';
import { newtonMetres } from '../../../src/engine/units';

const range = (min: number, max: number): Demand => ({
  kind: 'range',
  min: newtonMetres(min),
  max: newtonMetres(max),
  target: newtonMetres((min + max) / 2),
});

describe('riskOutside', () => {
  // by hand: at 5.3 ± 6 % a true 5 is a deviation of +6 %, a true 5.5 one of −3.636 %: 9.636 of 12 parts are inside
  test.each<[situation: string, Demand, indicated: number, deviation: number, risk: number]>([
    ['well inside', range(4, 6), 5, 0.04, 0],
    ['just inside', range(5, 5.64), 5.3, 0.06, 0],
    ['partly above', range(5, 5.5), 5.3, 0.06, 0.19697],
    ['half below', range(5, 9), 5, 0.04, 0.5],
    ['all above', range(4, 6), 7, 0.04, 1],
    ['all below', range(4, 6), 3, 0.04, 1],
    ['a wrench without deviation, inside', range(4, 6), 6, 0, 0],
    ['a wrench without deviation, outside', range(4, 6), 6.1, 0, 1],
    ['a maximum half passed', { kind: 'maximum', max: newtonMetres(5) }, 5, 0.04, 0.5],
    ['a maximum far away', { kind: 'maximum', max: newtonMetres(5) }, 1, 0.04, 0],
    ['a minimum half missed', { kind: 'minimum', min: newtonMetres(5) }, 5, 0.04, 0.5],
    ['a single value met', { kind: 'single', target: newtonMetres(5) }, 5.1, 0.04, 0],
    ['a single value missed', { kind: 'single', target: newtonMetres(5) }, 5.5, 0.04, 1],
    ['a single value missed below', { kind: 'single', target: newtonMetres(5) }, 4.5, 0.04, 1],
  ])('[T14] %s', (_, demand, indicated, deviation, risk) => {
    expect(riskOutside(demand, indicated, plusMinus(deviation), deviation)).toBeCloseTo(risk, 5);
  });

  test('[T14] it is the share of evenly spread deviations that miss the range (JCGM 100:2008, 4.3.7)', () => {
    const steps = 2000;
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 7, noNaN: true }),
        fc.double({ min: 0.01, max: 0.3, noNaN: true }),
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        (indicated, deviation, width) => {
          let outside = 0;
          for (let step = 0; step < steps; step += 1) {
            const found = deviation * ((2 * (step + 0.5)) / steps - 1);
            const actual = indicated / (1 + found);
            if (actual < 5 - width / 2 || actual > 5 + width / 2) outside += 1;
          }
          const risk = riskOutside(
            range(5 - width / 2, 5 + width / 2),
            indicated,
            plusMinus(deviation),
            deviation,
          );
          expect(Math.abs(risk - outside / steps)).toBeLessThanOrEqual(2 / steps);
        },
      ),
      { numRuns: 60 },
    );
  });

  // by hand: true torques from 5/1.05 = 4.762 to 5/1.01 = 4.950; a limit of 4.85 is a deviation of 3.093 %, 1.907 of 4 parts below
  test('[T14] a band that lies to one side is counted as it lies', () => {
    const band = { low: 0.01, high: 0.05 };
    expect(riskOutside(range(4.85, 6), 5, band, 0.04)).toBeCloseTo(0.4768, 4);
    expect(riskOutside(range(4, 4.85), 5, band, 0.04)).toBeCloseTo(0.5232, 4);
    expect(riskOutside(range(4.95, 6), 5, band, 0.04)).toBeCloseTo(0.99747, 4);
    expect(riskOutside(range(4, 4.7), 5, band, 0.04)).toBe(1);
    expect(riskOutside(range(4.7, 5), 5, band, 0.04)).toBe(0);
  });

  test('[T12, T14] a single value is met by the likeliest torque within the tolerance, or by the band itself', () => {
    const known = { low: 0.05, high: 0.05 };
    const five: Demand = { kind: 'single', target: newtonMetres(5) };
    expect(riskOutside(five, 5.25, known, 0)).toBe(0);
    expect(riskOutside(five, 5.3, known, 0)).toBe(1);
    expect(riskOutside(five, 5.3, known, 0.01)).toBe(0);
    expect(riskOutside(five, 5.2, known, 0.01)).toBe(0);
    expect(riskOutside(five, 5.1, known, 0.01)).toBe(1);
    expect(riskOutside(five, 5.3, { low: 0, high: 0.1 }, 0)).toBe(0);
  });
});
