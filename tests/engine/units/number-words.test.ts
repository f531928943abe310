/** Numbers as they are said, and where they stop; the forms are common practice, no source. */

import { describe, expect, test } from 'vitest';
import { parseTorqueMarking } from '../../../src/engine/units';

describe('a spoken number', () => {
  test.each<[said: string, value: number]>([
    ['five', 5],
    ['fifteen', 15],
    ['six', 6],
    ['sixteen', 16],
    ['SIXTY', 60],
    ['sixty-six', 66],
    ['sixty  six', 66],
    ['five point five', 5.5],
    ['five  point  five', 5.5],
    ['five point zero five', 5.05],
    ['twelve and a half', 12.5],
    ['one hundred', 100],
    ['a hundred', 100],
    ['a hundred and a half', 100.5],
    ['one hundred two', 102],
    ['one hundred and twenty point five', 120.5],
  ])('[U14] “%s”', (said, value) => {
    const read = parseTorqueMarking(`${said} Nm`);
    expect(read.ok && read.value.figure).toEqual({ target: value });
  });

  test.each<[said: string, part: string]>([
    ['five point eleven', 'point'],
    ['five point', 'point'],
    ['twenty-eleven', 'eleven'],
    ['twenty-zeroes', 'zeroes'],
    ['fivefold', 'fivefold'],
    ['two hundred', 'two'],
    ['hundred', 'hundred'],
    ['a', 'a'],
    ['half', 'half'],
  ])('[U7, U14] “%s” is not one: “%s”', (said, part) => {
    const read = parseTorqueMarking(`${said} Nm`);
    expect(read).toMatchObject({ ok: false, refusal: { text: `${said} Nm` } });
    expect(!read.ok && read.refusal.part).toContain(part);
  });
});
