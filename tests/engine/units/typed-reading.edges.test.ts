/** What stands round a typed reading, and what only looks like one; the forms are common practice, no source. */

import { describe, expect, test } from 'vitest';
import { parseTypedReading } from '../../../src/engine/units';

describe('parseTypedReading', () => {
  const nothing = String.fromCharCode(0);

  test.each<[text: string]>([
    ['\r\n5.02 Nm'],
    [' \t 5.02 Nm \r\n'],
    [`${nothing}${nothing}5.02 Nm`],
    [`5.02 Nm${nothing}${nothing}`],
    [`5.02 Nm\r${nothing}\n`],
    ['+\t5.02 Nm'],
    ['+  5.02 Nm'],
  ])('[U15] what is not seen does not count: %j', (text) => {
    const read = parseTypedReading(text, 'kgf·cm');
    expect(read.ok && [read.value.value, read.value.unit]).toEqual([5.02, 'N·m']);
  });

  test.each<[text: string, part: string]>([
    ['- 5.02 Nm', '-'],
    ['− 5.02 Nm', '−'],
    ['..5 Nm', '..5 Nm'],
    ['. Nm', '.'],
    ['+', '+'],
    ['5.02 5', '5'],
  ])('[U15] %j is no reading, because of %j', (text, part) => {
    expect(parseTypedReading(text, 'N·m')).toEqual({
      ok: false,
      refusal: { code: 'marking-not-understood', text, part },
    });
  });
});
