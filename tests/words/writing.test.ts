/** How lists, plurals, figures and ranges are written. */

import { describe, expect, test } from 'vitest';
import { words } from '../../src/words';

const {
  figure,
  heldTogether,
  listed,
  measured,
  measuredLimit,
  missedLimit,
  numbered,
  plural,
  quantity,
  range,
} = words.writing;
/** U+00A0, which no line may break at. */
const held = (text: string) => text.replaceAll('_', '\u00a0');

describe('a list', () => {
  test.each([
    ['nothing', [], ''],
    ['one', ['bell'], 'bell'],
    ['two', ['bell', 'pump'], 'bell and pump'],
    ['three', ['bell', 'pump', 'lamp'], 'bell, pump and lamp'],
    ['five', ['a', 'b', 'c', 'd', 'e'], 'a, b, c, d and e'],
    ['six: the rest is counted', ['a', 'b', 'c', 'd', 'e', 'f'], 'a, b, c, d and 2 more'],
  ])('%s', (_, items, expected) => {
    expect(listed(items)).toBe(expected);
  });
});

describe('a plural', () => {
  test.each([
    [0, 'bolt', undefined, '0 bolts'],
    [1, 'bolt', undefined, '1 bolt'],
    [2, 'bolt', undefined, '2 bolts'],
    [1, 'entry', 'entries', '1 entry'],
    [3, 'entry', 'entries', '3 entries'],
  ])('%i %s', (count, one, many, expected) => {
    expect(plural(count, one, many)).toBe(expected);
  });
});

test('small numbers are words, great ones figures', () => {
  expect([0, 1, 4, 12, 13].map(numbered)).toEqual(['none', 'one', 'four', 'twelve', '13']);
});

describe('a figure has no decimals that say nothing', () => {
  test.each([
    [5, undefined, '5'],
    [5.04, undefined, '5'],
    [5.25, 2, '5.25'],
    [5.2, 2, '5.2'],
    [0.05, undefined, '0.1'],
    [-0.01, undefined, '0'],
  ])('%d with %s digits', (value, digits, expected) => {
    expect(figure(value, digits)).toBe(expected);
  });
});

describe('a range says which ends it has', () => {
  test.each([
    ['both', { min: 4, max: 6 }, '4–6'],
    ['only a greatest', { max: 5 }, 'at most 5'],
    ['only a least', { min: 35 }, 'at least 35'],
    ['a target', { target: 5.5 }, '5.5'],
    ['a target inside its range: the range', { min: 4, max: 6, target: 5 }, '4–6'],
    ['nothing', {}, ''],
  ])('%s', (_, ends, expected) => {
    expect(range(ends)).toBe(expected);
  });
});

describe('a number and its unit', () => {
  test('stand on one line', () => {
    expect(quantity(5.5, 'N·m')).toBe(held('5.5_N·m'));
  });

  test.each([
    ['set to 47.5 lbf·in and 5 N·m', 'set to 47.5_lbf·in and 5_N·m'],
    ['marked on the part: 44–53 in·lb', 'marked on the part: 44–53_in·lb'],
    ['2.0 bar (29 psi), 120 kg', '2.0_bar (29_psi), 120_kg'],
    ['Faceplate, 4 × M5, 7 × 19 mm', 'Faceplate, 4_×_M5, 7_×_19_mm'],
    ['4 % of 60 °', '4_% of 60_°'],
    ['4 Nuts, 3 mmm, 5 bars: no unit', '4 Nuts, 3 mmm, 5 bars: no unit'],
  ])('%s', (text, expected) => {
    expect(heldTogether(text)).toBe(held(expected));
  });

  test.each([
    // 220 kPa is 2.2 bar and 31.9 psi (1 psi = 6.894 757 kPa, NIST SP 811)
    [220, 'kPa', '2.2_bar (32_psi)'],
    [120, 'mm', '120_mm'],
    [0.25, 'mm', '0.3_mm'],
  ])('%d %s is read as %s', (value, unit, expected) => {
    expect(measured(value, unit)).toBe(held(expected));
  });
});

describe('a limit', () => {
  test.each([
    [{ min: 90 }, 'mm', 'at least 90_mm'],
    [{ max: 2 }, 'mm', 'at most 2_mm'],
    [{ min: 200, max: 400 }, 'kPa', 'at least 2.0_bar (29_psi), at most 4.0_bar (58_psi)'],
    [{}, 'mm', ''],
  ])('%o %s', (limit, unit, expected) => {
    expect(measuredLimit(limit, unit)).toBe(held(expected));
  });

  test.each([
    [80, { min: 90 }, '80 mm is less than the least, 90 mm'],
    [3, { max: 2 }, '3 mm is more than the most, 2 mm'],
    [90, { min: 90, max: 90 }, undefined],
    [80, {}, undefined],
  ])('%d against %o', (value, limit, expected) => {
    expect(missedLimit(value, limit, (one) => `${one} mm`)).toBe(expected);
  });
});
