import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  effortOf,
  remainingEffort,
  resolvePlan,
  shopEffort,
  type ThreePoints,
} from '../../../src/engine/plan';
import { bikeFrom, mountainBike } from '../../support/bikes';
import { catalogueOf } from '../../support/catalogues';

const estimate: ThreePoints = [2, 4, 12]; // expects 5, spreads by 5/3

describe('the shop’s own history', () => {
  // Source: Bühlmann credibility n/(n + k) with k = 5, worked by hand.
  test.each<[situation: string, taken: number[], expected: number]>([
    ['nothing yet: the catalogue', [], 5],
    ['one build moves a sixth of the way', [11], 6],
    ['five builds meet half-way', [7, 7, 7, 7, 7], 6],
    ['twenty builds carry four fifths', Array<number>(20).fill(10), 9],
    ['a day over a cup of tea counts as thrice the most', [600], (5 * 5 + 36) / 6],
    ['a late tap counts as a third of the least', [0], (5 * 5 + 2 / 3) / 6],
  ])('[P50] %s', (_, taken, expected) => {
    expect(shopEffort(estimate, taken).expected).toBeCloseTo(expected, 12);
  });

  test('[P50] the spread is pooled: about the catalogue’s while thin, the shop’s own when thick', () => {
    // Source: normal model with unknown variance (Gelman and others, Bayesian Data Analysis, 3.3), worked by hand.
    expect(shopEffort(estimate, []).spread).toBeCloseTo(10 / 6, 12);
    const one = Math.sqrt((5 * (10 / 6) ** 2 + (5 / 6) * 36) / 6);
    expect(shopEffort(estimate, [11]).spread).toBeCloseTo(one, 12);
    const steady = Array<number>(2000).fill(5);
    expect(shopEffort(estimate, steady).spread).toBeLessThan(0.1);
  });

  test('[P50] the answer lies between the catalogue and the shop, and nearer the shop with every build', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 30, noNaN: true }),
        fc.integer({ min: 1, max: 60 }),
        (value, count) => {
          const catalogue = effortOf([estimate]).expected;
          const few = shopEffort(estimate, Array<number>(count).fill(value)).expected;
          const more = shopEffort(estimate, Array<number>(count + 1).fill(value)).expected;
          expect(few).toBeGreaterThanOrEqual(Math.min(catalogue, value) - 1e-9);
          expect(few).toBeLessThanOrEqual(Math.max(catalogue, value) + 1e-9);
          expect(Math.abs(more - value)).toBeLessThanOrEqual(Math.abs(few - value) + 1e-9);
        },
      ),
      { seed: 2520 },
    );
  });

  test('[P50] a plan’s remaining effort takes each step’s own history', () => {
    const steps = [
      { id: 'one', effort: estimate },
      { id: 'two', effort: estimate },
      { id: 'done', effort: estimate },
    ];
    const plan = resolvePlan(bikeFrom(mountainBike), catalogueOf({ steps }));
    if (!plan.ok) throw new Error(`a plan was expected, not ${plan.refusal.code}`);
    const taken = { two: [11], done: [30], elsewhere: [90] };
    const left = remainingEffort(plan.value, { done: ['done'], taken });
    expect(left.expected).toBeCloseTo(5 + 6, 12);
    const two = shopEffort(estimate, [11]).spread;
    expect(left.spread).toBeCloseTo(Math.hypot(10 / 6, two), 12);
  });
});
