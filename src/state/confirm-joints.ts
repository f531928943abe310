/** A second pair of eyes on joints an apprentice tightened: by its own PIN, whoever is at the stand. */

import { ok, type Result, refuse } from '../engine/base';
import type { JobState } from '../engine/job';
import type { Perform, PerformRefusal } from './perform';
import type { AppPorts } from './ports';
import { type ProofRefusal, provenPerson } from './standing-for';

export interface ConfirmedJoints {
  readonly job: string;
  readonly joints: readonly string[];
  readonly person: string;
  readonly pin: string;
}

export type ConfirmRefusal = PerformRefusal | ProofRefusal;

/** The PIN is asked once; each joint is confirmed in an entry of its own, and the first refusal ends it. */
export async function confirmJoints(
  ports: Pick<AppPorts, 'storage' | 'keys'> & { readonly perform: Perform },
  { job, joints, person, pin }: ConfirmedJoints,
): Promise<Result<JobState | undefined, ConfirmRefusal>> {
  const found = await provenPerson(ports, person, pin);
  if (!found.ok) return found;
  let state: JobState | undefined;
  for (const joint of joints) {
    const done = await ports.perform(job, { kind: 'confirm-joint', joint }, found.value);
    if (!done.ok) return refuse(done.refusal);
    state = done.value.state;
  }
  return ok(state);
}
