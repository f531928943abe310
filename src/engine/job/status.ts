/** The state of a job in plain words, and the standing of its parts. */

import type { RoutePoint } from '../inspection';
import type { PlanStep } from '../plan';
import type { Meaning } from './event.schema';
import type { Finding, JobState, SignatureMark } from './state';

export const jobStatuses = [
  'boxed',
  'on-the-stand',
  'on-hold',
  'to-be-checked',
  'ready',
  'handed-over',
] as const;

export type JobStatus = (typeof jobStatuses)[number];

export function statusOf(state: JobState): JobStatus {
  if (state.handedOver !== undefined) return 'handed-over';
  if (state.hold !== undefined) return 'on-hold';
  if (state.opened === undefined) return 'boxed';
  if (standingSignature(state, 'built') === undefined) return 'on-the-stand';
  return standingSignature(state, 'checked') === undefined ? 'to-be-checked' : 'ready';
}

/** The last signature with this meaning that nothing has disturbed since. */
export function standingSignature(state: JobState, meaning: Meaning): SignatureMark | undefined {
  return state.signatures.findLast((mark) => mark.meaning === meaning && !mark.stale);
}

export type Standing = 'to-do' | 'done' | 'stale' | 'reopened' | 'set-aside';

export function standingOfStep(state: JobState, step: string): Standing {
  return state.steps[step]?.standing ?? 'to-do';
}

export function stepsOf(state: JobState): readonly PlanStep[] {
  return state.plan?.steps ?? [];
}

export function pointsOf(state: JobState): readonly RoutePoint[] {
  return state.plan?.points ?? [];
}

export function stepById(state: JobState, step: string): PlanStep | undefined {
  return stepsOf(state).find((candidate) => candidate.id === step);
}

export function stepOfJoint(state: JobState, joint: string): PlanStep | undefined {
  return stepsOf(state).find((candidate) => candidate.joint?.id === joint);
}

export function pointById(state: JobState, point: string): RoutePoint | undefined {
  return pointsOf(state).find((candidate) => candidate.id === point);
}

/** Steps that are not done, or no longer good. */
export function unfinishedSteps(state: JobState): readonly PlanStep[] {
  return stepsOf(state).filter((step) => standingOfStep(state, step.id) !== 'done');
}

/** Whether a point was looked at and nothing it relies on was disturbed since. */
export function isPointSettled(state: JobState, point: string): boolean {
  const mark = state.points[point];
  return mark !== undefined && !mark.stale;
}

export function unsettledPoints(state: JobState): readonly RoutePoint[] {
  return pointsOf(state).filter((point) => !isPointSettled(state, point.id));
}

/** Findings that are neither closed nor let go by a supervisor. */
export function openFindings(state: JobState): readonly Finding[] {
  return state.findings.filter(
    (finding) => finding.closed === undefined && finding.allowed === undefined,
  );
}

/** Open findings that must not leave the shop. */
export function blockingFindings(state: JobState): readonly Finding[] {
  return openFindings(state).filter((finding) => finding.severity !== 'tell-customer');
}
