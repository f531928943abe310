/** Tyre markings: what they mean, and what is refused. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { knownBeadSeats, parseTyreMarking } from '../../../src/engine/tyres';

function refusalOf(text: string) {
  const answer = parseTyreMarking(text);
  return answer.ok ? undefined : answer.refusal;
}

describe('parseTyreMarking', () => {
  test('[Y1] any width and any known bead seat are read back in the two-number form', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 18, max: 130 }),
        fc.constantFrom(...knownBeadSeats),
        (width, beadSeat) => {
          expect(parseTyreMarking(`${width}-${beadSeat}`)).toMatchObject({
            ok: true,
            value: { width, beadSeat },
          });
        },
      ),
    );
  });

  test.each<[marking: string, choices: number[]]>([
    ['650 x 47', [571, 584, 590]],
    ['28 x 1 3/8', [622, 642]],
    ['20 x 1.1', [406, 451]],
    ['16 x 1 3/8', [335, 337, 340, 349]],
    ['24 x 1 1/8', [520, 540]],
  ])('[Y2] %s may be any of %j', (text, choices) => {
    expect(refusalOf(text)).toEqual({ code: 'tyre-size-ambiguous', text, choices });
  });

  test('[Y2] a second size, or the two-number form, decides between the choices', () => {
    expect(parseTyreMarking('650 x 47 27.5 x 1.85')).toMatchObject({ value: { beadSeat: 584 } });
    expect(parseTyreMarking('16 x 1 3/8 37-349')).toMatchObject({
      value: { width: 37, beadSeat: 349 },
    });
  });

  test('[Y3] the two-number form gives the width too, wherever it stands', () => {
    expect(parseTyreMarking('28 x 1.75 700 x 45C (47-622)')).toMatchObject({
      value: { width: 47, beadSeat: 622 },
    });
    expect(parseTyreMarking('28 x 1.40 700 x 35C')).toMatchObject({ value: { width: 35 } });
  });

  test('[Y3] an inch size that no table knows is no matter beside the two-number form', () => {
    expect(parseTyreMarking('23 x 1.75 47-622')).toMatchObject({ value: { beadSeat: 622 } });
  });

  test.each<[marking: string]>([
    ['29 x 2.25 (57-584)'],
    ['47-622 47-559'],
    ['26 x 1.75 700 x 44C'],
  ])('[Y3] %s contradicts itself', (text) => {
    expect(refusalOf(text)).toMatchObject({ code: 'tyre-sizes-disagree', text });
    expect(refusalOf(text)).toHaveProperty('printed.length', 2);
  });

  test.each<[marking: string, size: string]>([
    ['57-599', '57-599'],
    ['57-599 29 x 2.25', '57-599'],
    ['23 x 1.75', '23 x 1.75'],
    ['650D x 38', '650d x 38'],
    ['26 x 1 7/8', '26 x 1 7/8'],
  ])('[Y4] %s is unknown', (text, size) => {
    expect(refusalOf(text)).toEqual({ code: 'tyre-size-unknown', text, size });
  });

  test.each(['', 'tubeless', '700 x ½', '40-65 psi', '26 x', 'x 1.75', '700E x 38'])(
    '[Y4] %j holds no size',
    (text) => {
      expect(refusalOf(text)).toEqual({ code: 'tyre-size-missing', text });
    },
  );

  test('[Y4] any text is answered, never thrown upon', () => {
    const characters = fc.constantFrom(...'0123456789 -x./,()½abcBARpsikmn');
    const pieces = fc.constantFrom(
      ...['57-622', '29 x 2.25', '700', '26', '1 3/8', '½', '1/0', 'x', 'c', '-', '.', ' '],
      ...['(', ')', 'max', 'min', '4', '100', 'psi', 'bar', 'kPa', '²', '⁄', '٣'],
    );
    const printed = fc.oneof(
      fc.string({ unit: characters, maxLength: 40 }),
      fc.array(pieces, { maxLength: 12 }).map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), printed), (text) => {
        expect(parseTyreMarking(text)).toHaveProperty('ok');
      }),
      { numRuns: 2000 },
    );
  });
});
