/** How lists, plurals, figures and ranges are written. */

import { describe, expect, test } from 'vitest';
import { words } from '../../src/words';

const { figure, listed, numbered, plural, range } = words.writing;

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
