/** Where a wrench shows what it delivers, a joint in doubt is judged bolt by bolt, and the worst bolt stands for it. */

import { expect, test } from 'vitest';
import { reachBackFor } from '../../src/state/reach-back';
import type { Doubt } from '../../src/state/tool-doubts';
import type { JobRow } from '../../src/storage/contract';
import { createMemoryStorage } from '../../src/storage/memory/memory-storage';
import { doing, opened, type Played } from '../support/given-when-then';
import { contentsChecked, printedFigure, smallPlan, stepsDone } from '../support/small-job';
import { must } from '../support/test-app';
import { TODAY, wrench } from '../support/wrenches';

const dial = wrench({ id: 'dial', type: 'I', class: 'B', increment: 0.1 });
const shown = [5.4, 5.5, 5.9, 5.5];

/** Four bolts of a stem, 5–6 N·m, each read in the last round. */
function stemRead(): Played {
  const start = stepsDone(contentsChecked(opened(smallPlan)), ['clamp']);
  const figure = printedFigure(5, 6);
  let job = doing(start, { kind: 'enter-figure', joint: 'stem-bolts', figure });
  for (const pass of [1, 2])
    job = doing(job, { kind: 'make-pass', step: 'stem', pass, wrench: dial });
  const readings = shown.map((value, index) => ({ bolt: index + 1, value, text: String(value) }));
  return doing(job, { kind: 'make-pass', step: 'stem', pass: 3, wrench: dial, readings });
}

async function reached(deviation: number) {
  const { entries, plan } = stemRead();
  const row = { job: 'job-1', frameNumber: 'HW24-00417', status: 'on-the-stand' } as JobRow; // as much as is looked at
  const storage = {
    ...createMemoryStorage(),
    findByWrench: async () => [row],
    log: async () => ({ entries, plan }),
  };
  const doubt: Doubt = {
    wrench: 'dial',
    key: '0',
    cause: 'found-outside',
    on: TODAY,
    since: { on: dial.calibratedOn },
    found: [{ at: 5, deviation }],
  };
  return must(await reachBackFor({ storage }, { id: 'dial', kind: 'wrench', wrench: dial }, doubt));
}

test('the bolt that was tightest is the one that may be too tight', async () => {
  const { bikes, looked } = await reached(-0.08);
  expect(looked).toEqual({ bikes: 1, joints: 1 });
  expect(bikes.flatMap(({ joints }) => joints)).toMatchObject([
    { joint: 'stem-bolts', setPoint: 5.9, verdict: 'outside' },
  ]);
  // True torque = shown / (1 + a): ISO 6789-1, from memory.
  expect(bikes[0]?.joints[0]?.high).toBeCloseTo(5.9 / 0.92, 6);
});

test('and the loosest the one that may be too loose', async () => {
  const { bikes } = await reached(0.12);
  expect(bikes[0]?.joints[0]?.setPoint).toBe(5.4);
});

test('what keeps every bolt inside leaves the joint off the list', async () => {
  expect((await reached(0.005)).bikes).toEqual([]);
});
