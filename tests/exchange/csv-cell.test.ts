/** Cells that a spreadsheet shows and never runs. */

import { expect, test } from 'vitest';
import { csvCell, csvLines } from '../../src/exchange/csv-cell';

// Common practice against formulas in cells; quoting after RFC 4180, section 2.
test.each([
  ['=1+1', "'=1+1"],
  ['+1', "'+1"],
  ['-1', "'-1"],
  ['@x', "'@x"],
  ['\tx', "'\tx"],
  ['plain', 'plain'],
  ['a,b', '"a,b"'],
  ['say "no"', '"say ""no"""'],
  ['two\r\nlines', '"two\r\nlines"'],
  ['=a,"b"', '"\'=a,""b"""'],
])('%j is written %j', (given, written) => {
  expect(csvCell(given)).toBe(written);
});

test('lines end as RFC 4180 says', () => {
  expect(csvLines([['a', 'b'], ['c']])).toBe('a,b\r\nc\r\n');
});
