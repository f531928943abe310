/** The joints of a job that hold by what one wrench did: what has to be judged again when that wrench is in doubt. */

import { type Entry, orderLog } from '../integrity';
import type { Tightened } from './event.schema';
import { evolve } from './evolve';
import type { JobPlan } from './job-plan.schema';
import { emptyJob, type JobState, type Mark } from './state';
import { standingOfStep, stepOfJoint } from './status';

export interface WrenchUse extends Tightened, Mark {
  /** The step that tightens the joint, where the plan has one. */
  readonly step?: string | undefined;
  readonly name: string;
  /** What its failure can do; a joint that the plan does not know is taken for one that can hurt. */
  readonly class: 'A' | 'B' | 'C';
  /** The joint was gone over later without being loosened: a bolt too tight stays too tight. */
  readonly goneOver?: { readonly wrench: string; readonly at: string } | undefined;
}

/**
 * Every tightening done with this wrench, in the order of the log, of joints that have not been loosened since. Going
 * over a joint with another wrench takes nothing back; reopening its step does, because it is then tightened anew.
 */
export function wrenchUses(
  entries: readonly Entry[],
  plan: JobPlan | undefined,
  wrench: string,
): readonly WrenchUse[] {
  let state = emptyJob(plan);
  let held: readonly (Tightened & Mark)[] = [];
  for (const entry of orderLog(entries)) {
    const before = state;
    state = evolve(before, entry);
    const now = state;
    held = held.filter(({ joint }) => isLoosened(before, joint) || !isLoosened(now, joint));
    if (entry.event.kind !== 'joint-tightened') continue;
    const tightened = Object.values(state.joints).find(
      (mark) => mark.tightened?.entry === entry.id,
    )?.tightened;
    if (tightened !== undefined) held = [...held, tightened];
  }
  return held
    .filter((use) => use.wrench.id === wrench)
    .map((use) => ({ ...use, ...placeOf(state, use.joint), goneOver: laterOf(held, use) }));
}

function isLoosened(state: JobState, joint: string): boolean {
  const step = stepOfJoint(state, joint);
  return step !== undefined && standingOfStep(state, step.id) === 'reopened';
}

function placeOf(state: JobState, id: string): Pick<WrenchUse, 'step' | 'name' | 'class'> {
  const step = stepOfJoint(state, id);
  return { step: step?.id, name: step?.joint?.name ?? id, class: step?.joint?.risk ?? 'A' };
}

function laterOf(
  held: readonly (Tightened & Mark)[],
  use: Tightened & Mark,
): WrenchUse['goneOver'] {
  const last = held.findLast(({ joint }) => joint === use.joint);
  if (last === undefined || last.entry === use.entry) return undefined;
  return { wrench: last.wrench.id, at: last.at.claimed };
}
