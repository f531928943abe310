/** Whatever a bike is made of, the form at goods-in can say it, and says it back as it was. */

import { describe, expect, test } from 'vitest';
import { type Bike, bikeKinds, contradictionsIn, factsOf } from '../../src/engine/bike';
import { details } from '../../src/screens/bike-details';
import { draftOf, emptyDraft, readDraft, withKind } from '../../src/screens/box-draft';
import { words } from '../../src/words';
import { bikeFor, bikeSpace, parameters } from '../support/bike-space';
import { coveringArray } from '../support/covering-array';

/** Asked once for both wheels, or nowhere because the work never depends on it. */
const notAskedTwice = ['rear.tyrePressure'];

function factsSaid(bike: Bike): Record<string, unknown> {
  const facts = Object.entries(factsOf(bike)).filter(([place]) => !notAskedTwice.includes(place));
  return Object.fromEntries(facts);
}

describe('the form', () => {
  test('reads back every bike that holds any two features together', () => {
    for (const row of coveringArray(bikeSpace, 2, 5).rows) {
      const bike = bikeFor(row);
      const read = readDraft(draftOf(bike, undefined));
      if (!read.ok) throw new Error(`wrong: ${[...read.wrong].join(', ')}`);
      expect(factsSaid(read.bike)).toEqual(factsSaid(bike));
    }
  });

  test('asks, here or among the first questions, for all that makes bikes differ', () => {
    const asked = new Set(details.map(({ place }) => place));
    const first =
      /^(make|model|kind|assist|frameNumber|gtin|colour|size|loadLimit|extras:.*|fork\.(kind|steerer)|frame\.material|(front|rear)\.(axle|brake|tyre|tyrePressure)|steering\.(stem|bar|barMaterial)|seat\.(clamp|postMaterial|postDiameter)|gears\.(kind|speeds))$/;
    const left = parameters
      .map(({ question }) => question)
      .filter((question) => !asked.has(question) && !first.test(question));
    expect(left).toEqual([]);
  });

  test.each(details)('has words for $place', ({ place }) => {
    expect(words.goodsIn.places[place]?.length).toBeGreaterThan(3);
  });

  test.each(bikeKinds)('starts a %s from answers that can stand together', (kind) => {
    const typed = {
      make: 'Quayside',
      model: 'Any',
      frameNumber: 'QS-1',
      frontTyre: '40-622',
      rearTyre: '',
    };
    const read = readDraft({ ...withKind(emptyDraft, kind), ...typed });
    if (!read.ok) throw new Error(`wrong: ${[...read.wrong].join(', ')}`);
    expect(read.bike.kind).toBe(kind);
    expect(contradictionsIn(read.bike)).toEqual([]);
  });

  test('leaves open what was left as usual, and keeps what was answered', () => {
    const typed = {
      ...emptyDraft,
      make: 'Quayside',
      model: 'Any',
      frameNumber: 'QS-1',
      frontTyre: '40-622',
      details: { 'front.hose': 'to-fit', 'front.rimInnerWidth': '22,5', 'rear.fitted': 'false' },
    };
    const read = readDraft(typed);
    if (!read.ok) throw new Error(`wrong: ${[...read.wrong].join(', ')}`);
    expect(read.bike.front).toMatchObject({ hose: 'to-fit', rimInnerWidth: 22.5 });
    expect(read.bike.rear.fitted).toBe(false);
    expect(read.bike.rear.hose).toBeUndefined();
  });

  test('names the number that is none', () => {
    const read = readDraft({ ...emptyDraft, details: { 'front.rimInnerWidth': 'wide' } });
    expect(!read.ok && read.wrong.has('front.rimInnerWidth')).toBe(true);
  });
});
