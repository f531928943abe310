/** A job's state from its log. */

import { type Entry, orderLog } from '../integrity';
import { evolve } from './evolve';
import type { JobPlan } from './job-plan.schema';
import { emptyJob, type JobState } from './state';

/** The same set of entries gives the same state everywhere, whatever their order and however often they come. */
export function replay(entries: readonly Entry[], plan?: JobPlan): JobState {
  return orderLog(entries).reduce(evolve, emptyJob(plan));
}

/** The digest of the plan that a log names, where it has been opened. */
export function planNamedIn(entries: readonly Entry[]): string | undefined {
  return replay(entries).opened?.plan;
}

/** A state that has just been opened, given the plan its log names. */
export function withPlan(state: JobState, plan: JobPlan): JobState {
  return { ...state, plan };
}
