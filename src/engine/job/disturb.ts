/** Rework: what is disturbed is good no longer, and neither is anything that relied on it, until it is shown good again. */

import { staleAfter } from '../plan';
import type { Disturbance, JobState, JointMark, StepMark } from './state';

/**
 * Marks the named steps as reopened, everything that transitively relies on them as stale (steps, joints, measures,
 * points), the named points as stale, and the signatures that said the bike was built or checked as overtaken.
 * Old marks stay: stale is not undone.
 */
export function disturb(
  state: JobState,
  disturbed: { readonly steps: readonly string[]; readonly points: readonly string[] },
  by: Disturbance,
): JobState {
  const stale = state.plan === undefined ? [] : staleAfter(state.plan, disturbed.steps);
  const affected = new Set([...disturbed.steps, ...stale]);
  return {
    ...state,
    steps: disturbSteps(state, disturbed.steps, stale, by),
    joints: disturbJoints(state, new Set(disturbed.steps), affected),
    measures: disturbMeasures(state, affected, new Set(disturbed.points)),
    points: disturbPoints(state, affected, new Set(disturbed.points), by),
    signatures: state.signatures.map((mark) => ({ ...mark, stale: true })),
  };
}

function disturbSteps(
  state: JobState,
  reopened: readonly string[],
  stale: readonly string[],
  disturbed: Disturbance,
): JobState['steps'] {
  const marks: Record<string, StepMark> = { ...state.steps };
  for (const step of reopened) {
    marks[step] = {
      standing: 'reopened',
      done: marks[step]?.done ?? [],
      reason: disturbed.reason,
      disturbed,
    };
  }
  for (const step of stale) {
    const mark = marks[step];
    if (mark?.standing === 'done') marks[step] = { ...mark, standing: 'stale', disturbed };
  }
  return marks;
}

/** A loosened joint begins its passes anew; one that only relied on something needs its last round shown again. */
function disturbJoints(
  state: JobState,
  loosened: ReadonlySet<string>,
  affected: ReadonlySet<string>,
): JobState['joints'] {
  const joints: Record<string, JointMark> = { ...state.joints };
  for (const step of state.plan?.steps ?? []) {
    const mark = step.joint === undefined ? undefined : joints[step.joint.id];
    if (step.joint === undefined || mark === undefined || !affected.has(step.id)) continue;
    joints[step.joint.id] = {
      ...mark,
      passes: loosened.has(step.id) || !isTight(mark) ? [] : mark.passes,
      stale: mark.tightened !== undefined,
    };
  }
  return joints;
}

/** Its last pass has been made since it was last loosened. */
function isTight({ passes }: JointMark): boolean {
  return passes.some(({ pass, of }) => pass === of);
}

function disturbMeasures(
  state: JobState,
  steps: ReadonlySet<string>,
  points: ReadonlySet<string>,
): JobState['measures'] {
  return Object.fromEntries(
    Object.entries(state.measures).map(([key, mark]) => {
      const owner = key.slice(0, key.indexOf('.'));
      return [key, steps.has(owner) || points.has(owner) ? { ...mark, stale: true } : mark];
    }),
  );
}

function disturbPoints(
  state: JobState,
  steps: ReadonlySet<string>,
  named: ReadonlySet<string>,
  disturbed: Disturbance,
): JobState['points'] {
  const reliesOn = new Map((state.plan?.points ?? []).map((point) => [point.id, point.reliesOn]));
  return Object.fromEntries(
    Object.entries(state.points).map(([point, mark]) => {
      const isHit = named.has(point) || (reliesOn.get(point) ?? []).some((step) => steps.has(step));
      return [point, isHit ? { ...mark, stale: true, disturbed } : mark];
    }),
  );
}
