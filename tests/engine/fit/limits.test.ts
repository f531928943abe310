/** The choice of the limit that holds, and that every limit says where it comes from. */

import { describe, expect, test } from 'vitest';
import { fitLimits, leverReachLimit, toeClearanceLimit } from '../../../src/engine/fit';
import { millimetres } from '../../../src/engine/units';

describe('toeClearanceLimit', () => {
  test.each<[situation: string, asked: Parameters<typeof toeClearanceLimit>[0], id: string]>([
    ['an adult', {}, 'toe-clearance'],
    ['a young adult', { youngAdult: true }, 'toe-clearance-young-adult'],
    ['foot retention', { footRetention: true }, 'toe-clearance-foot-retention'],
    ['the US', { us: true }, 'toe-clearance-us'],
    [
      'the US with foot retention',
      { us: true, footRetention: true },
      'toe-clearance-foot-retention',
    ],
  ])('[F8] %s', (_, asked, id) => {
    expect(toeClearanceLimit(asked).id).toBe(id);
  });
});

describe('leverReachLimit', () => {
  test.each<[saddleHeight: number, us: boolean, max: number]>([
    [635, false, 90],
    [634, false, 75],
    [635, true, 89],
    [634, true, 76],
  ])('[F9] saddle at %d mm, US %s: at most %d mm', (saddleHeight, us, max) => {
    expect(leverReachLimit({ saddleHeight: millimetres(saddleHeight), us }).max).toBe(max);
  });
});

test('[F10] every limit has a source, a bound, and an id of its own', () => {
  const limits = Object.values(fitLimits);
  for (const limit of limits) {
    expect(limit.source).toMatch(/ISO 4210-2|JIS D 9301|16 CFR 1512/);
    expect('min' in limit || 'max' in limit).toBe(true);
  }
  expect(new Set(limits.map(({ id }) => id)).size).toBe(limits.length);
});
