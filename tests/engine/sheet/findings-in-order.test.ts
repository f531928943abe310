import { expect, test } from 'vitest';
import { findingsInOrder } from '../../../src/engine/sheet';

const by = { by: 'Sunniva', reason: 'Known.' };
const chip = { severity: 'tell-customer', text: 'chip' } as const;
const bell = { severity: 'before-hand-over', text: 'bell', closed: 'Turned.' } as const;
const pads = { severity: 'stop-ride', text: 'pads', closed: 'New ones.' } as const;
const light = { severity: 'before-hand-over', text: 'light', allowed: by } as const;
const hub = { severity: 'stop-ride', text: 'hub', allowed: by } as const;
const mended = {
  severity: 'stop-ride',
  text: 'mended',
  allowed: by,
  closed: 'After all.',
} as const;
const scratch = { severity: 'tell-customer', text: 'scratch' } as const;

type Found = Parameters<typeof findingsInOrder>[0][number];

test.each<[string, readonly Found[], readonly Found[], readonly Found[]]>([
  ['nothing', [], [], []],
  ['the worst comes first', [chip, bell, pads], [], [pads, bell, chip]],
  ['of one severity as found', [scratch, chip], [], [scratch, chip]],
  ['let go stands apart, the worst first', [chip, light, pads, hub], [hub, light], [pads, chip]],
  ['let go, and put right after all, is put right', [mended, chip], [], [mended, chip]],
])('[S10] %s', (_, findings, letGo, others) => {
  expect(findingsInOrder(findings)).toEqual({ letGo, others });
});
