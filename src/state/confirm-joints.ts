/** A second pair of eyes on joints an apprentice tightened: by its own PIN, whoever is at the stand. */

import { ok, type Result, refuse } from '../engine/base';
import type { JobState } from '../engine/job';
import type { StorageRefusal } from '../storage/contract';
import { activePerson, type PersonUnknown } from './people';
import type { Perform, PerformRefusal } from './perform';
import type { AppPorts, PinRefusal } from './ports';

export interface ConfirmedJoints {
  readonly job: string;
  readonly joints: readonly string[];
  readonly person: string;
  readonly pin: string;
}

export type ConfirmRefusal = PerformRefusal | PinRefusal | PersonUnknown | StorageRefusal;

/** The PIN is asked once; each joint is confirmed in an entry of its own, and the first refusal ends it. */
export async function confirmJoints(
  { storage, keys, perform }: Pick<AppPorts, 'storage' | 'keys'> & { readonly perform: Perform },
  { job, joints, person, pin }: ConfirmedJoints,
): Promise<Result<JobState | undefined, ConfirmRefusal>> {
  const found = await activePerson(storage, person);
  if (!found.ok) return found;
  const known = await keys.isPinOf(person, pin);
  if (!known.ok) return known;
  let state: JobState | undefined;
  for (const joint of joints) {
    const done = await perform(job, { kind: 'confirm-joint', joint }, found.value);
    if (!done.ok) return refuse(done.refusal);
    state = done.value.state;
  }
  return ok(state);
}
