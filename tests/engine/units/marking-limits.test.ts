/** Which limits a figure's signs, bounds and brackets make, and which make none; forms are common practice, no source. */

import { describe, expect, test } from 'vitest';
import { parseTorqueMarking } from '../../../src/engine/units';

type Limits = { readonly min?: number; readonly max?: number; readonly target?: number };

describe('a figure', () => {
  test.each<[text: string, figure: Limits]>([
    ['5 Nm -0.5 Nm/+1 Nm', { min: 4.5, target: 5, max: 6 }],
    ['5 Nm -0.5 Nm +1 Nm', { min: 4.5, target: 5, max: 6 }],
    ['5 Nm -0.5 +1', { min: 4.5, target: 5, max: 6 }],
    ['5 -0.5 +1 Nm', { min: 4.5, target: 5, max: 6 }],
    ['5 -0.5/+1 Nm', { min: 4.5, target: 5, max: 6 }],
    ['8 Nm -5%/+10%', { min: 7.6, target: 8, max: 8.8 }],
    ['8 Nm -5%, +10%', { min: 7.6, target: 8, max: 8.8 }],
    ['8 Nm -5% +10%', { min: 7.6, target: 8, max: 8.8 }],
    ['8 Nm (-5% / +10%)', { min: 7.6, target: 8, max: 8.8 }],
    ['5 Nm (-1/0)', { min: 4, target: 5, max: 5 }],
    ['5 Nm (-1, 0)', { min: 4, target: 5, max: 5 }],
    ['5 Nm +0/-1', { min: 4, target: 5, max: 5 }],
    ['5 Nm +1/0', { min: 5, target: 5, max: 6 }],
    ['3.3 Nm +0.1/-0.2', { min: 3.1, target: 3.3, max: 3.4 }],
  ])('[U4] with a tolerance to either side: %s', (text, figure) => {
    expect(figureOf(text)).toEqual(figure);
  });

  test.each<[text: string, figure: Limits]>([
    ['5 Nm max 6 Nm', { target: 5, max: 6 }],
    ['5 Nm, max 6 Nm', { target: 5, max: 6 }],
    ['5 Nm min 4 Nm', { min: 4, target: 5 }],
    ['max 6 Nm min 4 Nm', { min: 4, max: 6 }],
    ['max 6 - min 4 Nm', { min: 4, max: 6 }],
    ['max 6, min 4 Nm', { min: 4, max: 6 }],
    ['min 4 to max 6 Nm', { min: 4, max: 6 }],
    ['4 Nm min - 6 Nm max', { min: 4, max: 6 }],
    ['6 Nm max - 4 Nm min', { min: 4, max: 6 }],
    ['4 (min) - 6 (max) Nm', { min: 4, max: 6 }],
    ['between 4 Nm and 6 Nm', { min: 4, max: 6 }],
    ['from 4 and 6 Nm', { min: 4, max: 6 }],
    ['between 4 to 6 Nm', { min: 4, max: 6 }],
  ])('[U4] with bounds in any place: %s', (text, figure) => {
    expect(figureOf(text)).toEqual(figure);
  });

  test.each<[text: string, printed: string]>([
    ['(5-6) N·m', '(5-6) N·m'],
    ['[5-6] N·m (44-53 in.lb)', '[5-6] N·m'],
    ['(max 5) Nm', '(max 5) Nm'],
    ['torque (5) Nm', '(5) Nm'],
  ])('[U5] a bracket before the unit is part of what was printed: %s', (text, printed) => {
    const read = parseTorqueMarking(text);
    expect(read.ok && read.value.printed[0]?.text).toBe(printed);
  });

  test.each<[text: string, part: string]>([
    ['5 Nm +', '5 Nm +'],
    ['5 Nm + Nm', '5 Nm +'],
    ['5 Nm +0/+1', '5 Nm +0/+1'],
    ['5 Nm +1/+0', '5 Nm +1/+0'],
    ['5 Nm (-1/2)', '5 Nm (-1/2'],
    ['5 Nm (-1/-2)', '5 Nm (-1/-2'],
    ['5 Nm (-1/-0)', '5 Nm (-1/-0'],
    ['5 Nm (+1/-0', '5 Nm (+1/-0'],
    ['between and 6 Nm', 'between'],
    ['from to 6 Nm', 'from'],
    ['between 4, 6 Nm', 'between 4'],
    ['(5 Nm) in-lb', 'in-lb'],
    ['4 Nm min - 6 Nm min', '4 Nm min - 6 Nm min'],
    ['max 6 max 4 Nm', 'max 6 max 4 Nm'],
    ['max - 6 Nm', 'max'],
    ['max', 'max'],
  ])('[U7] “%s” makes no sense at “%s”', (text, part) => {
    expect(parseTorqueMarking(text)).toEqual({
      ok: false,
      refusal: { code: 'marking-not-understood', text, part },
    });
  });

  test.each<[text: string, part: string]>([
    ['5-6) Nm', '5-6'],
    ['(5 / Nm', '5'],
    ['(5) / Nm', '5'],
  ])('[U8] in “%s” the unit does not belong to “%s”', (text, part) => {
    expect(parseTorqueMarking(text)).toEqual({
      ok: false,
      refusal: { code: 'unit-missing', text, part },
    });
  });
});

function figureOf(text: string): object | undefined {
  const read = parseTorqueMarking(text);
  return read.ok ? read.value.figure : read.refusal;
}
