/** Values that lie on a limit, or beside it by no more than binary fractions leave. */

import { describe, expect, test } from 'vitest';
import { conformityProbability, guardedVerdict } from '../../../src/engine/torque';

describe('conformityProbability', () => {
  test.each<[value: number, probability: number]>([
    [3.999, 0],
    [4, 1],
    [5, 1],
    [6, 1],
    [6.001, 0],
  ])('[T30] without uncertainty %d N·m is surely in or surely out', (value, probability) => {
    const limits = { min: 4, max: 6 };
    const standard = { distribution: 'normal', standard: 0 } as const;
    const even = { distribution: 'rectangular', halfWidth: 0 } as const;
    expect(conformityProbability(value, limits, standard)).toBe(probability);
    expect(conformityProbability(value, limits, even)).toBe(probability);
  });
});

describe('guardedVerdict', () => {
  // dust is a share of the value: 1e-6 at a thousand, a millionth of that at a thousandth
  test.each<[value: number, max: number, verdict: string]>([
    [1000 + 5e-7, 1000, 'conditional pass'],
    [1000 + 2e-6, 1000, 'conditional fail'],
    [0.001 + 5e-13, 0.001, 'conditional pass'],
    [0.001 + 2e-12, 0.001, 'conditional fail'],
  ])('[T30] %d against %d is %s', (value, max, verdict) => {
    expect(guardedVerdict(value, { max }, max / 100)).toBe(verdict);
  });
});
