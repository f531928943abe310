import { expect, test } from 'vitest';
import { digestOf } from '../../../src/engine/integrity';
import { emptyJob, evolve, planNamedIn, replay, withPlan } from '../../../src/engine/job';
import { boxed, opened } from '../../support/given-when-then';
import { handedOver, seedPlan, smallPlan } from '../../support/small-job';

const job = handedOver();

test('[J1] a whole job backwards, and twice over, is the same job', () => {
  const backwards = [...job.entries].reverse();
  expect(replay(backwards, smallPlan)).toEqual(job.state);
  expect(replay([...job.entries, ...backwards], smallPlan)).toEqual(job.state);
});

test('[J2] entry by entry is the same as from scratch, at every length', () => {
  let state = emptyJob(smallPlan);
  for (const [index, entry] of job.entries.entries()) {
    state = evolve(state, entry);
    expect(state).toEqual(replay(job.entries.slice(0, index + 1), smallPlan));
  }
  expect(state.handedOver).toBeDefined();
});

test('[J5] the plan is found by the name that the log has for it', () => {
  expect(planNamedIn(boxed(smallPlan).entries)).toBeUndefined();
  const plan = seedPlan('town');
  const { entries, state } = opened(plan);
  expect(planNamedIn(entries)).toBe(digestOf(plan));
  expect(withPlan(replay(entries), plan)).toEqual(state);
});
