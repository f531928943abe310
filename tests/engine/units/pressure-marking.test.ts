/** Pressure markings as they stand on tyres and rims; spellings are common practice, no source. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PressureUnit, parsePressureMarking } from '../../../src/engine/units';

type Limits = { readonly min?: number; readonly max?: number; readonly target?: number };

describe('parsePressureMarking', () => {
  test.each<[text: string, unit: PressureUnit, printed: Limits]>([
    ['40-65 psi', 'psi', { min: 40, max: 65 }],
    ['40-65 P.S.I.', 'psi', { min: 40, max: 65 }],
    ['65 lbs/in²', 'psi', { target: 65 }],
    ['65 lb per sq. in.', 'psi', { target: 65 }],
    ['max 65 PSI', 'psi', { max: 65 }],
    ['MAXIMUM PRESSURE 65 PSI', 'psi', { max: 65 }],
    ['Inflate to 65 psi', 'psi', { target: 65 }],
    ['Tyre pressure: 2.8–4.5 bar', 'bar', { min: 2.8, max: 4.5 }],
    ['2,8-4,5 BAR', 'bar', { min: 2.8, max: 4.5 }],
    ['MIN. 2.0 BAR / MAX. 3.5 BAR', 'bar', { min: 2, max: 3.5 }],
    ['5 bar max.', 'bar', { max: 5 }],
    ['450 kPa', 'kPa', { target: 450 }],
    ['max 450 KPA', 'kPa', { max: 450 }],
  ])('[U12] %s', (text, unit, printed) => {
    const read = parsePressureMarking(text);
    expect(read).toMatchObject({ ok: true, value: { units: [unit], disagree: false } });
    expect(read.ok && read.value.printed).toMatchObject([{ unit, ...printed }]);
    const limits = (read.ok && read.value.printed[0]) || {};
    expect(Object.keys(limits).sort()).toEqual(
      [...Object.keys(printed), 'inBaseUnit', 'text', 'unit'].sort(),
    );
  });

  test('[U12] the figure is in kilopascals: 40–65 psi is 275.8 to 448.2 (psi = 6.894 757 kPa)', () => {
    const read = parsePressureMarking('40-65 psi');
    expect(read.ok && read.value.figure?.min).toBeCloseTo(275.79, 2);
    expect(read.ok && read.value.figure?.max).toBeCloseTo(448.16, 2);
  });

  test.each<[text: string, figure: Limits]>([
    ['INFLATE TO MIN. 2.0 MAX. 3.5 BAR (30-50 PSI)', { min: 200, max: 350 }],
    ['MIN 2.0 BAR (30 PSI) MAX 3.5 BAR (50 PSI)', { min: 200, max: 350 }],
    ['85 psi (5.9 bar) 590 kPa', { target: 590 }],
  ])('[U12] two units that agree: %s', (text, figure) => {
    expect(parsePressureMarking(text)).toMatchObject({
      ok: true,
      value: { disagree: false, figure },
    });
  });

  test('[U12] two units that disagree: 6.0 bar is 87 psi, not 80', () => {
    const read = parsePressureMarking('6.0 bar / 80 psi');
    expect(read).toMatchObject({ ok: true, value: { disagree: true } });
    expect(read.ok && 'figure' in read.value).toBe(false);
  });

  test.each<[text: string, code: string, part: string]>([
    ['65', 'unit-missing', '65'],
    ['65 psig-ish', 'marking-not-understood', 'psig'],
    ['4 kgf/cm2', 'marking-not-understood', 'kgf'],
    ['barely any', 'marking-not-understood', 'barely'],
    ['5 Nm', 'marking-not-understood', 'Nm'],
  ])('[U12] “%s” is refused: %s at “%s”', (text, code, part) => {
    expect(parsePressureMarking(text)).toEqual({ ok: false, refusal: { code, text, part } });
  });

  // the first draw of any code point at all takes a second of a busy machine
  test('[U12] any text at all is answered', { timeout: 30_000 }, () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(typeof parsePressureMarking(text).ok).toBe('boolean');
      }),
    );
  });
});
