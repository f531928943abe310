import { describe, expect, test } from 'vitest';
import { type Limit, type LimitRule, type Measure, workedMeasure } from '../../../src/engine/plan';
import { bikeFrom, mountainBike, townBike } from '../../support/bikes';

const measure = {
  id: 'insertion',
  name: 'Insertion',
  how: 'Measure from the lowest point.',
  unit: 'mm',
} as const;

function limitOf(bike: ReturnType<typeof bikeFrom>, limit: Measure['limit']): Limit {
  const worked = workedMeasure(bike, { ...measure, limit });
  if (!worked.ok) throw new Error(`a limit was expected, not ${worked.refusal.code}`);
  return worked.value.limit;
}

const byRule = (bike: ReturnType<typeof bikeFrom>, rule: LimitRule) => limitOf(bike, { rule });

describe('insertion', () => {
  test.each<[situation: string, changes: Record<string, unknown>, min: number, source: RegExp]>([
    ['a 27.2 mm post', { seat: { postDiameter: 27.2 } }, 54.4, /twice the post’s diameter/],
    ['a 31.6 mm post', { seat: { postDiameter: 31.6 } }, 63.2, /twice the post’s diameter/],
    ['a post that is not round', { seat: { postShape: 'not-round' } }, 65, /^65 mm .*JIS D 9301/],
    [
      'a post that is not round in a frame that asks for more',
      { seat: { postShape: 'not-round' }, frame: { minimumInsertion: 90 } },
      90,
      /frame maker/,
    ],
    ['a frame that asks for more', { frame: { minimumInsertion: 80 } }, 80, /frame maker/],
    [
      'a frame that asks for less',
      { frame: { minimumInsertion: 50 } },
      63.2,
      /twice the post’s diameter/,
    ],
  ])('[P9] %s', (_, changes, min, source) => {
    const limit = byRule(bikeFrom(mountainBike, changes), 'seat-post-insertion');
    expect(limit.min).toBeCloseTo(min, 9);
    expect(limit.max).toBeUndefined();
    expect(limit.source).toMatch(source);
  });

  test('[P9] a quill stem stands in by two and a half times its diameter', () => {
    const limit = byRule(bikeFrom(townBike), 'quill-insertion');
    expect(limit.min).toBeCloseTo(55.5, 9);
    expect(limit.max).toBeUndefined();
  });
});

test('[P9] a limit that is written as numbers stays as it is', () => {
  const limit = { max: 2, source: 'ISO 4210-2' };
  expect(limitOf(bikeFrom(mountainBike), limit)).toEqual(limit);
});
