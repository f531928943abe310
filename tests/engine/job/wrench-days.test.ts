import { expect, test } from 'vitest';
import { wrenchDays } from '../../../src/engine/job';
import { doing, logged, opened } from '../../support/given-when-then';
import { contentsChecked, smallPlan, stepDone, stepsDone } from '../../support/small-job';
import { TODAY } from '../../support/wrenches';

const start = stepsDone(contentsChecked(opened(smallPlan)), ['clamp', 'wheel']);
const stem = stepDone(start, 'stem');

test('[J31] each bolt of each pass is one operation', () => {
  expect(wrenchDays(start.entries, smallPlan)).toEqual([]);
  // One bolt in one pass; four bolts in two rising passes and a last round.
  expect(wrenchDays(stepDone(start, 'axle').entries, smallPlan)).toEqual([['small', TODAY, 1]]);
  expect(wrenchDays(stem.entries, smallPlan)).toEqual([['small', TODAY, 12]]);
});

test('[J31] a joint done again is counted again', () => {
  const reopened = doing(stem, { kind: 'reopen-step', step: 'stem', reason: 'A creak.' });
  const again = stepDone(reopened, 'stem');
  expect(wrenchDays(again.entries, smallPlan)).toEqual([['small', TODAY, 24]]);
});

test('[J31] what was counted before is added to, whole log or bit by bit', () => {
  const both = stepDone(stem, 'axle');
  const added = both.entries.slice(stem.entries.length);
  const before = wrenchDays(stem.entries, smallPlan);
  expect(wrenchDays(added, smallPlan, before)).toEqual(wrenchDays(both.entries, smallPlan));
  expect(wrenchDays([], smallPlan, before)).toEqual(before);
});

test('[J31] wrenches and days are kept apart, in order, and an entry that comes twice counts once', () => {
  const before = [
    ['tiny', '2026-02-01', 3],
    ['small', '2026-02-27', 8],
  ] as const;
  const twice = [...stem.entries, ...stem.entries];
  expect(wrenchDays(twice, smallPlan, before)).toEqual([
    ['small', '2026-02-27', 8],
    ['small', TODAY, 12],
    ['tiny', '2026-02-01', 3],
  ]);
});

test('[J31] without its plan a pass counts as one bolt', () => {
  expect(wrenchDays(stem.entries, undefined)).toEqual([['small', TODAY, 3]]);
});

test('[J31] a bolt that was read again was brought up again', () => {
  const last = stem.entries.findLast(({ event }) => event.kind === 'joint-tightened');
  const readings = [1, 2, 3, 4, 4].map((bolt) => ({ bolt, value: 5.5, text: '5.5' }));
  const read = logged(start, { ...last?.event, kind: 'joint-tightened', v: 1, readings } as never);
  expect(wrenchDays(read.entries, smallPlan)).toEqual([['small', TODAY, 5]]);
});
