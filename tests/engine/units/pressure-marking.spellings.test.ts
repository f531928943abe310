/** Every way a unit of pressure is spelled on a side wall, a rim or a pump; common practice, no source. */

import { describe, expect, test } from 'vitest';
import { type PressureUnit, parsePressureMarking } from '../../../src/engine/units';

describe('parsePressureMarking', () => {
  const spellings: readonly (readonly [PressureUnit, readonly string[]])[] = [
    ['kPa', ['kPa', 'KPA', 'kpa', 'k Pa']],
    ['bar', ['bar', 'bars', 'BAR', 'Bar']],
    ['psi', ['psi', 'PSI', 'p.s.i', 'p s i', 'p. s. i', 'ps.i', 'p.si']],
    ['psi', ['lb/in2', 'lbf/in2', 'lbs/in2', 'lb./in2', 'lb /in2', 'lb  / in2', 'lb/  in2']],
    ['psi', ['lb/in.2', 'lb/in 2', 'lb/in  2', 'lb/in^2', 'lb/in²', 'LBS/IN²', 'lbf/in. ²']],
    ['psi', ['lb/sq in', 'lb/sqin', 'lb/sq. in', 'lb/sq.in', 'lb/sq  in', 'lbs per sq in']],
    ['psi', ['lb per in2', 'lbperin2', 'lb per  sq. in', 'lbs. per sq. in']],
  ];

  test.each(spellings)(
    '[U12] %s is read however it is spelled, closed and followed',
    (unit, forms) => {
      for (const form of forms) {
        const alone = { target: 3, unit };
        const limit = { max: 3, unit };
        expect([form, ...read(`3 ${form}`)]).toEqual([form, alone]);
        expect([form, ...read(`3${form}`)]).toEqual([form, alone]);
        expect([form, ...read(`3 ${form}.`)]).toEqual([form, alone]);
        expect([form, ...read(`3 ${form} max`)]).toEqual([form, limit]);
        expect([form, ...read(`3 ${form}. max`)]).toEqual([form, limit]);
        expect([form, ...read(`(3 ${form})`)]).toEqual([form, alone]);
      }
    },
  );

  test.each(spellings)('[U12] %s with more letters is another word', (_, forms) => {
    for (const form of forms) {
      expect([form, parsePressureMarking(`3 ${form}x`).ok]).toEqual([form, false]);
      expect([form, parsePressureMarking(`3 ${form}é`).ok]).toEqual([form, false]);
    }
  });

  // the full stop belongs to what follows: a number that starts with one, or the dots of a range
  test.each<[text: string, printed: readonly object[]]>([
    ['3 bar..4 bar', [{ unit: 'bar', min: 3, max: 4 }]],
    ['3 kPa...4 kPa', [{ unit: 'kPa', min: 3, max: 4 }]],
    ['40 psi..65 psi', [{ unit: 'psi', min: 40, max: 65 }]],
    [
      '1 bar .9 bar',
      [
        { unit: 'bar', target: 1 },
        { unit: 'bar', target: 0.9 },
      ],
    ],
    [
      '1 bar.9 bar',
      [
        { unit: 'bar', target: 1 },
        { unit: 'bar', target: 0.9 },
      ],
    ],
    [
      '1 kPa.9 kPa',
      [
        { unit: 'kPa', target: 1 },
        { unit: 'kPa', target: 0.9 },
      ],
    ],
    [
      '1 psi.9 psi',
      [
        { unit: 'psi', target: 1 },
        { unit: 'psi', target: 0.9 },
      ],
    ],
  ])('[U12] the stop in “%s” is not the unit’s', (text, printed) => {
    expect(read(text)).toEqual(printed);
  });

  test.each<[text: string, part: string]>([
    ['3 k  Pa', 'k'],
    ['3 k-Pa', 'k'],
    ['3 p  si', 'p'],
    ['3 p-si', 'p'],
    ['3 ps-i', 'ps'],
    ['3 lb/cm2', 'lb'],
    ['3 lb-/in2', 'lb'],
    ['3 lb/-in2', 'lb'],
    ['3 lb/sq-in', 'lb'],
    ['3 lb/in-2', 'lb'],
    ['3 lb/in', 'lb'],
    ['3 lb', 'lb'],
  ])('[U12] “%s” is no pressure: refused for “%s”', (text, part) => {
    expect(parsePressureMarking(text)).toEqual({
      ok: false,
      refusal: { code: 'marking-not-understood', text, part },
    });
  });

  test.each<[text: string]>([
    ['Inflate 3 bar'],
    ['INFLATE  TO 3 bar'],
    ['inflate to: 3 bar'],
    ['Inflation: 3 bar'],
    ['Inflation pressure 3 bar'],
    ['Tire pressure 3 bar'],
    ['Tyre  pressure : 3 bar'],
    ['Recommended pressure 3 bar'],
    ['nominal 3 bar'],
  ])('[U12] words that only name a pressure do not count: %s', (text) => {
    expect(read(text)).toEqual([{ unit: 'bar', target: 3 }]);
  });
});

/** What was printed, without what follows from it. */
function read(text: string): readonly object[] {
  const marking = parsePressureMarking(text);
  if (!marking.ok) return [marking.refusal];
  return marking.value.printed.map(({ inBaseUnit: _, text: __, ...printed }) => printed);
}
