/** A typed box is judged at the door: whatever its plan would refuse stands beside its field, with what to write. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { contradictionsIn } from '../../src/engine/bike';
import { workedMeasure } from '../../src/engine/plan';
import type { BoxDraft } from '../../src/screens/box-answers';
import { draftOf, emptyDraft, readDraft, withKind } from '../../src/screens/box-draft';
import { words } from '../../src/words';
import { bikeFrom, mountainBike } from '../support/bikes';

const filled: BoxDraft = {
  ...emptyDraft,
  make: 'Larkfell',
  model: 'Hardtail 29',
  frameNumber: 'LF29-1',
  frontTyre: '57-622',
  pressure: '30–50 psi',
};

function complaints(changes: Partial<BoxDraft>): Readonly<Record<string, string>> {
  const reading = readDraft({ ...filled, ...changes });
  return reading.ok ? {} : Object.fromEntries(reading.wrong);
}

describe('what is typed', () => {
  test('makes a bike when every field makes sense, the rear tyre like the front', () => {
    expect(readDraft(filled)).toMatchObject({
      ok: true,
      bike: { frameNumber: 'LF29-1', rear: { tyre: '57-622', tyrePressure: '30–50 psi' } },
    });
  });

  test.each<[string, Partial<BoxDraft>, Record<string, string>]>([
    [
      '99 sprockets',
      { speeds: '99' },
      { 'gears.speeds': 'Write a whole number from 1 to 14, for example 7.' },
    ],
    ['no sprockets named', { speeds: '' }, {}],
    [
      'a post whose point was lost',
      { post: '272' },
      { 'seat.postDiameter': 'Write a number from 22 to 36 mm, for example 27.2.' },
    ],
    [
      'a post that is not named',
      { post: '' },
      { 'seat.postDiameter': 'Write a number from 22 to 36 mm, for example 27.2.' },
    ],
    [
      'a load in tonnes',
      { loadLimit: '0,12' },
      { loadLimit: 'Write a number from 20 to 500 kg, for example 120.' },
    ],
    // GS1 General Specifications: 629104150021 has the check digit 3.
    [
      'a bar code with a wrong check digit',
      { gtin: '6291041500214' },
      { gtin: words.goodsIn.gtinShape },
    ],
    ['a bar code of five digits', { gtin: '12345' }, { gtin: words.goodsIn.gtinShape }],
    ['no tyre', { frontTyre: '' }, { 'front.tyre': words.goodsIn.tyreShape }],
    [
      'a pressure without its unit',
      { pressure: '40-65' },
      {
        'front.tyrePressure':
          'The front tyre’s pressure “40-65” has no unit. Add it as printed: psi, bar or kPa.',
      },
    ],
  ])('is complained of: %s', (_, changes, expected) => {
    expect(complaints(changes)).toEqual(expected);
  });

  test.each<[string, Partial<BoxDraft>, string, RegExp]>([
    [
      'a tyre called big',
      { frontTyre: 'big' },
      'front.tyre',
      /“big” cannot be read.*57-622|37-622/,
    ],
    ['another rear tyre', { rearTyre: 'fat' }, 'rear.tyre', /^The rear tyre’s size “fat”/],
    ['psi backwards', { pressure: '65-40 psi' }, 'front.tyrePressure', /the lower figure first/],
    ['bar backwards', { pressure: '5-2.5 bar' }, 'front.tyrePressure', /the lower figure first/],
    ['psi as bar', { pressure: '40-65 bar' }, 'front.tyrePressure', /65 bar.*between 1 and 16 bar/],
  ])('is complained of where it stands: %s', (_, changes, place, sentence) => {
    const said = complaints(changes);
    expect(Object.keys(said)).toEqual([place]);
    expect(said[place]).toMatch(sentence);
  });

  test('is complained of all at once, not one after another', () => {
    const said = complaints({
      make: '',
      speeds: '99',
      post: '309',
      frontTyre: 'big',
      pressure: '5-2 bar',
    });
    expect(Object.keys(said).sort()).toEqual(
      ['front.tyre', 'front.tyrePressure', 'gears.speeds', 'make', 'seat.postDiameter'].sort(),
    );
    expect(said.make).toBe(words.goodsIn.needed);
  });

  test('that no bike has together is named on both sides, as the fields are called', () => {
    expect(complaints({ gears: 'single-speed' })).toEqual({
      'gears.kind': words.goodsIn.atOdds('gears.speeds', 12),
      'gears.speeds': words.goodsIn.atOdds('gears.kind', 'single-speed'),
    });
    expect(words.goodsIn.atOdds('gears.kind', 'single-speed')).toContain('Gears “single speed”');
  });

  test('and taken has nothing by which a plan refuses tyres or features', () => {
    const typed = fc.record({
      frontTyre: fc.constantFrom('57-622', 'big', '28 x 1.75', '26 x 1'),
      pressure: fc.constantFrom('', '65-40 psi', '30-50 psi', '40-65', '9 bar'),
      gears: fc.constantFrom('derailleur', 'hub', 'single-speed'),
      speeds: fc.constantFrom('1', '7', '15'),
      rearBrake: fc.constantFrom('coaster', 'hydraulic-disc'),
      rearAxle: fc.constantFrom('nutted', 'thru-axle'),
    } as const);
    fc.assert(
      fc.property(typed, (changes) => {
        const reading = readDraft({ ...filled, ...changes } as BoxDraft);
        expect(reading.ok || reading.wrong.size > 0).toBe(true);
        if (!reading.ok) return;
        expect(contradictionsIn(reading.bike)).toEqual([]);
        for (const wheel of ['front', 'rear'] as const) {
          const measure = { id: 'p', name: 'Pressure', how: '', unit: 'kPa' } as const;
          const limit = { rule: `tyre-window-${wheel}` } as const;
          expect(workedMeasure(reading.bike, { ...measure, limit }).ok).toBe(true);
        }
      }),
    );
  });
});

describe('what was never asked', () => {
  test.each(['mountain-hardtail', 'town'] as const)(
    'is not known: the materials of a %s',
    (kind) => {
      const reading = readDraft(withKind(filled, kind));
      expect(reading).toMatchObject({
        ok: true,
        bike: {
          frame: { material: 'unknown' },
          fork: { steerer: 'unknown' },
          steering: { barMaterial: 'unknown' },
          seat: { postMaterial: 'unknown' },
        },
      });
    },
  );
});

describe('a stored bike that is corrected', () => {
  test('keeps what it said of its materials', () => {
    const stored = bikeFrom(mountainBike, { frame: { material: 'titanium' } });
    expect(draftOf(stored, undefined)).toMatchObject({
      frameMaterial: 'titanium',
      postMaterial: stored.seat.postMaterial,
    });
  });

  test('is not held up by an article number that goods-in once took', () => {
    const gtinOf = (gtin: string) => draftOf(bikeFrom(mountainBike, { gtin }), undefined).gtin;
    expect(gtinOf('6291041500214')).toBe('');
    expect(gtinOf('6291041500213')).toBe('6291041500213');
  });
});
