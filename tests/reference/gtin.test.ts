/** Check digits of article numbers against published examples. */

import { describe, expect, test } from 'vitest';
import { gtinCheckDigit, isGtin } from '../../src/engine/bike';

describe('check digit', () => {
  test.each<[body: string, digit: number, source: string]>([
    ['629104150021', 3, 'GS1, how to calculate a check digit manually (sum 57, 60 − 57)'],
    ['730001100001', 7, 'GS1 Sweden, how the control digit is calculated (sum 23, 30 − 23)'],
    ['4098765000022', 3, 'a 14-digit example printed by a computer maker’s support page'],
    ['37610425002123456', 9, 'GS1 General Specifications, SSCC example (from memory)'],
    ['9638507', 4, 'a widely printed 8-digit example (from memory)'],
    ['03600029145', 2, 'a widely printed 12-digit example (from memory)'],
    ['400638133393', 1, 'a widely printed 13-digit example (from memory)'],
    ['0001234500001', 0, 'sum 20, a multiple of ten (computed by the GS1 rule)'],
  ])('[K4] %s → %i', (body, digit) => {
    expect(gtinCheckDigit(body)).toBe(digit);
  });
});

describe('whole numbers', () => {
  test.each<[text: string, right: boolean, source: string]>([
    ['6291041500213', true, 'GS1 example'],
    ['6291041500214', false, 'the last digit of the GS1 example changed'],
    ['40987650000223', true, 'a 14-digit example printed by a computer maker’s support page'],
    ['96385074', true, 'a widely printed 8-digit example (from memory)'],
    ['036000291452', true, 'a widely printed 12-digit example (from memory)'],
    ['4006381333931', true, 'a widely printed 13-digit example (from memory)'],
    ['4006381333913', false, 'the last two digits changed over'],
  ])('[K4] %s: %s', (text, right) => {
    expect(isGtin(text)).toBe(right);
  });
});
