/** A bike that cannot be planned is told why, in words for a person, and what to do about it. */

import { describe, expect, test } from 'vitest';
import { type Bike, factsOf } from '../../src/engine/bike';
import { featuresToHandle, resolvePlan } from '../../src/engine/plan';
import { words } from '../../src/words';
import { featureText } from '../../src/words/en/bike-places';
import { bikeFrom, mountainBike, townBike } from '../support/bikes';
import { catalogueOf } from '../support/catalogues';
import { seedCatalogue } from '../support/seed-catalogue';

const catalogue = seedCatalogue();

function sentenceFor(bike: Bike, from = catalogue): string {
  const plan = resolvePlan(bike, from);
  if (plan.ok) throw new Error('a refusal was expected');
  return words.refusal({ ...plan.refusal });
}

test.each<[situation: string, bike: Bike, says: RegExp]>([
  [
    'features at odds',
    bikeFrom(mountainBike, { gears: { drive: 'belt' } }),
    /“Chain or belt: belt” with “Gears: derailleur”\. Look at the bike again/,
  ],
  [
    'a tyre that cannot sit on its rim',
    bikeFrom(townBike, { front: { tyre: '25-622', rimInnerWidth: 25 } }),
    /front tyre is 25 mm wide and its rim 25 mm inside.*fit a tyre and rim/,
  ],
])('%s', (_, bike, says) => {
  const sentence = sentenceFor(bike);
  expect(sentence).toMatch(says);
  expect(sentence).not.toMatch(/undefined|\[object|=/);
  expect(sentence.at(-1)).toBe('.');
});

test('features that a catalogue has no work for', () => {
  const bare = catalogueOf({ steps: [{ id: 'unpack' }] });
  const sentence = sentenceFor(bikeFrom(townBike, { extras: ['basket'], kind: 'folding' }), bare);
  expect(sentence).toMatch(/“Kind of bike: folding” and “Also on the bike: basket”/);
  expect(sentence).toMatch(/by the maker’s instructions/);
});

describe('every feature that a refusal may name', () => {
  const bikes = [
    bikeFrom(mountainBike),
    bikeFrom(townBike),
    bikeFrom(townBike, { kind: 'cargo', assist: 'hub-motor' }),
  ];

  test('has a name that is not its place in the description', () => {
    for (const { question, answer } of bikes.flatMap((bike) => featuresToHandle(factsOf(bike))))
      expect(featureText({ question, answer })).not.toMatch(/^[a-z]+(\.[a-zA-Z]+)?:/);
  });
});
