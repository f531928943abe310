/** Readings typed by an electronic wrench; the forms are common practice, no source. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  newtonMetresFrom,
  parseTypedReading,
  type TorqueUnit,
  torqueUnits,
} from '../../../src/engine/units';

describe('parseTypedReading', () => {
  test.each<
    [
      text: string,
      fallback: TorqueUnit,
      value: number,
      unit: TorqueUnit,
      typed: boolean,
      halfStep: number,
    ]
  >([
    ['5.02 N.m\r', 'N·m', 5.02, 'N·m', true, 0.005],
    ['5.02 N.m\r\n', 'N·m', 5.02, 'N·m', true, 0.005],
    ['\t5.02Nm\t', 'N·m', 5.02, 'N·m', true, 0.005],
    ['+005.0 Nm', 'N·m', 5, 'N·m', true, 0.05],
    ['+ 5.0 Nm', 'N·m', 5, 'N·m', true, 0.05],
    ['44.3 in-lb', 'N·m', 44.3, 'lbf·in', true, 0.05],
    ['44.3 IN.LB', 'N·m', 44.3, 'lbf·in', true, 0.05],
    ['3.7 ft.lb', 'N·m', 3.7, 'lbf·ft', true, 0.05],
    ['51 kgf.cm', 'N·m', 51, 'kgf·cm', true, 0.5],
    ['5,02', 'N·m', 5.02, 'N·m', false, 0.005],
    ['44.3', 'lbf·in', 44.3, 'lbf·in', false, 0.05],
    ['.75 Nm', 'N·m', 0.75, 'N·m', true, 0.005],
    ['5', 'N·m', 5, 'N·m', false, 0.5],
    ['５．０２\n', 'N·m', 5.02, 'N·m', false, 0.005],
    ['0,502 Nm', 'N·m', 0.502, 'N·m', true, 0.0005],
  ])('[U15] %j read with %s', (text, fallback, value, unit, unitTyped, halfStep) => {
    expect(parseTypedReading(text, fallback)).toEqual({
      ok: true,
      value: {
        value,
        unit,
        unitTyped,
        torque: newtonMetresFrom(value, unit),
        halfStep: newtonMetresFrom(halfStep, unit),
      },
    });
  });

  test.each<[text: string, part: string]>([
    ['', ''],
    ['\r', '\r'],
    ['Nm', 'Nm'],
    ['OK 5.02 Nm', 'OK 5.02 Nm'],
    ['5.02 Nm OK', 'OK'],
    ['5.02 5.03', '5.03'],
    ['5.02\r5.03\r', '5.03'],
    ['5.02 Nm 44 in-lb', '44 in-lb'],
    ['001,5.02,Nm', '001,5.02,Nm'],
    ['12;5.02', ';5.02'],
    ['1,000 Nm', '1,000'],
    ['5.02 cNm', 'cNm'],
    ['5.02 Nm max', 'max'],
    ['4-6 Nm', '-6 Nm'],
    ['-5.02 Nm', '-'],
    ['−5.02 Nm', '−'],
    ['+-5 Nm', '-5 Nm'],
    ['0.00 Nm', '0.00 Nm'],
    ['5.02E1', 'E1'],
    ['five Nm', 'five Nm'],
    ['5.02 Nm,', ','],
    ['5..02', '..02'],
  ])('[U15] %j is refused for %j', (text, part) => {
    expect(parseTypedReading(text, 'N·m')).toEqual({
      ok: false,
      refusal: { code: 'marking-not-understood', text, part },
    });
  });

  test('[U15] a left-hand thread is tightened the other way round', () => {
    const left = (text: string) => parseTypedReading(text, 'N·m', 'left');
    expect(left('-35.0 Nm')).toMatchObject({ ok: true, value: { value: 35 } });
    expect(left('−35.0 Nm')).toMatchObject({ ok: true, value: { value: 35 } });
    expect(left('35.0 Nm')).toMatchObject({ ok: true, value: { value: 35 } });
    expect(left('+35.0 Nm')).toMatchObject({ ok: false, refusal: { part: '+' } });
  });

  test('[U15] whatever a wrench shows in any unit is read back as it was shown', () => {
    const hundredths = fc.integer({ min: 1, max: 99_999 });
    const ends = fc.constantFrom('', '\r', '\n', '\r\n', '\t', ' ');
    fc.assert(
      fc.property(hundredths, fc.constantFrom(...torqueUnits), ends, (shown, unit, end) => {
        const text = `${(shown / 100).toFixed(2)} ${unit}${end}`;
        const read = parseTypedReading(text, 'N·m');
        expect(read.ok && [read.value.value, read.value.unit]).toEqual([shown / 100, unit]);
      }),
    );
  });

  test('[U15] any text at all is answered, and a reading is always above zero', () => {
    const scrap = fc.constantFrom(
      '5',
      '.',
      ',',
      '02',
      '+',
      '-',
      ' ',
      'N',
      'm',
      'Nm',
      '\r',
      'in-lb',
      'E',
      '0',
    );
    const text = fc.oneof(
      fc.string(),
      fc.array(scrap, { maxLength: 8 }).map((all) => all.join('')),
    );
    fc.assert(
      fc.property(text, (typed) => {
        const read = parseTypedReading(typed, 'N·m');
        if (read.ok) expect(read.value.torque).toBeGreaterThan(0);
        else expect(read.refusal.text).toBe(typed);
      }),
      { numRuns: 500 },
    );
  });
});
