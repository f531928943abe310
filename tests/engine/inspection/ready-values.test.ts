/** The values a screen may offer to tap. */

import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judgeMeasure, readyValues } from '../../../src/engine/inspection';

describe('what is offered', () => {
  test.each([
    ['between two limits, up to the ends', { min: 10, max: 15 }, [10, 11, 12, 13, 14, 15]],
    [
      'between two limits that are no round numbers',
      { min: 2.07, max: 3.45 },
      [2.2, 2.4, 2.6, 2.8, 3, 3.2, 3.4],
    ],
    ['under a small maximum, from nothing', { max: 2 }, [0, 0.5, 1, 1.5, 2]],
    ['under a smaller one, finer', { max: 1 }, [0, 0.2, 0.4, 0.6, 0.8, 1]],
    ['under a length, back from it', { max: 90 }, [60, 65, 70, 75, 80, 85, 90]],
    ['over a least length, on from it', { min: 100 }, [100, 110, 120, 130, 140, 150, 160]],
    [
      'over an odd least length, at the next round one',
      { min: 55.5 },
      [60, 70, 80, 90, 100, 110, 120],
    ],
    ['without a limit, nothing', {}, []],
    ['between limits that are one, that one is no choice', { min: 5, max: 5 }, []],
  ])('[N7] %s', (_, limit, expected) => {
    expect(readyValues(limit)).toEqual(expected);
  });

  test('[N7] every value is inside the limit, and they rise evenly', () => {
    const number = fc.integer({ min: 1, max: 100_000 }).map((whole) => whole / 100);
    const limit = fc
      .record({
        min: fc.option(number, { nil: undefined }),
        over: fc.option(number, { nil: undefined }),
      })
      .map(({ min, over }) => ({
        ...(min !== undefined && { min }),
        ...(over !== undefined && { max: (min ?? 0) + over }),
      }));
    fc.assert(
      fc.property(limit, (between) => {
        const values = readyValues(between);
        expect(values.length).toBeLessThanOrEqual(7);
        for (const value of values) expect(judgeMeasure(between, value)).toBe('inside');
        const steps = values.slice(1).map((value, index) => value - (values[index] ?? 0));
        for (const step of steps) expect(step).toBeCloseTo(steps[0] ?? 0, 6);
        expect(steps.every((step) => step > 0)).toBe(true);
      }),
    );
  });
});
