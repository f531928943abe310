/** Tyre sizes, ceilings, pressures and rollouts against standards and published figures. */

import { describe, expect, test } from 'vitest';
import {
  gaugeAt,
  inflationWindow,
  parseTyreMarking,
  rollout,
  suggestInflation,
  usualRimWidth,
  wheelLoads,
} from '../../src/engine/tyres';
import {
  kilograms,
  kilopascals,
  kilopascalsFrom,
  kilopascalsTo,
  millimetres,
} from '../../src/engine/units';

const POUND = 0.45359237;
const open = { min: kilopascals(0), max: kilopascals(2000) };

describe('sizes', () => {
  test.each<[marking: string, beadSeat: number, source: string]>([
    ['37-622', 622, 'ISO 5775-1'],
    ['32-597', 597, 'ISO 5775-1'],
    ['26 x 1.75', 559, 'which of the 26 in diameters: from memory'],
    ['26 x 1', 571, 'which of the 26 in diameters: from memory'],
    ['26 x 1 1/4', 597, 'which of the 26 in diameters: from memory'],
    ['20 x 1 3/8', 451, 'ETRTO tables, from memory'],
    ['24 x 1.75', 507, 'ETRTO tables, from memory'],
    ['24 x 1', 520, 'ETRTO tables, from memory'],
    ['18 x 1.75', 355, 'ETRTO tables, from memory'],
    ['12 1/2 x 2 1/4', 203, 'ETRTO tables, from memory'],
    ['14 x 1.75', 254, 'ETRTO tables, from memory'],
    ['650B x 47', 584, 'ETRTO tables, from memory'],
    ['27.5 x 2.25', 584, 'ETRTO tables, from memory'],
    ['26 x 1 3/8', 590, 'a tyre maker’s size chart'],
    ['650C x 23', 571, 'a tyre maker’s size chart'],
    ['20 x 1.75', 406, 'a tyre maker’s size chart'],
    ['29 x 2.0', 622, 'a tyre maker’s size chart'],
    ['28 x 1 1/2', 635, 'restorers’ rim table'],
    ['27 x 1 1/4', 630, 'restorers’ rim table'],
  ])('[Y1] %s sits on %d mm (%s)', (marking, beadSeat) => {
    expect(parseTyreMarking(marking)).toMatchObject({ ok: true, value: { beadSeat } });
  });

  test('[Y2] 28 x 1 3/8 is 622 in one table and 642 in another, so it is refused', () => {
    // Sources: ETRTO tables (from memory) against restorers' rim table and owners' reports (seen).
    expect(parseTyreMarking('28 x 1 3/8')).toMatchObject({ refusal: { choices: [622, 642] } });
  });

  test('[Y5] 32-597 inflate to 400 kPa (the example of ISO 5775-1)', () => {
    const answer = parseTyreMarking('32-597 inflate to 400 kPa');
    expect(answer).toMatchObject({ ok: true, value: { width: 32, beadSeat: 597, max: 400 } });
    const max = answer.ok ? answer.value.max : undefined;
    expect(max && kilopascalsTo(max, 'psi')).toBeCloseTo(58.0151, 4);
  });
});

test('[Y7] a hookless rim is never above 5 bar, 72.5 psi (ISO 4210-1 2.27; ETRTO)', () => {
  const answer = inflationWindow({ tyre: { max: kilopascals(800) }, rim: { hookless: true } });
  expect(answer.ok && kilopascalsTo(answer.value.max, 'psi')).toBeCloseTo(72.519, 3);
});

describe('suggestions', () => {
  test('[Y10] a printed 40–65 psi range gives about 50 psi (common practice, no source)', () => {
    const tyre = parseTyreMarking('57-622 40-65 psi');
    const window = tyre.ok ? inflationWindow({ tyre: tyre.value, rim: {} }) : tyre;
    const suggested = window.ok
      ? suggestInflation({ window: window.value, width: millimetres(57) })
      : undefined;
    const psi = suggested && kilopascalsTo(suggested, 'psi');
    expect(psi).toBeCloseTo(52.5, 9);
    expect(psi).toBeLessThan(50 * 1.1);
  });

  // Source of all rows: 15 % drop, DOI 10.5281/zenodo.20671797, with its own band of ±2 psi.
  test.each<[pounds: number, width: number, psi: number]>([
    [100, 23, 105.67],
    [100, 28, 72.53],
    [100, 32, 57.59],
    [70, 28, 49.57],
    [120, 28, 87.84],
    [150, 37, 68.49],
    [150, 50, 48.5],
  ])('[Y11] %d lb on %d mm: %d psi', (pounds, width, psi) => {
    const wheelLoad = kilograms(pounds * POUND);
    const suggested = suggestInflation({ window: open, width: millimetres(width), wheelLoad });
    expect(suggested && Math.abs(kilopascalsTo(suggested, 'psi') - psi)).toBeLessThan(0.01);
  });

  test('[Y11] a 102 mm tyre under 95 lb: about 11 psi (a second published fit, P = 120·L/W^1.5)', () => {
    const wheelLoad = kilograms(95 * POUND);
    const suggested = suggestInflation({ window: open, width: millimetres(102), wheelLoad });
    expect(suggested && kilopascalsTo(suggested, 'psi')).toBeCloseTo(11.07, 1);
  });

  test.each<[total: number, posture: 'neutral' | 'sporty', front: number, rear: number]>([
    [90, 'sporty', 36, 54],
    [100, 'sporty', 40, 60],
    [110, 'neutral', 49.5, 60.5],
  ])(
    '[Y15] %d kg, %s: %d and %d kg (common practice, no source)',
    (total, posture, front, rear) => {
      const loads = wheelLoads({ total: kilograms(total), posture });
      expect(loads.front).toBeCloseTo(front, 9);
      expect(loads.rear).toBeCloseTo(rear, 9);
    },
  );
});

test('[Y12] 80 psi at 20 °C is 73.5 psi at 0 °C (ideal gas, worked by hand)', () => {
  // (551.581 + 101.325) × 273.15 / 293.15 − 101.325 = 507.037 kPa = 73.539 psi
  const cold = gaugeAt({ pressure: kilopascalsFrom(80, 'psi'), fromCelsius: 20, toCelsius: 0 });
  expect(kilopascalsTo(cold, 'psi')).toBeCloseTo(73.539, 2);
});

describe('rollout', () => {
  test.each<[width: number, beadSeat: number, millimetresRolled: number, source: string]>([
    [28, 622, 2130, '678 × 3.142, common formula'],
    [26, 622, 2117, '674 × π, published thread'],
  ])('[Y13] %d-%d rolls %d mm (%s)', (width, beadSeat, rolled) => {
    const size = { width: millimetres(width), beadSeat: millimetres(beadSeat) };
    expect(Math.abs(rollout(size) - rolled)).toBeLessThanOrEqual(1);
  });
});

test.each<[width: number, inner: number]>([
  [25, 16.25],
  [32, 17.6],
  [40, 22],
])(
  '[Y14] a tyre of %d mm suits an inner width of %d mm (rule kept with ISO 5775)',
  (width, inner) => {
    expect(usualRimWidth(millimetres(width))).toBeCloseTo(inner, 2);
  },
);
