/** Probabilities and guard bands of measured values; published examples are in tests/reference/guard-bands.test.ts. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  conformityProbability,
  expandedUncertainty,
  falseAcceptance,
  type GuardedVerdict,
  guardedVerdict,
  guardFactor,
  type Uncertainty,
} from '../../../src/engine/torque';

const normal = (standard: number): Uncertainty => ({ distribution: 'normal', standard });
const rectangular = (halfWidth: number): Uncertainty => ({
  distribution: 'rectangular',
  halfWidth,
});

describe('conformityProbability', () => {
  test.each<
    [
      situation: string,
      value: number,
      limits: { min?: number; max?: number },
      Uncertainty,
      probability: number,
    ]
  >([
    ['on a limit', 6, { min: 4, max: 6 }, normal(0.1), 0.5],
    ['one standard uncertainty inside', 5.9, { max: 6 }, normal(0.1), 0.8413447],
    ['between two limits', 5, { min: 4.9, max: 5.1 }, normal(0.1), 0.6826895],
    ['far outside', 7, { max: 6 }, normal(0.1), 7.6198530241605e-24],
    ['no limit', 7, {}, normal(0.1), 1],
    ['no uncertainty, inside', 6, { max: 6 }, normal(0), 1],
    ['no uncertainty, outside', 6.01, { max: 6 }, normal(0), 0],
    ['evenly spread, on a limit', 6, { max: 6 }, rectangular(0.1), 0.5],
    ['evenly spread, a quarter beyond', 4.05, { min: 4 }, rectangular(0.1), 0.75],
    ['evenly spread, wider than the limits', 5, { min: 4.9, max: 5.1 }, rectangular(0.4), 0.25],
    ['evenly spread, wholly outside', 7, { max: 6 }, rectangular(0.1), 0],
    ['evenly spread over nothing', 6, { max: 6 }, rectangular(0), 1],
  ])('[T30] %s', (_, value, limits, uncertainty, probability) => {
    expect(conformityProbability(value, limits, uncertainty)).toBeCloseTo(probability, 7);
  });

  test('[T30] of a thousand normal errors, as many leave the value inside as it says', () => {
    const between = fc.double({ min: 3, max: 7, noNaN: true });
    fc.assert(
      fc.property(between, fc.double({ min: 0.05, max: 1, noNaN: true }), (value, standard) => {
        let inside = 0;
        const steps = 4000;
        for (let step = 0; step < steps; step += 1) {
          const z = -8 + (16 * (step + 0.5)) / steps;
          const truth = value - z * standard;
          if (truth >= 4 && truth <= 6) inside += Math.exp((-z * z) / 2);
        }
        const counted = (inside * 16) / steps / Math.sqrt(2 * Math.PI);
        const computed = conformityProbability(value, { min: 4, max: 6 }, normal(standard));
        expect(Math.abs(computed - counted)).toBeLessThan(0.005);
      }),
      { numRuns: 50 },
    );
  });
});

describe('guardedVerdict', () => {
  test.each<[value: number, guard: number, verdict: GuardedVerdict]>([
    [5, 0.2, 'pass'],
    [5.8, 0.2, 'pass'],
    [5.81, 0.2, 'conditional pass'],
    [6, 0.2, 'conditional pass'],
    [6.01, 0.2, 'conditional fail'],
    [6.2, 0.2, 'conditional fail'],
    [6.21, 0.2, 'fail'],
    [4.2, 0.2, 'pass'],
    [3.8, 0.2, 'conditional fail'],
    [3.79, 0.2, 'fail'],
    [6, 0, 'pass'],
    [6.01, 0, 'fail'],
  ])('[T30] %d between 4 and 6 with a guard band of %d: %s', (value, guard, verdict) => {
    expect(guardedVerdict(value, { min: 4, max: 6 }, guard)).toBe(verdict);
  });
});

describe('guard factors', () => {
  test('[T30] the factor for a confidence lets through what it leaves', () => {
    for (const confidence of [0.6, 0.8, 0.95, 0.999]) {
      for (const k of [1, 2, 3]) {
        expect(falseAcceptance(guardFactor(confidence, k), k)).toBeCloseTo(1 - confidence, 11);
      }
    }
  });

  test('[T30] U is twice the standard uncertainty; evenly spread errors reach no further than they can', () => {
    expect(expandedUncertainty(normal(0.1))).toBe(0.2);
    expect(expandedUncertainty(rectangular(0.3))).toBe(0.3);
  });
});
