/** What a mechanic shows good again after loosening something, held against the plans of two bikes. */

import { describe, expect, test } from 'vitest';
import { staleAfter } from '../../src/engine/plan';
import { bikeFrom, mountainBike, townBike } from '../support/bikes';
import { planOf } from '../support/plan-of';

const plans = { mountain: planOf(bikeFrom(mountainBike)), town: planOf(bikeFrom(townBike)) };

// Source of all rows: common practice, no source.
describe('rework', () => {
  test.each<[loosened: string, kind: keyof typeof plans, stale: string[], untouched: string[]]>([
    [
      'steerer-clamp',
      'mountain',
      ['bar-alignment', 'headset-play'],
      [
        'limit-screws',
        'indexing',
        'rear-disc-rub',
        'front-caliper-mount',
        'left-pedal',
        'seat-post-clamp',
      ],
    ],
    [
      'close-front-quick-release',
      'mountain',
      ['front-disc-rub', 'bar-alignment', 'brake-hold'],
      ['rear-disc-rub', 'indexing', 'faceplate', 'seat-post-clamp'],
    ],
    [
      'front-caliper-align',
      'mountain',
      ['front-caliper-mount', 'front-disc-rub', 'brake-hold'],
      ['rear-disc-rub', 'bar-alignment'],
    ],
    [
      'hanger-straight',
      'mountain',
      ['limit-screws', 'indexing'],
      ['front-disc-rub', 'bar-alignment', 'left-crank'],
    ],
    [
      'close-rear-quick-release',
      'mountain',
      ['rear-disc-rub', 'indexing', 'brake-hold'],
      ['front-disc-rub', 'bar-alignment'],
    ],
    [
      'quill-wedge',
      'town',
      ['bar-alignment', 'quill-insertion'],
      ['hub-gear-marks', 'rear-brake-centre', 'front-axle-nuts'],
    ],
    [
      'rear-axle-nuts',
      'town',
      ['rear-brake-centre', 'chain-slack', 'hub-gear-marks'],
      ['front-brake-centre', 'bar-alignment'],
    ],
    [
      'front-axle-nuts',
      'town',
      ['front-brake-centre', 'bar-alignment'],
      ['rear-brake-centre', 'chain-slack'],
    ],
    [
      'seat-post-clamp',
      'town',
      ['seat-post-insertion'],
      ['front-brake-centre', 'bar-alignment', 'rear-axle-nuts'],
    ],
    ['left-pedal', 'town', [], ['right-pedal', 'left-crank', 'right-crank', 'chain-slack']],
  ])('[P11] loosening %s (%s bike)', (loosened, kind, stale, untouched) => {
    const inPlan = plans[kind].steps.map((step) => step.id);
    for (const id of [loosened, ...stale, ...untouched]) expect(inPlan).toContain(id);
    const found = staleAfter(plans[kind], [loosened]);
    expect(found).toEqual(expect.arrayContaining(stale));
    expect(found.filter((id) => untouched.includes(id))).toEqual([]);
  });
});

describe('measures', () => {
  const measureIn = (kind: keyof typeof plans, step: string) =>
    plans[kind].steps.find(({ id }) => id === step)?.measures[0];

  test.each<[step: string, kind: keyof typeof plans, limit: object, source: string]>([
    [
      'front-runout',
      'mountain',
      { max: 2 },
      'ISO 4210-2 4.10.1 (from memory): 2 mm without a rim brake',
    ],
    [
      'front-runout-rim-brake',
      'town',
      { max: 1 },
      'ISO 4210-2 4.10.1 (from memory): 1 mm with a rim brake',
    ],
    ['chain-slack', 'town', { min: 10, max: 15 }, 'common practice, no source'],
    ['seat-post-insertion', 'mountain', { min: 2 * 31.6 }, '16 CFR 1512.15(b): twice the diameter'],
    ['seat-post-insertion', 'town', { min: 2 * 27.2 }, '16 CFR 1512.15(b): twice the diameter'],
    [
      'quill-insertion',
      'town',
      { min: 2.5 * 22.2 },
      '16 CFR 1512.6(a), from memory: two and a half times the diameter',
    ],
  ])('[P9] %s (%s bike)', (step, kind, limit) => {
    expect(measureIn(kind, step)?.limit).toMatchObject(limit);
  });

  test('[P10] a tyre whose pressure is not known is not given one', () => {
    const pressure = measureIn('town', 'front-tyre-pressure');
    expect(pressure?.unit).toBe('kPa');
    expect(pressure?.limit.min ?? pressure?.limit.max).toBeUndefined();
    expect(pressure?.limit.source).toMatch(/side wall/);
  });

  test('[P9] a printed 40–65 psi asks for about 50', () => {
    // Source: common practice, no source: with no rider known, the middle of the printed range.
    const plan = planOf(bikeFrom(mountainBike, { front: { tyrePressure: '40-65 psi' } }));
    const step = plan.steps.find(({ id }) => id === 'front-tyre-pressure');
    const suggested = step?.measures[0]?.suggested ?? 0;
    expect(suggested / 6.894757).toBeGreaterThan(48);
    expect(suggested / 6.894757).toBeLessThan(55);
  });
});
