/** A second pair of eyes: joints that can hurt a rider and were tightened by somebody who is still learning. */

import type { Role, Stamp } from './command';
import type { Gate } from './gates';
import type { JobState } from './state';
import { stepOfJoint, stepsOf } from './status';

/** An apprentice who is neither mechanic nor supervisor as well. */
export function isLearner(roles: readonly Role[]): boolean {
  return !roles.includes('mechanic') && !roles.includes('supervisor');
}

/** Class A joints whose last round a learner has made, and nobody has confirmed since; by id, in the order of the plan. */
export function unconfirmedJoints(state: JobState): readonly string[] {
  return stepsOf(state).flatMap(({ joint }) =>
    joint !== undefined && needsSecondEyes(state, joint.id) ? [joint.id] : [],
  );
}

function needsSecondEyes(state: JobState, joint: string): boolean {
  const mark = state.joints[joint];
  return (
    stepOfJoint(state, joint)?.joint?.risk === 'A' &&
    mark?.tightened?.byLearner === true &&
    !mark.stale &&
    mark.confirmed === undefined
  );
}

/** Why this person may not confirm this joint: still learning themselves, or their own work. */
export function confirmingGates(
  state: JobState,
  joint: string,
  { by, roles }: Pick<Stamp, 'by' | 'roles'>,
): readonly Gate[] {
  const code = 'cannot-confirm-joint';
  if (isLearner(roles)) return [{ code, person: by, because: 'still-learning' }];
  const isOwn = state.joints[joint]?.tightened?.by === by;
  return isOwn ? [{ code, person: by, because: 'own-work' }] : [];
}
