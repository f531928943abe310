/** The one question the stand answers: what now? */

import type { Gate } from './gates';
import { isStepOpen, stepGates, uncheckedContents } from './gates';
import type { JobState } from './state';
import {
  blockingFindings,
  isPointSettled,
  pointsOf,
  standingOfStep,
  statusOf,
  stepsOf,
  unfinishedSteps,
} from './status';

export type WhatNow =
  | { readonly what: 'open-job' }
  | { readonly what: 'resume' }
  | { readonly what: 'contents' }
  | { readonly what: 'step'; readonly step: string }
  /** Every step left waits for something: these are the gates. */
  | { readonly what: 'blocked'; readonly gates: readonly Gate[] }
  | { readonly what: 'point'; readonly point: string }
  | { readonly what: 'finding'; readonly finding: string }
  | { readonly what: 'sign-built' }
  | { readonly what: 'second-check' }
  | { readonly what: 'hand-over' }
  | { readonly what: 'sealed' };

/**
 * What comes next. Rework first (stale and reopened steps, in plan order), then the plan in its order, then what was
 * set aside, then the walk, then findings, then the signatures.
 */
export function whatNow(state: JobState): WhatNow {
  const status = statusOf(state);
  if (status === 'boxed') return { what: 'open-job' };
  if (status === 'on-hold') return { what: 'resume' };
  if (status === 'handed-over') return { what: 'sealed' };
  if (status === 'ready') return { what: 'hand-over' };
  if (status === 'to-be-checked') return { what: 'second-check' };
  if (uncheckedContents(state).length > 0) return { what: 'contents' };
  return nextStep(state) ?? nextPoint(state) ?? nextFinding(state) ?? { what: 'sign-built' };
}

function nextStep(state: JobState): WhatNow | undefined {
  const open = stepsOf(state).filter(({ id }) => isStepOpen(state, id));
  const rework = open.find(({ id }) => ['stale', 'reopened'].includes(standingOfStep(state, id)));
  const next = rework ?? open.find(({ id }) => standingOfStep(state, id) === 'to-do') ?? open[0];
  if (next !== undefined) return { what: 'step', step: next.id };
  const left = unfinishedSteps(state);
  if (left.length === 0) return undefined;
  return { what: 'blocked', gates: left.flatMap(({ id }) => stepGates(state, id)) };
}

function nextPoint(state: JobState): WhatNow | undefined {
  const point = pointsOf(state).find(({ id }) => !isPointSettled(state, id));
  return point && { what: 'point', point: point.id };
}

function nextFinding(state: JobState): WhatNow | undefined {
  const [finding] = blockingFindings(state);
  return finding && { what: 'finding', finding: finding.id };
}
