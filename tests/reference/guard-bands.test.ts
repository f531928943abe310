/** Guard bands of measured values against published examples. */

import { describe, expect, test } from 'vitest';
import { type Judgement, judgeMeasure } from '../../src/engine/inspection';
import {
  conformityProbability,
  falseAcceptance,
  type GuardedVerdict,
  guardedVerdict,
  guardFactor,
  normalQuantile,
} from '../../src/engine/torque';

type Limits = { min?: number; max?: number };

test.each<
  [situation: string, Limits, value: number, uncertainty: number, Judgement, source: string]
>([
  [
    'a micrometer off by 0.0017 mm, 0.003 allowed',
    { min: -0.003, max: 0.003 },
    0.0017,
    0.001,
    'inside',
    'a published ILAC-G8 example: acceptance limit 0.002 mm',
  ],
  [
    'the same micrometer exactly on the acceptance limit',
    { min: -0.003, max: 0.003 },
    0.002,
    0.001,
    'inside',
    'the same example',
  ],
  [
    'the same micrometer off by 0.0025 mm',
    { min: -0.003, max: 0.003 },
    0.0025,
    0.001,
    'undecided',
    'the same example: not accepted',
  ],
  [
    'rim runout of 2 mm exactly, none stated',
    { max: 2 },
    2,
    0,
    'inside',
    'ISO 4210-2 4.10.1 limit (from memory)',
  ],
])('[N4] %s', (_, limit, value, uncertainty, judgement) => {
  expect(judgeMeasure(limit, value, uncertainty)).toBe(judgement);
});

test.each<
  [situation: string, Limits, value: number, uncertainty: number, Judgement, source: string]
>([
  [
    'a value in the guard band above the limit',
    { max: 100 },
    101.9,
    2,
    'undecided',
    'ISO 14253-1: proving non-conformity needs the limit exceeded by the uncertainty',
  ],
  ['a value clear of the guard band', { max: 100 }, 102.1, 2, 'outside', 'ISO 14253-1'],
  // The guard factor for 99.9 % is 3.0902 standard uncertainties of 2 %: 100 / (1 − 3.0902 × 0.02) = 106.588.
  [
    'a speed of 107 where 100 is allowed',
    { max: 100 },
    107,
    107 * 0.02 * 3.0902,
    'outside',
    'JCGM 106:2012, guarded rejection of speeds (from memory, recomputed)',
  ],
  [
    'a speed of 106',
    { max: 100 },
    106,
    106 * 0.02 * 3.0902,
    'undecided',
    'JCGM 106:2012, guarded rejection of speeds (from memory, recomputed)',
  ],
])('[N5] %s', (_, limit, value, uncertainty, judgement) => {
  expect(judgeMeasure(limit, value, uncertainty)).toBe(judgement);
});

const normal = (standard: number) => ({ distribution: 'normal', standard }) as const;

describe('JCGM 106:2012', () => {
  test('[T30] a breakdown voltage of −5.47 V, u = 0.05 V, limit −5.40 V conforms with 0.92 (from memory, recomputed)', () => {
    const probability = conformityProbability(-5.47, { max: -5.4 }, normal(0.05));
    expect(Math.abs(probability - 0.9192433)).toBeLessThan(1e-7);
  });

  // table 1 prints 0.84, 1.28, 1.64, 2.33 and 3.09
  test.each<[probability: number, z: number]>([
    [0.8, 0.8416212],
    [0.9, 1.2815516],
    [0.95, 1.6448536],
    [0.99, 2.3263479],
    [0.999, 3.0902323],
  ])('[T29] a probability of %d at one limit takes %d standard uncertainties', (probability, z) => {
    expect(Math.abs(normalQuantile(probability) - z)).toBeLessThan(1e-6);
    expect(conformityProbability(10 - z, { max: 10 }, normal(1))).toBeCloseTo(probability, 6);
  });

  test('[T30] a speed is surely over 100 from 106.59 on, rounded up 107 (u = 2 %, 99.9 %; from memory, recomputed)', () => {
    const acceptance = 100 / (1 - normalQuantile(0.999) * 0.02);
    expect(Math.abs(acceptance - 106.58761)).toBeLessThan(1e-4);
    const innocent = (speed: number) =>
      conformityProbability(speed, { max: 100 }, normal(speed * 0.02));
    expect(innocent(107)).toBeLessThan(0.001);
    expect(innocent(106)).toBeGreaterThan(0.001);
    expect(innocent(acceptance)).toBeCloseTo(0.001, 9);
  });
});

describe('ILAC-G8:09/2019', () => {
  // table 1, published; printed as below 1 ppm, 0.16 %, 2.5 %, 5 % and 50 %, the tails computed
  test.each<[share: number, probability: number, printed: number]>([
    [3, 9.866e-10, 1e-6],
    [1.5, 0.0013499, 0.0016],
    [1, 0.02275013, 0.025],
    [0.83, 0.04845723, 0.05],
    [0, 0.5, 0.5],
  ])(
    '[T30] a guard band of %d U accepts what is outside with at most %d',
    (share, probability, printed) => {
      expect(Math.abs(falseAcceptance(share) - probability)).toBeLessThan(1e-8);
      expect(falseAcceptance(share)).toBeLessThanOrEqual(printed);
    },
  );

  // 4.2.3, published rule, numbers constructed: upper limit 6.0, w = 0.2
  test.each<[value: number, verdict: GuardedVerdict]>([
    [5.79, 'pass'],
    [5.9, 'conditional pass'],
    [6.1, 'conditional fail'],
    [6.21, 'fail'],
  ])('[T30] %d against 6.0 with w = 0.2: %s', (value, verdict) => {
    expect(guardedVerdict(value, { max: 6 }, 0.2)).toBe(verdict);
  });

  // a published example: 0.003 mm allowed, U = 0.001 mm, acceptance limit 0.002 mm
  test.each<[deviation: number, accepted: boolean]>([
    [0.0017, true],
    [0.002, true],
    [0.0025, false],
    [-0.0025, false],
  ])('[T30] a micrometer off by %d mm: accepted is %s', (deviation, accepted) => {
    const verdict = guardedVerdict(deviation, { min: -0.003, max: 0.003 }, 0.001);
    expect(verdict === 'pass').toBe(accepted);
  });
});

describe('ISO 14253-1:2017', () => {
  test('[T30] 95 % at one limit takes 0.8224 U, printed as 0.83', () => {
    expect(Math.abs(guardFactor(0.95) - 0.8224268)).toBeLessThan(1e-6);
    expect(falseAcceptance(0.83)).toBeLessThan(0.05);
  });
});
