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
});
