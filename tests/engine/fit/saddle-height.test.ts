/** Saddle height grows with the inseam and nothing else. */

import { expect, test } from 'vitest';
import { saddleHeightFrom } from '../../../src/engine/fit';
import { millimetres } from '../../../src/engine/units';

test('[F7] an inseam of 800 mm advises 706 mm', () => {
  // Source: 0.883 × inseam, common practice, no source.
  expect(saddleHeightFrom(millimetres(800))).toBeCloseTo(706.4, 6);
});
