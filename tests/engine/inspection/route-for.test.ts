import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { places } from '../../../src/engine/bike';
import {
  judgeMeasure,
  type Point,
  pointSchema,
  routeFor,
  routePointSchema,
} from '../../../src/engine/inspection';
import { bikeFrom, mountainBike, townBike } from '../../support/bikes';

const pointFrom = (row: { id: string; [name: string]: unknown }): Point =>
  pointSchema.parse({
    zone: 'frame',
    place: 'fork',
    name: row.id,
    look: 'Take hold and rock it.',
    right: 'Nothing moves.',
    severity: 'stop-ride',
    ...row,
  });

const mountain = bikeFrom(mountainBike);
const town = bikeFrom(townBike);
const idsOn = (bike: typeof mountain, points: readonly Point[]) =>
  routeFor(bike, points).map((point) => point.id);

describe('the route', () => {
  test('[N1] front to rear, however the points are listed', () => {
    const points = [
      pointFrom({ id: 'tyre-behind', place: 'rear-tyre' }),
      pointFrom({ id: 'saddle', place: 'saddle' }),
      pointFrom({ id: 'headset', place: 'headset' }),
      pointFrom({ id: 'cranks', place: 'cranks' }),
      pointFrom({ id: 'tyre-ahead', place: 'front-tyre' }),
      pointFrom({ id: 'ride', place: 'whole-bike' }),
    ];
    expect(idsOn(mountain, points)).toEqual([
      'tyre-ahead',
      'headset',
      'cranks',
      'saddle',
      'tyre-behind',
      'ride',
    ]);
  });

  test('[N1] places never go back, and points of one place keep their order', () => {
    const rows = fc.array(fc.constantFrom(...places), { maxLength: 30 });
    fc.assert(
      fc.property(rows, (listed) => {
        const points = listed.map((place, index) => pointFrom({ id: `n${index}`, place }));
        const route = routeFor(town, points);
        expect(route).toHaveLength(points.length);
        for (const [index, point] of route.entries()) {
          const previous = route[index - 1];
          if (!previous) continue;
          const walked = places.indexOf(point.place) - places.indexOf(previous.place);
          expect(walked).toBeGreaterThanOrEqual(0);
          if (walked === 0)
            expect(Number(point.id.slice(1))).toBeGreaterThan(Number(previous.id.slice(1)));
        }
      }),
      { seed: 2302 },
    );
  });

  test('[N1] the list that was given is left as it was', () => {
    const points = [
      pointFrom({ id: 'last', place: 'whole-bike' }),
      pointFrom({ id: 'first', place: 'front-tyre' }),
    ];
    routeFor(town, points);
    expect(points.map((point) => point.id)).toEqual(['last', 'first']);
  });

  test('[N2] only what the bike has', () => {
    const points = [
      pointFrom({
        id: 'rotor',
        place: 'front-brake',
        when: { ask: 'front.brake', is: 'hydraulic-disc' },
      }),
      pointFrom({ id: 'rack', place: 'rack', when: { ask: 'extras', has: 'rack' } }),
      pointFrom({ id: 'frame', place: 'down-tube' }),
    ];
    expect(idsOn(mountain, points)).toEqual(['rotor', 'frame']);
    expect(idsOn(town, points)).toEqual(['frame', 'rack']);
  });
});

describe('limits on the route', () => {
  const pressure = pointFrom({
    id: 'pressure',
    place: 'front-tyre',
    measure: {
      id: 'front-pressure',
      name: 'Front pressure',
      how: 'Read the gauge.',
      unit: 'kPa',
      limit: { rule: 'tyre-window-front' },
    },
  });
  const measureOn = (front: Record<string, unknown>) => {
    const [point] = routeFor(bikeFrom(townBike, { front }), [pressure]);
    if (!point?.measure) throw new Error('a measure was expected');
    return { point, ...point.measure };
  };

  test('[N3] a rule becomes numbers', () => {
    const { limit, point } = measureOn({ tyrePressure: '3–5 bar' });
    expect(limit).toEqual({ min: 300, max: 500, source: 'printed on the tyre' });
    expect(judgeMeasure(limit, 400)).toBe('inside');
    expect(routePointSchema.parse(point)).toEqual(point);
  });

  test.each<[situation: string, front: Record<string, unknown>]>([
    ['no pressure is known', {}],
    ['the size is not understood', { tyre: 'round and black' }],
    ['the pressure is not understood', { tyrePressure: 'hard' }],
    ['the rim allows less than the tyre asks for', { tyrePressure: '4–6 bar', rimMaxKpa: 300 }],
  ])('[N3] %s: nothing is judged good', (_, front) => {
    const { limit } = measureOn(front);
    expect(limit.min ?? limit.max).toBeUndefined();
    expect(judgeMeasure(limit, 400)).toBe('undecided');
  });
});
