import fc from 'fast-check';
import { expect, test } from 'vitest';
import { effortOf, type ThreePoints } from '../../../src/engine/plan';

const estimates = fc
  .tuple(
    fc.double({ min: 0.1, max: 60, noNaN: true }),
    fc.double({ min: 0, max: 60, noNaN: true }),
    fc.double({ min: 0, max: 60, noNaN: true }),
  )
  .map(([least, more, most]): ThreePoints => [least, least + more, least + more + most]);

test('[P12] expected lies between least and most, and pieces add up in any order', () => {
  fc.assert(
    fc.property(fc.array(estimates, { minLength: 1, maxLength: 20 }), (pieces) => {
      const whole = effortOf(pieces);
      const sum = (index: 0 | 2) => pieces.reduce((total, piece) => total + piece[index], 0);
      expect(whole.expected).toBeGreaterThanOrEqual(sum(0) - 1e-9);
      expect(whole.expected).toBeLessThanOrEqual(sum(2) + 1e-9);
      const backwards = effortOf([...pieces].reverse());
      expect(backwards.expected).toBeCloseTo(whole.expected, 9);
      expect(backwards.spread).toBeCloseTo(whole.spread, 9);
    }),
    { seed: 2403 },
  );
});

test('[P12] spread grows with the root of the count, not with the count', () => {
  const piece: ThreePoints = [1, 2, 7];
  expect(effortOf([piece, piece, piece, piece]).spread).toBeCloseTo(
    2 * effortOf([piece]).spread,
    12,
  );
});
