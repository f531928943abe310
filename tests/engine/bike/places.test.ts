import { expect, test } from 'vitest';
import { type Place, places } from '../../../src/engine/bike';

test('[K5] no place is named twice', () => {
  expect(new Set(places).size).toBe(places.length);
});

// The four strokes of the M, each by places that every mechanic meets in this order. Common practice, no source.
test.each<[stroke: string, met: Place[]]>([
  [
    'up from the front wheel',
    ['front-tyre', 'front-hub', 'front-brake', 'fork', 'headset', 'stem', 'bar'],
  ],
  ['down the frame', ['bar', 'down-tube', 'bottom-bracket', 'cranks']],
  ['up to the saddle', ['cranks', 'seat-tube', 'seat-clamp', 'seat-post', 'saddle']],
  ['down to the rear wheel', ['saddle', 'rack', 'rear-brake', 'rear-hub', 'rear-tyre']],
  ['and once more as a whole', ['rear-tyre', 'whole-bike']],
])('[K5] %s', (_, met) => {
  const positions = met.map((place) => places.indexOf(place));
  expect(positions).toEqual([...positions].sort((a, b) => a - b));
});
