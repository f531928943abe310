import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Judgement, judgeMeasure } from '../../../src/engine/inspection';

type Row = [
  situation: string,
  limit: { min?: number; max?: number },
  value: number,
  uncertainty: number | undefined,
  judgement: Judgement,
];

describe('inside', () => {
  test.each<Row>([
    ['between two limits', { min: 10, max: 15 }, 12, undefined, 'inside'],
    ['exactly on the upper limit', { max: 2 }, 2, undefined, 'inside'],
    ['exactly on the lower limit', { min: 65 }, 65, undefined, 'inside'],
    ['exactly on the reduced limit', { max: 2 }, 1.8, 0.2, 'inside'],
    [
      'on the reduced limit, though its sum leaves dust in binary',
      { max: 0.3 },
      0.2,
      0.1,
      'inside',
    ],
    ['just short of the reduced limit', { max: 2 }, 1.81, 0.2, 'undecided'],
    ['just short of the raised lower limit', { min: 65 }, 65.9, 1, 'undecided'],
    ['exactly on the raised lower limit', { min: 65 }, 66, 1, 'inside'],
    ['inside both, but the guard bands meet', { min: 1, max: 2 }, 1.5, 0.6, 'undecided'],
  ])('[N4] %s', (_, limit, value, uncertainty, judgement) => {
    expect(judgeMeasure(limit, value, uncertainty)).toBe(judgement);
  });

  test('[N4] accepted values stay inside for every true value that the uncertainty allows', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.double({ min: -10, max: 110, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (one, other, value, uncertainty, error) => {
          const limit = { min: Math.min(one, other), max: Math.max(one, other) };
          const judgement = judgeMeasure(limit, value, uncertainty);
          const truth = value + error * uncertainty;
          if (judgement === 'inside') {
            expect(truth).toBeGreaterThanOrEqual(limit.min - 1e-6);
            expect(truth).toBeLessThanOrEqual(limit.max + 1e-6);
          }
          if (judgement === 'outside') expect(truth > limit.min && truth < limit.max).toBe(false);
        },
      ),
      { seed: 2301 },
    );
  });
});

describe('outside and undecided', () => {
  test.each<Row>([
    ['above the upper limit', { max: 2 }, 2.01, undefined, 'outside'],
    ['below the lower limit', { min: 65 }, 64.9, undefined, 'outside'],
    ['beyond the limit by less than the uncertainty', { max: 2 }, 2.1, 0.2, 'undecided'],
    ['beyond the limit by exactly the uncertainty', { max: 2 }, 2.2, 0.2, 'undecided'],
    ['beyond the limit by more than the uncertainty', { max: 2 }, 2.21, 0.2, 'outside'],
    ['below the limit by more than the uncertainty', { min: 10, max: 15 }, 9.7, 0.2, 'outside'],
  ])('[N5] %s', (_, limit, value, uncertainty, judgement) => {
    expect(judgeMeasure(limit, value, uncertainty)).toBe(judgement);
  });
});

describe('nothing to judge by', () => {
  test.each<Row>([
    ['no limit', {}, 3, undefined, 'undecided'],
    ['a value that is no number', { max: 2 }, Number.NaN, undefined, 'undecided'],
    [
      'an endless value under a lower limit only',
      { min: 2 },
      Number.POSITIVE_INFINITY,
      undefined,
      'undecided',
    ],
    [
      'an endless value over an upper limit',
      { max: 2 },
      Number.POSITIVE_INFINITY,
      undefined,
      'undecided',
    ],
    ['an uncertainty that is no number', { max: 2 }, 1, Number.NaN, 'undecided'],
    ['an endless uncertainty', { max: 2 }, 1, Number.POSITIVE_INFINITY, 'undecided'],
  ])('[N6] %s', (_, limit, value, uncertainty, judgement) => {
    expect(judgeMeasure(limit, value, uncertainty)).toBe(judgement);
  });
});
