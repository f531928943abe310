/** Every way a unit of torque is spelled beside a bolt, and the words around it; common practice, no source. */

import { describe, expect, test } from 'vitest';
import { parseTorqueMarking, type TorqueUnit } from '../../../src/engine/units';

const joints = [
  '',
  ' ',
  '-',
  '‐',
  '‑',
  '–',
  '−',
  '.',
  '·',
  '•',
  '∙',
  '⋅',
  '・',
  '*',
  '×',
  ' · ',
  '  -  ',
];
const metres = ['m', 'meter', 'meters', 'metre', 'metres', 'mètre', 'mètres', 'M'];
const centimetres = ['cm', 'centimeter', 'centimetres', 'centimètre', 'CM'];
const kilograms = [
  ...['kg', 'kgf', 'kp', 'kg.', 'kilogram', 'kilograms', 'kilogramme', 'kilogrammes'],
  ...['kilogram-force', 'kilogram force', 'kilogramforce', 'kilopond', 'kiloponds', 'KGF'],
];
const pounds = [
  ...['lb', 'lbs', 'lbf', 'lb.', 'lbs.', 'lbf.', 'pound', 'pounds', 'pound-force', 'pounds force'],
  ...['pound  force', 'poundforce', 'LBS'],
];
const inches = ['in', 'in.', 'inch', 'inches', 'inch.', 'IN'];
const feet = ['ft', 'ft.', 'foot', 'feet', 'FT'];

const families: readonly {
  readonly unit: TorqueUnit;
  readonly firsts: readonly string[];
  readonly seconds: readonly string[];
  readonly eitherWay: boolean;
}[] = [
  { unit: 'N·m', firsts: ['N', 'newton', 'newtons', 'n'], seconds: metres, eitherWay: false },
  { unit: 'N·m', firsts: ['Н', 'н'], seconds: ['м', 'М'], eitherWay: false },
  { unit: 'lbf·in', firsts: pounds, seconds: inches, eitherWay: true },
  { unit: 'lbf·ft', firsts: pounds, seconds: feet, eitherWay: true },
  { unit: 'kgf·cm', firsts: kilograms, seconds: centimetres, eitherWay: true },
  { unit: 'kgf·m', firsts: kilograms, seconds: metres, eitherWay: true },
];

describe('parseTorqueMarking', () => {
  test.each(families)(
    '[U3] $unit of $firsts and $seconds',
    ({ unit, firsts, seconds, eitherWay }) => {
      const [first = '', second = ''] = [firsts[0], seconds[0]];
      const pairs = [
        ...joints.map((joint) => [first, joint, second]),
        ...firsts.flatMap((one) =>
          seconds.flatMap((other) => [
            [one, '', other],
            [one, '-', other],
          ]),
        ),
      ];
      const forms = pairs.flatMap((pair) => [pair, ...(eitherWay ? [pair.toReversed()] : [])]);
      const wrong = forms.map((pair) => pair.join('')).filter((form) => !isRead(form, unit));
      expect(wrong).toEqual([]);
    },
  );

  test.each<[TorqueUnit, form: string]>([
    ['N·m', 'Nm'],
    ['lbf·in', 'in-lb'],
    ['lbf·in', 'in/lb'],
    ['lbf·in', 'in / lbs'],
    ['lbf·ft', 'ft-lb'],
    ['lbf·ft', 'ft/lbs'],
    ['kgf·cm', 'kgf·cm'],
    ['kgf·m', 'kgf·m'],
  ])('[U3] %s as %s ends where the word ends', (unit, form) => {
    expect(isRead(form, unit)).toBe(true);
    expect(read(`5 ${form}. max`)).toEqual([{ unit, max: 5 }]);
    expect(read(`5 ${form} max`)).toEqual([{ unit, max: 5 }]);
    expect(read(`5 ${form}..6 ${form}`)).toEqual([{ unit, min: 5, max: 6 }]);
    expect(read(`5 ${form}.6 ${form}`)).toEqual([
      { unit, target: 5 },
      { unit, target: 0.6 },
    ]);
    expect(parseTorqueMarking(`5 ${form}x`).ok).toBe(false);
    expect(parseTorqueMarking(`5 ${form}é`).ok).toBe(false);
    expect(parseTorqueMarking(`5 ${form}²`).ok).toBe(false);
  });

  test.each<[text: string]>([
    ['tightening 5 Nm'],
    ['tightening: 5 Nm'],
    ['recommended 5 Nm'],
    ['NOMINAL 5 Nm'],
    ['torque:5 Nm'],
    ['torque  :  5 Nm'],
    ['tighten 5 Nm'],
    ['tighten  to 5 Nm'],
    ['5 Nm each'],
    ['Anzugsdrehmoment: 5 Nm'],
    ['Anzugsmoment: 5 Nm'],
    ['Drehmoment 5 Nm'],
    ['Drehmoment: 5 Nm'],
    ['TQ = 5 Nm'],
    ['MD: 5 Nm'],
    ['MA=5 Nm'],
    ['T: 5 Nm'],
  ])('[U13] words that only name a torque do not count: %s', (text) => {
    expect(read(text)).toEqual([{ unit: 'N·m', target: 5 }]);
  });

  test.each<[beside: string]>(
    [
      ...['M5', 'M4,', 'M12', 'M2.5', 'M2,5', 'M5x0.8', 'M5 x 0.8', 'M5×.8', 'M5x0,8', 'M10x1'],
      ...['M10 x 1.25', 'M5:', 'M5 :', 'M5 -', 'M5 –', '4xM5', '4 x M5', '4×M5', '12 x M5', '(M5)'],
      ...['T6', 'T7', 'T8', 'T9', 'T10', 'T15', 'T20', 'T25', 'T27', 'T30', 'T40', 'T45', 'T50'],
      ...['T55', 'T25:', 'T25 :', 't25', 'm5', 'M5 T25', 'M5, T25:'],
    ].map((beside) => [beside]),
  )('[U13] a size stands beside the figure: %s', (beside) => {
    expect(read(`${beside} 5 Nm`)).toEqual([{ unit: 'N·m', target: 5 }]);
  });

  test.each<[text: string, part: string]>([
    ['M123 5 Nm', 'M123'],
    ['M5a 5 Nm', 'M5a'],
    ['AM5 5 Nm', 'AM5'],
    ['T11 5 Nm', 'T11'],
    ['T255 5 Nm', 'T255'],
    ['AT25 5 Nm', 'AT25'],
    ['T25.5 5 Nm', 'T25.5'],
    ['T25a 5 Nm', 'T25a'],
    ['M 5 Nm', 'M'],
    ['tq 5 Nm', 'tq'],
    ['5 Nm teach', 'teach'],
    ['5 Nm a', 'a'],
    ['about 5 Nm', 'about'],
    ['snug, 5 Nm', 'snug'],
    ['5 Nm x2.5y', 'x2.5y'],
    ['5 Nm é!', 'é'],
    ['5 Nm #é', '#'],
  ])('[U7] “%s” is refused for “%s” and no more', (text, part) => {
    expect(parseTorqueMarking(text)).toEqual({
      ok: false,
      refusal: { code: 'marking-not-understood', text, part },
    });
  });

  test.each<[text: string]>([
    ['8 ± 1 Nm'],
    ['8 +/- 1 Nm'],
    ['8 +/– 1 Nm'],
    ['8 +/− 1 Nm'],
    ['8 + /- 1 Nm'],
    ['8 +  /- 1 Nm'],
    ['8 +/ - 1 Nm'],
    ['8 +/  - 1 Nm'],
    ['8 +- 1 Nm'],
    ['8 Nm (+/- 1 Nm)'],
    ['8 Nm {± 1}'],
  ])('[U4] plus or minus, however it is written: %s', (text) => {
    expect(read(text)).toEqual([{ unit: 'N·m', min: 7, target: 8, max: 9 }]);
  });

  test.each<[bound: 'min' | 'max', before: readonly string[], after: readonly string[]]>([
    [
      'max',
      [
        ...['≤', '<', '<=', 'max', 'max.', 'MAXI', 'maximal', 'maximum', 'up to', 'not exceed'],
        ...['do not exceed', 'not to exceed', 'do not to exceed', 'not more than', 'no more than'],
        ...['not over', 'no over', 'at most', 'less than', 'under', '(max)', '( max. )', '(≤)'],
      ],
      ['max', 'max.', 'maximum', '(max)', '( maximum )', 'or less', 'or under', 'or below'],
    ],
    [
      'min',
      [
        ...['≥', '>', '>=', 'min', 'min.', 'MINI', 'minimal', 'minimum', 'not less than'],
        ...['no less than', 'at least', 'more than', '(min)', '( min. )', '(≥)'],
      ],
      ['min', 'min.', 'minimum', '(min)', '( minimum )', 'or more', 'or over', 'or above'],
    ],
  ])('[U4] a %s before or after the number', (bound, before, after) => {
    const texts = [
      ...before.filter((word) => !word.startsWith('(')).map((word) => `${word} 5 Nm`),
      ...after.map((word) => `5 Nm ${word}`),
      ...after.map((word) => `5 ${word} Nm`),
    ];
    const expected = texts.map((text) => [text, { unit: 'N·m', [bound]: 5 }]);
    expect(texts.map((text) => [text, ...read(text)])).toEqual(expected);
  });

  test.each<[text: string, part: string]>([
    ['maxx 5 Nm', 'maxx'],
    ['mint 5 Nm', 'mint'],
    ['upto 5 Nm', 'upto'],
    ['5 Nm or lessen', 'lessen'],
    ['at mostly 5 Nm', 'at'],
    ['5 Nm percents', 'percents'],
    ['froms 4 to 6 Nm', 'froms'],
    ['between 4 andy 6 Nm', 'andy'],
    ['4 too 6 Nm', 'too'],
    ['4 ato 6 Nm', 'ato'],
    ['4 a6 Nm', 'a6'],
    ['orb 5 Nm', 'orb'],
  ])('[U7] a word that only begins like one is refused: “%s”', (text, part) => {
    expect(parseTorqueMarking(text)).toEqual({
      ok: false,
      refusal: { code: 'marking-not-understood', text, part },
    });
  });

  test.each<[dash: string]>(
    [
      ...['-', '‐', '‑', '‒', '–', '—', '―', '−', '~', '〜', '÷', '∼', '..', '...', '…'],
      ...['to', 'bis', 'tot', 'through', 'à', 'a', 'TO'],
    ].map((dash) => [dash]),
  )('[U4] a range with %s', (dash) => {
    expect(read(`4 ${dash} 6 Nm`)).toEqual([{ unit: 'N·m', min: 4, max: 6 }]);
    expect(read(`from 4 ${dash} 6 Nm`)).toEqual([{ unit: 'N·m', min: 4, max: 6 }]);
  });

  test.each<[between: string]>(
    ['/', ',', ';', '=', '|', ':', ' or ', ' ', ' (', ' [', ' {', ') ', '] ', '} '].map((one) => [
      one,
    ]),
  )('[U5] two units apart by “%s”', (between) => {
    expect(read(`5 Nm${between}44 in-lb`)).toEqual([
      { unit: 'N·m', target: 5 },
      { unit: 'lbf·in', target: 44 },
    ]);
  });

  test.each<[digits: string, value: number]>([
    ['5', 5],
    ['12', 12],
    ['123456', 123456],
    ['0.5', 0.5],
    ['0,5', 0.5],
    ['.5', 0.5],
    ['.75', 0.75],
    ['12.25', 12.25],
    ['12,25', 12.25],
    ['3.123456', 3.123456],
    ['3,1234', 3.1234],
    ['0,125', 0.125],
    ['00,125', 0.125],
    ['1.125', 1.125],
  ])('[U3] the number %s', (digits, value) => {
    expect(read(`${digits} Nm`)).toEqual([{ unit: 'N·m', target: value }]);
  });

  test.each<[digits: string]>([
    ['1,125'],
    ['1234567'],
    ['3.1234567'],
    ['3,1234567'],
    ['1.2.3'],
    ['1,2,3'],
    ['1.234,5'],
    ['1,234.5'],
  ])('[U7, U9] %s is no number to rely on', (digits) => {
    expect(parseTorqueMarking(`${digits} Nm`)).toMatchObject({
      ok: false,
      refusal: { code: 'marking-not-understood', part: digits },
    });
  });
});

/** What was printed, without what follows from it. */
function read(text: string): readonly object[] {
  const marking = parseTorqueMarking(text);
  if (!marking.ok) return [marking.refusal];
  return marking.value.printed.map(({ inBaseUnit: _, text: __, ...printed }) => printed);
}

function isRead(form: string, unit: TorqueUnit): boolean {
  const closed = form.endsWith('.') ? form : `${form}.`;
  return [`5 ${form}`, `5${closed}`, `(5 ${form})`].every((text) => {
    const marking = parseTorqueMarking(text);
    if (!marking.ok) return false;
    const [only, more] = marking.value.printed;
    return more === undefined && only?.unit === unit && only.target === 5;
  });
}
