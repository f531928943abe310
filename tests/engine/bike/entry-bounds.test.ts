import { describe, expect, test } from 'vitest';
import { bikeSchema, checkEntry, entryBounds, questions } from '../../../src/engine/bike';
import { mountainBike } from '../../support/bikes';

const code = (question: string, value: number) => {
  const checked = checkEntry(question, value);
  return checked.ok ? 'believed' : checked.refusal.code;
};

describe('a number that is entered', () => {
  test.each([
    ['the post of a town bike', 'seat.postDiameter', 27.2, 'common practice, no source'],
    ['a child’s post', 'seat.postDiameter', 22, 'common practice, no source'],
    ['a wide post', 'seat.postDiameter', 34.9, 'common practice, no source'],
    ['a rim for the widest tyres', 'front.rimInnerWidth', 100, 'common practice, no source'],
    ['a cassette of thirteen', 'gears.speeds', 13, 'common practice, no source'],
    ['a cargo bike with its load', 'loadLimit', 250, 'common practice, no source'],
  ])('[K10] is believed: %s', (_, question, value) => {
    expect(code(question, value)).toBe('believed');
  });

  test.each([
    ['a post whose point was lost', 'seat.postDiameter', 272],
    ['a post ten times as wide', 'seat.postDiameter', 309],
    ['a post given in cm', 'seat.postDiameter', 2.72],
    ['no number at all', 'seat.postDiameter', Number.NaN],
    ['half a sprocket', 'gears.speeds', 7.5],
    ['no sprocket', 'gears.speeds', 0],
    ['bar where kPa are asked', 'rear.rimMaxKpa', 4],
    ['a rim in inches', 'rear.rimInnerWidth', 1],
    ['tonnes', 'loadLimit', 1200],
  ])('[K10] is refused with its bounds: %s', (_, question, value) => {
    expect(checkEntry(question, value)).toEqual({
      ok: false,
      refusal: { code: 'entry-out-of-bounds', question, value, ...entryBounds[question] },
    });
  });

  test.each(Object.entries(entryBounds))(
    '[K10] %s has an example inside its bounds',
    (place, b) => {
      expect(questions).toContain(place);
      expect([b.min, b.max, b.example].map((value) => code(place, value))).toEqual(
        Array(3).fill('believed'),
      );
    },
  );
});

describe('what is counted', () => {
  test.each(['chainrings', 'speeds'] as const)('[K10] has the schema’s own bounds: %s', (name) => {
    const reads = (value: number) =>
      bikeSchema.safeParse({ ...mountainBike, gears: { ...mountainBike.gears, [name]: value } })
        .success;
    for (const value of [-1, 0, 0.5, 1, 3, 4, 14, 15, 99])
      expect([value, reads(value)]).toEqual([value, code(`gears.${name}`, value) === 'believed']);
  });
});

test('[K10] a stored bike reads as it was written', () => {
  const seat = { ...mountainBike.seat, postDiameter: 309 };
  expect(bikeSchema.parse({ ...mountainBike, seat }).seat.postDiameter).toBe(309);
});
