import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compareNumbers, compareText } from '../../../src/engine/base';

test.each<[situation: string, a: string, b: string, sign: number]>([
  ['capitals stand before small letters', 'Z', 'a', -1],
  ['an accented letter stands after z, where many locales put it before', 'é', 'z', 1],
  ['digits are characters, not numbers', '10', '9', -1],
  ['a shorter text stands before its continuation', 'ab', 'abc', -1],
  ['equal texts are equal', 'same', 'same', 0],
  ['surrogates stand before the private use area, as RFC 8785 sorts', '\u{1F600}', '\uFB33', -1],
])('[B4] %s', (_, a, b, sign) => {
  expect(compareText(a, b)).toBe(sign);
});

test('[B4] the order is total: reversed arguments give the reversed answer, and sorting is stable', () => {
  fc.assert(
    fc.property(fc.string(), fc.string(), fc.string(), (a, b, c) => {
      expect(compareText(a, b) + compareText(b, a)).toBe(0);
      const [first = '', second = '', third = ''] = [a, b, c].sort(compareText);
      expect(compareText(first, second)).not.toBe(1);
      expect(compareText(first, third)).not.toBe(1);
    }),
    { seed: 2105 },
  );
});

test('[B4] numbers are compared as numbers', () => {
  expect([10, 9, 1].sort(compareNumbers)).toEqual([1, 9, 10]);
});
