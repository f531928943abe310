/** Where a figure comes from, and who let a bike go: sentences that the sheet and the screens share. */

import { describe, expect, test } from 'vitest';
import { plainNames, words } from '../../src/words';

const names = { ...plainNames, person: (id: string) => `name of ${id}` };

describe('a figure marked on the part', () => {
  test.each([
    ['4–6 N·m', 'marked on the part'],
    ['max 5 Nm', 'marked on the part'],
    ['5-6 N.m (44-53 in.lb)', 'marked on the part'],
    ['7 newton metres', 'marked on the part'],
    ['44–53 in·lb', 'marked on the part: 44–53 in·lb'],
    ['min 40 max 50 in·lb', 'marked on the part: min 40 max 50 in·lb'],
    ['60 kgf·cm', 'marked on the part: 60 kgf·cm'],
  ])('as %s', (printed, expected) => {
    expect(words.source({ kind: 'part', printed }, names)).toBe(expected);
  });
});

test.each([
  [{ allowed: 'Known.', allowedBy: 'petra' }, 'let go by name of petra: Known.'],
  [{ allowed: 'Known.' }, 'let go by a supervisor: Known.'],
  [{ closed: 'Turned.', allowed: 'Known.', allowedBy: 'petra' }, 'put right: Turned.'],
  [{}, 'open'],
])('a finding on the sign screens: %o', (end, expected) => {
  const found = {
    code: 'unusual-finding',
    finding: 'f',
    severity: 'stop-ride',
    text: 'Bell',
  } as const;
  expect(words.unusual({ ...found, ...end }, names)).toBe(`Stop-ride: Bell (${expected})`);
});
