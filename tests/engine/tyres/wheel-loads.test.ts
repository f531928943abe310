/** The share of the load on each wheel. */

import { expect, test } from 'vitest';
import { frontShareByPosture, type Posture, wheelLoads } from '../../../src/engine/tyres';
import { kilograms } from '../../../src/engine/units';

const postures = Object.keys(frontShareByPosture) as Posture[];

test.each(postures)(
  '[Y15] %s: both wheels together carry the total, the rear one more',
  (posture) => {
    const { front, rear } = wheelLoads({ total: kilograms(97.3), posture });
    expect(front + rear).toBeCloseTo(97.3, 9);
    expect(rear).toBeGreaterThan(front);
  },
);
