/** What a job waits for, in facts that words turn into a sentence. */

import type { Severity } from '../inspection';
import type { HoldReason } from './event.schema';
import type { JobState } from './state';
import { blockingFindings, standingOfStep, statusOf, stepsOf } from './status';

export type Waiting =
  | { readonly code: 'waits-on-hold'; readonly for: HoldReason; readonly note: string }
  | {
      readonly code: 'waits-for-part';
      readonly part: string;
      readonly state: 'missing' | 'damaged';
    }
  | { readonly code: 'waits-for-finding'; readonly severity: Severity; readonly text: string }
  | { readonly code: 'waits-for-set-aside'; readonly step: string; readonly reason: string }
  | { readonly code: 'waits-for-rework'; readonly steps: number }
  | { readonly code: 'waits-for-second-check' }
  | { readonly code: 'waits-for-customer' };

export function waitsFor(state: JobState): readonly Waiting[] {
  const status = statusOf(state);
  if (status === 'handed-over' || status === 'boxed') return [];
  return [
    ...held(state),
    ...missingParts(state),
    ...blockingFindings(state).map(
      ({ severity, text }): Waiting => ({ code: 'waits-for-finding', severity, text }),
    ),
    ...setAside(state),
    ...rework(state),
    ...(status === 'to-be-checked' ? [{ code: 'waits-for-second-check' } as const] : []),
    ...(status === 'ready' ? [{ code: 'waits-for-customer' } as const] : []),
  ];
}

function held({ hold }: JobState): readonly Waiting[] {
  return hold === undefined ? [] : [{ code: 'waits-on-hold', for: hold.for, note: hold.note }];
}

function missingParts(state: JobState): readonly Waiting[] {
  return (state.plan?.contents ?? []).flatMap(({ id, name }) => {
    const mark = state.contents[id];
    if (mark === undefined || mark.state === 'present' || !isStillNeeded(state, id)) return [];
    return [{ code: 'waits-for-part', part: name, state: mark.state } as const];
  });
}

function isStillNeeded(state: JobState, part: string): boolean {
  return stepsOf(state).some(
    (step) => step.parts.includes(part) && standingOfStep(state, step.id) !== 'done',
  );
}

function setAside(state: JobState): readonly Waiting[] {
  return stepsOf(state).flatMap((step) => {
    const mark = state.steps[step.id];
    if (mark?.standing !== 'set-aside') return [];
    return [{ code: 'waits-for-set-aside', step: step.title, reason: mark.reason ?? '' } as const];
  });
}

function rework(state: JobState): readonly Waiting[] {
  const steps = Object.values(state.steps).filter(
    ({ standing }) => standing === 'stale' || standing === 'reopened',
  ).length;
  return steps === 0 ? [] : [{ code: 'waits-for-rework', steps }];
}
