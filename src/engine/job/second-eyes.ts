/** A second pair of eyes: joints that can hurt a rider and were tightened by somebody who is still learning. */

import type { Role } from './command';
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
