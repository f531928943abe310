import { expect, test } from 'vitest';
import { emptyJob, summaryOf, zoneCounts } from '../../../src/engine/job';
import { boxed, doing, opened } from '../../support/given-when-then';
import {
  built,
  contentsChecked,
  handedOver,
  smallPlan,
  stepsDone,
  walked,
} from '../../support/small-job';

const some = stepsDone(contentsChecked(opened(smallPlan)), ['clamp', 'wheel', 'stem']);

test('[J26] counts what is done by zone, in the order of the plan', () => {
  expect(zoneCounts(some.state)).toEqual([
    { zone: 'whole-bike', done: 1, of: 1 },
    { zone: 'front-wheel', done: 1, of: 4 },
    { zone: 'cockpit', done: 1, of: 2 },
    { zone: 'seat', done: 0, of: 1 },
  ]);
});

test('[J26] counts neither what is stale nor what is reopened', () => {
  const all = walked(built(opened(smallPlan)));
  const summary = summaryOf(all.state);
  expect([summary?.steps, summary?.points]).toEqual([
    { done: 8, of: 8 },
    { done: 4, of: 4 },
  ]);
  const reopened = doing(all, { kind: 'reopen-step', step: 'stem', reason: 'A creak.' });
  const after = summaryOf(reopened.state);
  expect([after?.steps, after?.points]).toEqual([
    { done: 6, of: 8 },
    { done: 3, of: 4 },
  ]);
});

test('[J26] says which bike it is, what it waits for, and who was last at it', () => {
  const held = doing(some, { kind: 'hold-job', for: 'tool', note: 'the press' });
  const due = doing(held, { kind: 'set-due', due: '2026-03-05T17:00' });
  expect(summaryOf(due.state, { by: 'imre', at: '2026-03-02T10:00:00+01:00' })).toMatchObject({
    status: 'on-hold',
    make: 'Harrier Works',
    frameNumber: 'HW24-00417',
    due: '2026-03-05T17:00',
    waiting: [{ code: 'waits-on-hold', for: 'tool', note: 'the press' }],
    openFindings: 0,
    lastBy: 'imre',
    lastAt: '2026-03-02T10:00:00+01:00',
    handedOverAt: undefined,
  });
  expect(summaryOf(handedOver().state)?.handedOverAt).toBe('2026-03-02T10:00:00+01:00');
});

test('[J26] there is none before a box, and nothing to count before a plan', () => {
  expect(summaryOf(emptyJob())).toBeUndefined();
  expect(summaryOf(boxed(smallPlan).state)).toMatchObject({
    status: 'boxed',
    zones: [],
    steps: { done: 0, of: 0 },
  });
});
