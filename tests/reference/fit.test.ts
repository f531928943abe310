/** Insertion and reach limits against standards and regulations. */

import { describe, expect, test } from 'vitest';
import {
  fitLimits,
  minimumInsertion,
  minimumQuillInsertion,
  saddleHeightFrom,
} from '../../src/engine/fit';
import { millimetres } from '../../src/engine/units';

const mm = millimetres;

describe('seat posts and stems', () => {
  test.each<[diameter: number, minimum: number, source: string]>([
    [25.4, 50.8, '16 CFR 1512.15(b): two diameters'],
    [27.2, 54.4, 'JIS D 9301:2019: two diameters'],
    [30.9, 61.8, '16 CFR 1512.15(b): two diameters'],
    [31.6, 63.2, '16 CFR 1512.15(b): two diameters'],
  ])('[F1] a round post of %d mm: %d mm (%s)', (diameter, minimum) => {
    const answer = minimumInsertion({ post: { diameter: mm(diameter) } });
    expect(answer.ok && answer.value.minimum).toBeCloseTo(minimum, 2);
  });

  test('[F1] a post that is not round: 65 mm (JIS D 9301:2019)', () => {
    const answer = minimumInsertion({ post: { diameter: mm(31.6), circular: false } });
    expect(answer.ok && answer.value.minimum).toBe(65);
  });

  test.each<[diameter: number, minimum: number, source: string]>([
    [22.2, 55.5, '16 CFR 1512.6(a), ISO 4210-2 4.7.3, from memory'],
    [25.4, 63.5, '16 CFR 1512.6(a), ISO 4210-2 4.7.3, from memory'],
  ])('[F4] a quill of %d mm: %d mm (%s)', (diameter, minimum) => {
    expect(minimumQuillInsertion({ diameter: mm(diameter) }).minimum).toBeCloseTo(minimum, 2);
  });
});

describe('limits', () => {
  test.each<
    [situation: string, limit: { min?: number; max?: number }, expected: object, source: string]
  >([
    ['toe clearance', fitLimits.toeClearance, { min: 100 }, 'ISO 4210-2 4.13.2.2'],
    ['young adult', fitLimits.toeClearanceYoungAdult, { min: 89 }, 'ISO 4210-2 4.13.2.2'],
    ['foot retention', fitLimits.toeClearanceFootRetention, { min: 89 }, 'ISO 4210-2 4.13.2.2'],
    ['toe clearance, US', fitLimits.toeClearanceUs, { min: 89 }, '16 CFR 1512.17(d)'],
    ['lever, saddle from 635 mm', fitLimits.leverReach, { max: 90 }, 'JIS D 9301:2019 5.2.2'],
    ['lever, smaller', fitLimits.leverReachSmallBike, { max: 75 }, 'JIS D 9301:2019 5.2.2'],
    ['lever, US', fitLimits.leverReachUs, { max: 89 }, '16 CFR 1512.5(b)(3)'],
    ['lever, US sidewalk', fitLimits.leverReachUsSidewalk, { max: 76 }, '16 CFR 1512.5(b)(3)'],
    ['bar width', fitLimits.barWidth, { min: 350, max: 1000 }, 'ISO 4210-2 4.7.1'],
    ['grip above saddle', fitLimits.gripAboveSaddle, { max: 400 }, 'ISO 4210-2 4.7.1'],
  ])('[F10] %s', (_, limit, expected) => {
    expect(limit).toMatchObject(expected);
  });
});

test('[F7] 0.883 × inseam (common practice, no source)', () => {
  expect(saddleHeightFrom(mm(820))).toBeCloseTo(724.06, 6);
});
