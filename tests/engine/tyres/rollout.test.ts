/** Rollout grows with both numbers of the size. */

import { expect, test } from 'vitest';
import { rollout } from '../../../src/engine/tyres';
import { millimetres } from '../../../src/engine/units';

test('[Y13] two millimetres more of width count as four of diameter', () => {
  const size = (width: number, beadSeat: number) =>
    rollout({ width: millimetres(width), beadSeat: millimetres(beadSeat) });
  expect(size(30, 622)).toBeCloseTo(size(28, 626), 9);
  expect(size(30, 622)).toBeGreaterThan(size(28, 622));
});
