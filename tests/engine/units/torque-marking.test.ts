/** Torque markings as they stand beside bolts; spellings and dashes are common practice, no source. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  newtonMetres,
  parseTorqueMarking,
  type TorqueUnit,
  torqueUnits,
  writeTorqueMarking,
} from '../../../src/engine/units';

type Limits = { readonly min?: number; readonly max?: number; readonly target?: number };

function read(text: string) {
  const marking = parseTorqueMarking(text);
  if (!marking.ok) throw new Error(`${marking.refusal.code}: ${marking.refusal.part}`);
  return marking.value;
}

describe('one unit', () => {
  test.each<[text: string, figure: Limits]>([
    ['5 Nm', { target: 5 }],
    ['5Nm', { target: 5 }],
    ['5 N m', { target: 5 }],
    ['5 N.m', { target: 5 }],
    ['5 N-m', { target: 5 }],
    ['5 N·m', { target: 5 }],
    ['5 N⋅m', { target: 5 }],
    ['5 N•m.', { target: 5 }],
    ['5 NM', { target: 5 }],
    ['5 nm', { target: 5 }],
    ['5 newton metres', { target: 5 }],
    ['5 Newton-meter', { target: 5 }],
    ['TORQUE: 5 Nm', { target: 5 }],
    ['Tightening torque 5 Nm', { target: 5 }],
    ['3,5 Nm', { target: 3.5 }],
    ['3.5 Nm', { target: 3.5 }],
    ['.5 Nm', { target: 0.5 }],
    ['0,125 Nm', { target: 0.125 }],
    ['3.125 Nm', { target: 3.125 }],
    ['5 N・m', { target: 5 }],
    ['5 newton mètres', { target: 5 }],
    ['5 Н·м', { target: 5 }],
    ['Tighten to 5 Nm', { target: 5 }],
    ['Recommended torque: 5 Nm', { target: 5 }],
    ['Anzugsmoment 5 Nm', { target: 5 }],
    ['T = 5 Nm', { target: 5 }],
    ['5 Nm each', { target: 5 }],
  ])('[U3] a single value: %s', (text, figure) => {
    expect(read(text).figure).toEqual(figure);
  });

  test.each<[text: string]>([
    ['4-6 Nm'],
    ['4–6 N·m'],
    ['4—6 Nm'],
    ['4 ‑ 6 Nm'],
    ['4−6 Nm'],
    ['4~6 Nm'],
    ['4÷6 Nm'],
    ['4..6 Nm'],
    ['4 ... 6 Nm'],
    ['4 … 6 Nm'],
    ['4 to 6 N·m'],
    ['4 bis 6 Nm'],
    ['4 Nm - 6 Nm'],
    ['4,0-6,0 Nm'],
    ['(4-6 Nm)'],
    ['min 4 Nm max 6 Nm'],
    ['MIN. 4 - MAX. 6 N.m'],
    ['max 6 min 4 Nm'],
    ['min 4 Nm / max 6 Nm'],
    ['≥4 ≤6 Nm'],
    ['4～6 N・m'],
    ['４〜６Ｎ・ｍ'],
    ['4 à 6 Nm'],
    ['4 tot 6 Nm'],
    ['between 4 and 6 Nm'],
    ['from 4 to 6 Nm'],
    ['from 4 Nm to 6 Nm'],
    ['min 4 / max 6 Nm'],
    ['min. 4, max. 6 N·m'],
    ['4 Nm (min) 6 Nm (max)'],
    ['4 (min.) - 6 (max.) Nm'],
    ['4 min - 6 max Nm'],
    ['6 Nm max / 4 Nm min'],
    ['four to six newton metres'],
    ['M5: 4-6 Nm'],
    ['(4-6) Nm'],
    ['[4~6]Nm'],
    ['4-6 Nm, max. 6 Nm'],
  ])('[U4] a range: %s', (text) => {
    expect(read(text).figure).toEqual({ min: 4, max: 6 });
  });

  test.each<[text: string]>([
    ['max 5 Nm'],
    ['max. 5 N·m'],
    ['MAX5NM'],
    ['maximum 5 Nm'],
    ['maxi 5 Nm'],
    ['≤5 Nm'],
    ['<= 5 Nm'],
    ['< 5 Nm'],
    ['up to 5 Nm'],
    ['do not exceed 5 Nm'],
    ['5 Nm max'],
    ['5 max. Nm'],
    ['5Nm MAX'],
    ['5 Nm (max)'],
    ['5 Nm or less'],
    ['not more than 5 Nm'],
    ['no more than 5 Nm'],
    ['not to exceed 5 Nm'],
    ['at most 5 Nm'],
    ['less than 5 Nm'],
    ['Max. torque: 5 Nm'],
    ['T25 MAX 5Nm'],
    ['max: 5 Nm'],
    ['max. torque = 5 Nm'],
    ['maximum of 5 Nm'],
    ['max five newton metres'],
  ])('[U4] a maximum: %s', (text) => {
    expect(read(text).figure).toEqual({ max: 5 });
  });

  test.each<[text: string]>([
    ['min 4 Nm'],
    ['min. 4 N·m'],
    ['minimum 4 Nm'],
    ['mini 4 Nm'],
    ['≥4 Nm'],
    ['>= 4 Nm'],
    ['> 4 Nm'],
    ['at least 4 Nm'],
    ['4 Nm min'],
    ['4 Nm (min.)'],
    ['4 Nm or more'],
    ['not less than 4 Nm'],
  ])('[U4] a minimum: %s', (text) => {
    expect(read(text).figure).toEqual({ min: 4 });
  });

  test.each<[text: string, figure: Limits]>([
    ['8 Nm ±10%', { min: 7.2, target: 8, max: 8.8 }],
    ['8 Nm ± 10 %', { min: 7.2, target: 8, max: 8.8 }],
    ['8 ±10% Nm', { min: 7.2, target: 8, max: 8.8 }],
    ['8 Nm +/- 10 %', { min: 7.2, target: 8, max: 8.8 }],
    ['8 Nm +-10%', { min: 7.2, target: 8, max: 8.8 }],
    ['8 ± 1 Nm', { min: 7, target: 8, max: 9 }],
    ['8 Nm ± 1 Nm', { min: 7, target: 8, max: 9 }],
    ['8 Nm ± 1', { min: 7, target: 8, max: 9 }],
    ['3,3 ± 0,1 Nm', { min: 3.2, target: 3.3, max: 3.4 }],
    ['5 Nm (max 6 Nm)', { target: 5, max: 6 }],
    ['5.5±0.5 N.m', { min: 5, target: 5.5, max: 6 }],
    ['8 Nm ± 10 percent', { min: 7.2, target: 8, max: 8.8 }],
    ['5 N·m +0/−1', { min: 4, target: 5, max: 5 }],
    ['5 N·m -1/+0', { min: 4, target: 5, max: 5 }],
    ['5 N·m +1 -0.5', { min: 4.5, target: 5, max: 6 }],
    ['5 N·m −0.5, +1', { min: 4.5, target: 5, max: 6 }],
    ['5 +1/-0 Nm', { min: 5, target: 5, max: 6 }],
    ['5 +1/0 Nm', { min: 5, target: 5, max: 6 }],
    ['5 (+1/−0) Nm', { min: 5, target: 5, max: 6 }],
    ['5 Nm (−0/+1)', { min: 5, target: 5, max: 6 }],
    ['5 Nm (±0.5 Nm)', { min: 4.5, target: 5, max: 5.5 }],
    ['5 Nm [+/- 0.5]', { min: 4.5, target: 5, max: 5.5 }],
    ['5 Nm +1 Nm/-0.5 Nm', { min: 4.5, target: 5, max: 6 }],
    ['8 Nm +10%/-5%', { min: 7.6, target: 8, max: 8.8 }],
    ['8 Nm -5% +10%', { min: 7.6, target: 8, max: 8.8 }],
  ])('[U4] a value with a tolerance or a limit: %s', (text, figure) => {
    expect(read(text).figure).toEqual(figure);
  });

  test.each<[text: string, unit: TorqueUnit, value: number, inNewtonMetres: number]>([
    ['44 in-lbs', 'lbf·in', 44, 4.9713],
    ['44 in/lbs', 'lbf·in', 44, 4.9713],
    ['44 in. lbs', 'lbf·in', 44, 4.9713],
    ['44 lb.-in.', 'lbf·in', 44, 4.9713],
    ['44 inch pounds', 'lbf·in', 44, 4.9713],
    ['35 ft/lb', 'lbf·ft', 35, 47.4536],
    ['35 ft-lbs', 'lbf·ft', 35, 47.4536],
    ['60 kilogram force centimetres', 'kgf·cm', 60, 5.884],
    ['44 in.lb', 'lbf·in', 44, 4.9713],
    ['44 in·lbs.', 'lbf·in', 44, 4.9713],
    ['44 inlb', 'lbf·in', 44, 4.9713],
    ['44 lbf·in', 'lbf·in', 44, 4.9713],
    ['44 lb-in', 'lbf·in', 44, 4.9713],
    ['44 inch-pounds', 'lbf·in', 44, 4.9713],
    ['44 pound-force inches', 'lbf·in', 44, 4.9713],
    ['35 ft-lb', 'lbf·ft', 35, 47.4536],
    ['35 FT.LBS.', 'lbf·ft', 35, 47.4536],
    ['35 lbf·ft', 'lbf·ft', 35, 47.4536],
    ['35 foot pounds', 'lbf·ft', 35, 47.4536],
    ['60 kgf·cm', 'kgf·cm', 60, 5.884],
    ['60 kgf-cm', 'kgf·cm', 60, 5.884],
    ['60 kgcm', 'kgf·cm', 60, 5.884],
    ['60 kg.cm', 'kgf·cm', 60, 5.884],
    ['60 cmkg', 'kgf·cm', 60, 5.884],
    ['60 kp·cm', 'kgf·cm', 60, 5.884],
    ['0.5 kgf·m', 'kgf·m', 0.5, 4.9033],
    ['0.5 mkp', 'kgf·m', 0.5, 4.9033],
    ['0.5 kgm', 'kgf·m', 0.5, 4.9033],
  ])('[U3] %s is read in its own unit', (text, unit, value, inNewtonMetres) => {
    const { printed, figure, units } = read(text);
    expect(units).toEqual([unit]);
    expect(printed).toMatchObject([{ unit, target: value }]);
    expect(figure?.target).toBeCloseTo(inNewtonMetres, 4);
    expect(printed[0]?.inBaseUnit).toEqual(figure);
  });
});

describe('beside and spoken', () => {
  test.each<[text: string, target: number]>([
    ['M5 5Nm', 5],
    ['M5x0.8 5Nm', 5],
    ['M5×0,8: 5 Nm', 5],
    ['M6×1 10 Nm', 10],
    ['M6x1.0 - 10 Nm', 10],
    ['M12x1.5 12 Nm', 12],
    ['M2.5 1 Nm', 1],
    ['M5 bolts: 5 Nm', 5],
    ['4 × M5, 5 Nm', 5],
    ['5 Nm (M5)', 5],
    ['(M5) 5 Nm', 5],
    ['T25 6 Nm', 6],
    ['M5 T25: 6 Nm', 6],
  ])('[U13] what stands beside the figure is no part of it: %s', (text, target) => {
    const { figure, printed } = read(text);
    expect(figure).toEqual({ target });
    expect(printed[0]?.text).toMatch(/^\d+ ?Nm$/);
  });

  test.each<[text: string, target: number]>([
    ['five newton metres', 5],
    ['Twelve Nm', 12],
    ['twenty-two Nm', 22],
    ['thirty five Nm', 35],
    ['six point five newton metres', 6.5],
    ['zero point seven five Nm', 0.75],
    ['four and a half Nm', 4.5],
    ['one hundred Nm', 100],
    ['a hundred and ten Nm', 110],
    ['one hundred twenty-five Nm', 125],
    ['nineteen newton meters', 19],
    ['ninety-nine Nm', 99],
  ])('[U14] spoken: %s', (text, target) => {
    expect(read(text).figure).toEqual({ target });
  });

  test('[U14] every whole number up to 199 is read as it is said', () => {
    const small =
      'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
        ' ',
      );
    const tens = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
    for (let n = 1; n < 200; n += 1) {
      const rest = n % 100;
      const said =
        rest < 20
          ? small[rest]
          : `${tens[Math.floor(rest / 10) - 2]}${rest % 10 === 0 ? '' : `-${small[rest % 10]}`}`;
      const hundred = rest === 0 ? 'one hundred' : `one hundred and ${said}`;
      expect(read(`${n < 100 ? said : hundred} Nm`).figure?.target).toBe(n);
    }
  });

  test('[U14] a spoken number is as coarse as it is said', () => {
    expect(read('five newton metres, forty-four inch pounds').disagree).toBe(false);
    expect(read('five point zero newton metres, forty-six inch pounds').disagree).toBe(true);
  });
});

describe('two units', () => {
  test.each<[text: string, figure: Limits, units: TorqueUnit[]]>([
    ['5-6 N.m (44-53 in.lb)', { min: 5, max: 6 }, ['N·m', 'lbf·in']],
    ['5-6Nm/44-53in·lbs', { min: 5, max: 6 }, ['N·m', 'lbf·in']],
    ['44-53 in-lb, 5-6 Nm', { min: 5, max: 6 }, ['lbf·in', 'N·m']],
    ['5 Nm 44 in-lb', { target: 5 }, ['N·m', 'lbf·in']],
    ['5 N·m = 51 kgf·cm = 44 lbf·in', { target: 5 }, ['N·m', 'kgf·cm', 'lbf·in']],
    ['max. 5 Nm [44 in-lbs]', { max: 5 }, ['N·m', 'lbf·in']],
    ['min 4 Nm (35 in-lb) max 6 Nm (53 in-lb)', { min: 4, max: 6 }, ['N·m', 'lbf·in']],
    ['5 Nm ± 10% (44 in-lb)', { min: 4.5, target: 5, max: 5.5 }, ['N·m', 'lbf·in']],
    ['12.5 lbf·ft (17 N·m)', { target: 17 }, ['lbf·ft', 'N·m']],
    ['max 5Nm/44in-lbs', { max: 5 }, ['N·m', 'lbf·in']],
    ['5.0 N·m {51 kgf·cm}', { target: 5 }, ['N·m', 'kgf·cm']],
    ['4-6NM/35-53IN.LBS', { min: 4, max: 6 }, ['N·m', 'lbf·in']],
    ['5 Nm ± 1 (35–53 in-lb)', { min: 4, target: 5, max: 6 }, ['N·m', 'lbf·in']],
    ['5 Nm +1/-0 (44 +9/-0 in-lb)', { min: 5, target: 5, max: 6 }, ['N·m', 'lbf·in']],
    ['5 Nm or less (44 in/lbs)', { max: 5 }, ['N·m', 'lbf·in']],
  ])('[U5, U10] %s', (text, figure, units) => {
    const marking = read(text);
    expect(marking.disagree).toBe(false);
    expect(marking.figure).toEqual(figure);
    expect(marking.units).toEqual(units);
    expect(marking.printed.map((one) => one.unit)).toEqual(units);
  });

  test('[U5] without N·m the first printed unit is the figure', () => {
    const { figure, disagree } = read('44 in-lb (51 kgf·cm)');
    expect(disagree).toBe(false);
    expect(figure?.target).toBeCloseTo(4.9713, 4);
  });

  test('[U5] what was printed is kept word for word', () => {
    const { printed } = read('5-6 N.m (44-53 in.lb)');
    expect(printed.map((one) => one.text)).toEqual(['5-6 N.m', '44-53 in.lb']);
    expect(printed[1]).toMatchObject({ min: 44, max: 53 });
    expect(printed[1]?.inBaseUnit.min).toBeCloseTo(4.9713, 4);
  });

  test.each<[text: string, printed: readonly string[]]>([
    ['max 5 Nm (30 in-lb)', ['max 5 Nm', 'max 30 in-lb']],
    ['5 Nm max (44 in-lb)', ['5 Nm max', 'max 44 in-lb']],
    ['5 Nm max, 4 Nm min', ['5 Nm max / 4 Nm min']],
    ['5 Nm (max 6 Nm)', ['5 Nm / max 6 Nm']],
  ])('[U10] each figure of “%s” can be read alone', (text, alone) => {
    const { printed } = read(text);
    expect(printed.map((one) => one.text)).toEqual(alone);
    for (const one of printed) expect(read(one.text).printed).toEqual([one]);
  });

  test.each<[text: string]>([
    ['350 lbf·in (40.2 N·m)'],
    ['10 Nm (80 in-lb)'],
    ['5 Nm (30 in-lb)'],
    ['5-6 Nm (44-60 in-lb)'],
    ['5-6 Nm (30-53 in-lb)'],
    ['5 Nm (44-53 in-lb)'],
    ['5 Nm, max 44 in-lb'],
    ['max 5 Nm (44-53 in-lb)'],
    ['max 5 Nm (44 in-lb ± 10%)'],
    ['min 5 Nm (max 44 in-lb)'],
    ['5 Nm ± 10% (max 44 in-lb)'],
    ['5 Nm / 8 Nm'],
    ['5 Nm 6 Nm'],
    ['5.0 Nm / 5.1 Nm'],
    ['4-6 Nm, max. 5 Nm'],
    ['max. 6 Nm, 4-6 Nm'],
    ['5.0 Nm +1.0/-0 (44 +0/-9 in-lb)'],
    ['4-6 Nm (5 Nm)'],
    ['5 Nm (max 4 Nm)'],
    ['min 6 Nm / max 4 Nm'],
  ])('[U6] %s disagrees, and no figure comes of it', (text) => {
    const marking = read(text);
    expect(marking.disagree).toBe(true);
    expect(marking).not.toHaveProperty('figure');
    expect(marking.printed).toHaveLength(2);
  });

  test('[U6] one figure printed twice in one unit, once coarser, is one figure', () => {
    expect(read('5 Nm / 5.2 Nm').disagree).toBe(false);
    expect(read('5 Nm / 5.6 Nm').disagree).toBe(true);
    expect(read('5 Nm = 5.0 N·m')).toMatchObject({ disagree: false, figure: { target: 5 } });
  });

  // 5.5 N·m is 48.68 lbf·in: 5 N·m may be up to 5.5, 49 lbf·in down to 48.5 (5.480 N·m); 50 only to 49.5 (5.593)
  test.each<[text: string, disagree: boolean]>([
    ['5 Nm (49 in-lb)', false],
    ['5 Nm (50 in-lb)', true],
    ['5.0 Nm (44 in-lb)', false],
    ['5.0 Nm (45 in-lb)', false],
    ['5.00 Nm (44 in-lb)', false],
    ['5.00 Nm (45 in-lb)', true],
  ])('[U5, U6] the last printed digit decides: %s', (text, disagree) => {
    expect(read(text).disagree).toBe(disagree);
  });
});

describe('refused', () => {
  test.each<[text: string, part: string]>([
    ['', ''],
    ['  ', '  '],
    ['torque', 'torque'],
    ['snug', 'snug'],
    ['5 foo', 'foo'],
    ['5 cNm', 'cNm'],
    ['5 kg', 'kg'],
    ['5 lb', 'lb'],
    ['5 nmax', 'nmax'],
    ['M5-8 Nm', '-'],
    ['M5x8 Nm', 'M5x8'],
    ['M5', 'M5'],
    ['T26 8 Nm', 'T26'],
    ['A2-70 8 Nm', 'A2'],
    ['4 mm hex 8 Nm', 'mm'],
    ['~5 Nm', '~'],
    ['5 Nm +1', '5 Nm +1'],
    ['5 Nm +1/+2', '5 Nm +1/+2'],
    ['5 Nm -1/-2', '5 Nm -1'],
    ['5 Nm +1/2', '5 Nm +1/2'],
    ['5 Nm (±1', '5 Nm (±1'],
    ['5 Nm +1 in-lb/-0', '5 Nm +1 in-lb/-0'],
    ['5 Nm +0/-5', '5 Nm +0/-5'],
    ['between 4 Nm', 'between 4 Nm'],
    ['5Nm-44in.lb', '5Nm-44in.lb'],
    ['MAX - 5 Nm', 'MAX'],
    ['4 (min) - 6 (min) Nm', '4 (min) - 6 (min) Nm'],
    ['4-6 Nm or less', '4-6 Nm'],
    ['5 lb/in', 'lb'],
    ['5 N/m', 'N'],
    ['5 daN·m', 'daN'],
    ['500 N·cm', 'N'],
    ['5 ½ Nm', '⁄'],
    ['five hundred Nm', 'five'],
    ['fives Nm', 'fives'],
    ['about 5 Nm', 'about'],
    ['5 Nm!', '!'],
    ['1.2.3 Nm', '1.2.3'],
    ['4-6 Nm max', '4-6 Nm'],
    ['max 4-6 Nm', 'max 4'],
    ['max 5 ± 1 Nm', 'max 5'],
    ['4-6 ± 1 Nm', '4-6'],
    ['4-5-6 Nm', '4-5'],
    ['6-4 Nm', '6-4 Nm'],
    ['max 4 min 6 Nm', 'max 4 min 6 Nm'],
    ['max 4 max 6 Nm', 'max 4 max 6 Nm'],
    ['max 6 max 4 Nm', 'max 6 max 4 Nm'],
    ['min 4 min 6 Nm', 'min 4 min 6 Nm'],
    ['-5 Nm', '-'],
    ['5- Nm', '5-'],
    ['Nm', 'Nm'],
    ['max Nm', 'max'],
    ['8 ± Nm', '8 ±'],
    ['0 Nm', '0 Nm'],
    ['0-5 Nm', '0-5 Nm'],
    ['1 ± 1 Nm', '1 ± 1 Nm'],
    ['4 Nm - 53 in-lb', '4 Nm - 53 in-lb'],
    ['1234567 Nm', '1234567'],
  ])('[U7] “%s” is refused for “%s”', (text, part) => {
    expect(parseTorqueMarking(text)).toEqual({
      ok: false,
      refusal: { code: 'marking-not-understood', text, part },
    });
  });

  test.each<[text: string, part: string]>([
    ['5', '5'],
    ['4-6', '4-6'],
    ['max. 5', 'max. 5'],
    ['8 ± 10%', '8 ± 10%'],
    ['5 Nm (44)', '44'],
    ['4 and 6 Nm', '4'],
    ['4/6 Nm', '4'],
    ['5 N·m2', '2'],
  ])('[U8] “%s” lacks a unit at “%s”', (text, part) => {
    expect(parseTorqueMarking(text)).toEqual({
      ok: false,
      refusal: { code: 'unit-missing', text, part },
    });
  });

  test.each<[text: string, part: string]>([
    ['1,000 Nm', '1,000'],
    ['12,500-13,000 kgf·cm', '12,500'],
  ])('[U9] “%s” may be thousands: refused for “%s”', (text, part) => {
    expect(parseTorqueMarking(text)).toEqual({
      ok: false,
      refusal: { code: 'marking-not-understood', text, part },
    });
  });

  test('[U7, U10] any text at all is answered, never thrown at, and a figure is always in order', () => {
    const scrap = fc.constantFrom(
      ...['5', '6', '0', '3,5', '1,000', ' ', '-', '–', '±', '%', 'max', 'min.', '(', ')', '/'],
      ...['Nm', 'N·m', 'in.lb', 'ft-lb', 'kgf·cm', 'to', '≤', '.', ',', 'torque', 'x'],
      ...['+', '+1/-0', '(max)', ' or less', 'between ', ' and ', 'M5 ', 'T25', 'five ', '{', '}'],
    );
    const text = fc.oneof(
      fc.string(),
      fc.array(scrap, { maxLength: 12 }).map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(text, (written) => {
        const marking = parseTorqueMarking(written);
        if (!marking.ok) {
          expect(marking.refusal.text).toBe(written);
          return;
        }
        const { figure, disagree, printed } = marking.value;
        expect(disagree).toBe(figure === undefined);
        expect(printed.length).toBeGreaterThan(0);
        const given = [figure?.min, figure?.target, figure?.max].filter((n) => n !== undefined);
        expect(given).toEqual([...given].sort((a, b) => a - b));
        expect(given.every((n) => n > 0 && Number.isFinite(n))).toBe(true);
        for (const one of printed) expect(read(one.text).printed).toEqual([one]);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('writeTorqueMarking', () => {
  const [four, five, six] = [newtonMetres(4), newtonMetres(5), newtonMetres(6)];

  test('[U11] each kind of figure has its wording', () => {
    expect(writeTorqueMarking({ min: four, max: six })).toBe('4–6 N·m');
    expect(writeTorqueMarking({ min: four, target: five, max: six })).toBe('4–6 N·m');
    expect(writeTorqueMarking({ target: five, max: six })).toBe('5 N·m (max 6 N·m)');
    expect(writeTorqueMarking({ target: five, min: four })).toBe('5 N·m (min 4 N·m)');
    expect(writeTorqueMarking({ target: five })).toBe('5 N·m');
    expect(writeTorqueMarking({ max: five })).toBe('max 5 N·m');
    expect(writeTorqueMarking({ min: five })).toBe('min 5 N·m');
    expect(writeTorqueMarking({ min: five, max: six }, 'lbf·in', 0)).toBe('44–53 lbf·in');
    expect(writeTorqueMarking({ target: newtonMetres(5.25) }, 'N·m', 2)).toBe('5.25 N·m');
  });

  test('[U11] what is written reads back, in every unit', () => {
    const tenths = fc.integer({ min: 1, max: 9999 }).map((n) => n / 10);
    const limits = fc.oneof(
      fc.record({ target: tenths }),
      fc.record({ max: tenths }),
      fc.record({ min: tenths }),
      fc.tuple(tenths, tenths).map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) })),
      fc.tuple(tenths, tenths).map(([a, b]) => ({ target: Math.min(a, b), max: Math.max(a, b) })),
      fc.tuple(tenths, tenths).map(([a, b]) => ({ min: Math.min(a, b), target: Math.max(a, b) })),
    );
    fc.assert(
      fc.property(limits, fc.constantFrom(...torqueUnits), (written, unit) => {
        const inUnit = read(writeTorqueMarkingOf(written, unit)).printed[0];
        const { min, max, target } = inUnit ?? {};
        expect(withoutAbsent({ min, max, target })).toEqual(written);
      }),
    );
  });

  function writeTorqueMarkingOf(limits: Limits, unit: TorqueUnit): string {
    const factor = read(`1 ${unit}`).figure?.target ?? 0;
    const scaled = Object.entries(limits).map(([name, n]) => [name, newtonMetres(n * factor)]);
    return writeTorqueMarking(Object.fromEntries(scaled), unit);
  }

  function withoutAbsent(limits: { [name: string]: number | undefined }) {
    return Object.fromEntries(Object.entries(limits).filter(([, n]) => n !== undefined));
  }
});
