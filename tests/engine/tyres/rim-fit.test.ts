/** Tyre widths and rim widths. */

import { describe, expect, test } from 'vitest';
import { rimFits, usualRimWidth } from '../../../src/engine/tyres';
import { tyreWidthsByRim } from '../../../src/engine/tyres/rim-fit';
import { millimetres } from '../../../src/engine/units';

const mm = millimetres;

describe('rimFits', () => {
  test.each(tyreWidthsByRim)(
    '[Y14] on $innerWidth mm: from $narrowest to $widest mm',
    ({ innerWidth, narrowest, widest }) => {
      const rim = mm(innerWidth);
      expect(rimFits(mm(narrowest), rim)).toBe(true);
      expect(rimFits(mm(widest), rim)).toBe(true);
      expect(rimFits(mm(narrowest - 1), rim)).toBe(false);
      expect(rimFits(mm(widest + 1), rim)).toBe(false);
    },
  );

  test('[Y14] between two rows the stricter bounds count', () => {
    expect(rimFits(mm(28), mm(22))).toBe(false);
    expect(rimFits(mm(30), mm(22))).toBe(true);
    expect(rimFits(mm(64), mm(22))).toBe(true);
    expect(rimFits(mm(65), mm(22))).toBe(false);
  });

  test('[Y14] outside the table nothing is usual', () => {
    expect(rimFits(mm(18), mm(12))).toBe(false);
    expect(rimFits(mm(120), mm(90))).toBe(false);
  });

  test.each([20, 23, 25, 28, 32, 35, 37, 40, 42, 47, 50, 54, 57, 62, 75, 100, 120])(
    '[Y14] a tyre of %d mm fits the rim that the rule of thumb gives for it',
    (width) => {
      expect(rimFits(mm(width), mm(usualRimWidth(mm(width))))).toBe(true);
    },
  );
});
