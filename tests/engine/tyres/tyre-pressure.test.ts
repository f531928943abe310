/** The pressure beside a tyre's size: what it allows, and what is refused. */

import { describe, expect, test } from 'vitest';
import { parseTyreMarking, pressureLimits } from '../../../src/engine/tyres';
import { kilopascalsTo, parsePressureMarking } from '../../../src/engine/units';

function limitsIn(text: string) {
  const answer = parseTyreMarking(text);
  if (!answer.ok) return answer.refusal;
  const { min, max } = answer.value;
  return { min, max };
}

describe('parseTyreMarking', () => {
  test.each<[marking: string, min: number | undefined, max: number | undefined]>([
    ['57-622 200-350 kPa', 200, 350],
    ['57-622 MIN. 2.0 MAX. 3.5 BAR', 200, 350],
    ['28 x 1,75 (47-622) min. 2.5 bar max. 5.0 bar', 250, 500],
    ['32-597 inflate to 400 kPa', undefined, 400],
    ['Tubeless Ready 29 x 2.25 57-622 4 bar', undefined, 400],
    ['700 x 38C max 4 bar', undefined, 400],
    ['700 x 38C min 3 bar', 300, undefined],
    ['37-622 / 28 x 1.40 / 3-5 bar', 300, 500],
    ['57-622', undefined, undefined],
  ])('[Y5] %s', (text, min, max) => {
    expect(limitsIn(text)).toEqual({ min, max });
  });

  test('[Y5] 40-65 psi beside three sizes', () => {
    const answer = parseTyreMarking('27.5 x 2.4 650B x 61 (61-584) 40-65 psi');
    const { min, max } = answer.ok ? answer.value : {};
    expect(min && kilopascalsTo(min, 'psi')).toBeCloseTo(40, 9);
    expect(max && kilopascalsTo(max, 'psi')).toBeCloseTo(65, 9);
  });

  test('[Y6] where the units are rounded apart the cautious bounds are taken and the disagreement is kept', () => {
    const answer = parseTyreMarking('37-622 MIN 50 PSI MAX 85 PSI (3.5-6.0 bar)');
    expect(answer).toMatchObject({ ok: true, value: { min: 350, pressure: { disagree: true } } });
    const max = answer.ok ? answer.value.max : undefined;
    expect(max && kilopascalsTo(max, 'psi')).toBeCloseTo(85, 9);
  });

  test.each(['50-622 max 4 bar (100 psi)', '50-622 max 0.4 bar (58 psi)'])(
    '[Y6] %s is refused with what is printed',
    (text) => {
      expect(limitsIn(text)).toMatchObject({ code: 'pressure-units-disagree', text });
      expect(limitsIn(text)).toHaveProperty('printed.length', 2);
    },
  );

  test.each<[marking: string, code: string]>([
    ['57-622 40-65', 'unit-missing'],
    ['57-622 max load 100 kg 3-5 bar', 'unit-missing'],
    ['57-622 65-40 psi', 'marking-not-understood'],
  ])('[Y6] %s is refused whole (%s)', (text, code) => {
    expect(limitsIn(text)).toMatchObject({ code, text });
  });
});

describe('pressureLimits', () => {
  test('[Y6] bounds that leave no pressure between them are refused, however near', () => {
    const near = parsePressureMarking('3.0-3.5 bar (45-50 psi)');
    expect(near).toMatchObject({ ok: true, value: { disagree: true } });
    expect(near.ok && pressureLimits(near.value).ok).toBe(true);
    const crossed = parsePressureMarking('3.0-3.1 bar (45-47 psi)');
    expect(crossed.ok && pressureLimits(crossed.value)).toMatchObject({
      ok: false,
      refusal: { code: 'pressure-units-disagree' },
    });
  });
});
