/** Gates: conditions that must hold before something may be done. Each names what is missing. */

import type { Severity } from '../inspection';
import type { PlanStep } from '../plan';
import type { Asked, Command, CommandKind, Stamp } from './command';
import type { HoldReason, PartState } from './event.schema';
import { isLearner, unconfirmedJoints } from './second-eyes';
import type { JobState } from './state';
import {
  blockingFindings,
  pointById,
  standingOfStep,
  standingSignature,
  stepById,
  stepsOf,
  unfinishedSteps,
  unsettledPoints,
} from './status';

export type Gate =
  | { readonly code: 'box-not-received' }
  | { readonly code: 'box-already-received' }
  | { readonly code: 'job-not-open' }
  | { readonly code: 'job-already-open' }
  | { readonly code: 'job-on-hold'; readonly for: HoldReason; readonly note: string }
  | { readonly code: 'job-not-on-hold' }
  | { readonly code: 'record-sealed' }
  | { readonly code: 'record-not-sealed' }
  | {
      readonly code: 'step-waits-for-steps';
      readonly step: string;
      readonly steps: readonly string[];
    }
  | {
      readonly code: 'step-waits-for-parts';
      readonly step: string;
      readonly parts: readonly { readonly part: string; readonly state: PartState | 'unchecked' }[];
    }
  | {
      readonly code: 'point-waits-for-steps';
      readonly point: string;
      readonly steps: readonly string[];
    }
  | { readonly code: 'contents-unchecked'; readonly parts: readonly string[] }
  | { readonly code: 'steps-unfinished'; readonly steps: readonly string[] }
  | { readonly code: 'points-unsettled'; readonly points: readonly string[] }
  | {
      readonly code: 'findings-open';
      readonly findings: readonly {
        readonly finding: string;
        readonly severity: Severity;
        readonly text: string;
      }[];
    }
  | { readonly code: 'not-signed-as-built' }
  | { readonly code: 'already-signed-as-built' }
  | { readonly code: 'not-signed-as-checked' }
  | { readonly code: 'already-signed-as-checked' }
  | { readonly code: 'builder-cannot-check'; readonly person: string }
  | { readonly code: 'apprentice-cannot-check'; readonly person: string }
  /** By id: tightened by somebody still learning, and not yet looked at by a mechanic or supervisor. */
  | { readonly code: 'joints-unconfirmed'; readonly joints: readonly string[] }
  | {
      readonly code: 'cannot-confirm-joint';
      readonly person: string;
      readonly because: 'still-learning' | 'own-work';
    }
  | { readonly code: 'supervisor-only' };

/** Every gate that is closed for a command, the most telling first; none means it may be done. */
export function gatesFor(state: JobState, command: Command): readonly Gate[] {
  const closed = lifeGates(state, command.kind);
  if (closed.length > 0) return closed;
  switch (command.kind) {
    case 'do-step':
    case 'make-pass':
      return stepGates(state, command.step);
    case 'look-at-point':
      return pointGates(state, command.point);
    case 'allow-finding':
      return command.stamp.roles.includes('supervisor') ? [] : [{ code: 'supervisor-only' }];
    case 'confirm-joint':
      return confirmingGates(state, command.joint, command.stamp);
    case 'sign-built':
      return builtGates(state);
    case 'sign-checked':
      return checkedGates(state, command.stamp);
    case 'send-back':
      return checkerGates(state, command.stamp);
    case 'hand-over':
      return handOverGates(state);
    default:
      return [];
  }
}

/** What may be done in which part of a job's life. */
const beforeOpening: readonly CommandKind[] = [
  'receive-box',
  'describe-bike',
  'set-due',
  'open-job',
  'hold-job',
  'resume-job',
];
const whileHeld: readonly CommandKind[] = [
  'resume-job',
  'set-due',
  'raise-finding',
  'check-contents',
];
const afterSealing: readonly CommandKind[] = ['amend-record'];

function lifeGates(state: JobState, kind: Asked['kind']): readonly Gate[] {
  if (kind === 'receive-box')
    return state.received === undefined ? [] : [{ code: 'box-already-received' }];
  if (state.received === undefined) return [{ code: 'box-not-received' }];
  if (state.handedOver !== undefined)
    return afterSealing.includes(kind) ? [] : [{ code: 'record-sealed' }];
  if (afterSealing.includes(kind)) return [{ code: 'record-not-sealed' }];
  if (kind === 'resume-job') return state.hold === undefined ? [{ code: 'job-not-on-hold' }] : [];
  if (state.hold !== undefined && !whileHeld.includes(kind))
    return [{ code: 'job-on-hold', for: state.hold.for, note: state.hold.note }];
  if (state.opened === undefined)
    return beforeOpening.includes(kind) ? [] : [{ code: 'job-not-open' }];
  return kind === 'open-job' || kind === 'describe-bike' ? [{ code: 'job-already-open' }] : [];
}

/** Steps before it that are not done or no longer good, and parts from the box that it cannot do without. */
export function stepGates(state: JobState, id: string): readonly Gate[] {
  const step = stepById(state, id);
  if (step === undefined) return [];
  const steps = [...new Set([...step.after, ...step.reliesOn])].filter(
    (before) => standingOfStep(state, before) !== 'done',
  );
  const parts = partsWanting(state, step);
  return [
    ...(parts.length > 0 ? [{ code: 'step-waits-for-parts', step: id, parts } as const] : []),
    ...(steps.length > 0 ? [{ code: 'step-waits-for-steps', step: id, steps } as const] : []),
  ];
}

function partsWanting(
  state: JobState,
  step: PlanStep,
): readonly { part: string; state: PartState | 'unchecked' }[] {
  return step.parts
    .map((part) => ({ part, state: state.contents[part]?.state ?? ('unchecked' as const) }))
    .filter(({ state: found }) => found !== 'present');
}

function pointGates(state: JobState, id: string): readonly Gate[] {
  const steps = (pointById(state, id)?.reliesOn ?? []).filter(
    (step) => stepById(state, step) !== undefined && standingOfStep(state, step) !== 'done',
  );
  return steps.length > 0 ? [{ code: 'point-waits-for-steps', point: id, steps }] : [];
}

function workGates(state: JobState): readonly Gate[] {
  const contents = uncheckedContents(state);
  const steps = unfinishedSteps(state).map(({ id }) => id);
  const points = unsettledPoints(state).map(({ id }) => id);
  const joints = unconfirmedJoints(state);
  return [
    ...(contents.length > 0 ? [{ code: 'contents-unchecked', parts: contents } as const] : []),
    ...(steps.length > 0 ? [{ code: 'steps-unfinished', steps } as const] : []),
    ...(points.length > 0 ? [{ code: 'points-unsettled', points } as const] : []),
    ...(joints.length > 0 ? [{ code: 'joints-unconfirmed', joints } as const] : []),
    ...findingGates(state),
  ];
}

export function uncheckedContents(state: JobState): readonly string[] {
  return (state.plan?.contents ?? [])
    .map(({ id }) => id)
    .filter((part) => state.contents[part] === undefined);
}

function findingGates(state: JobState): readonly Gate[] {
  const findings = blockingFindings(state).map(({ id, severity, text }) => ({
    finding: id,
    severity,
    text,
  }));
  return findings.length > 0 ? [{ code: 'findings-open', findings }] : [];
}

function builtGates(state: JobState): readonly Gate[] {
  if (standingSignature(state, 'built') !== undefined) return [{ code: 'already-signed-as-built' }];
  return workGates(state);
}

function checkedGates(state: JobState, person: Checker): readonly Gate[] {
  if (standingSignature(state, 'checked') !== undefined)
    return [{ code: 'already-signed-as-checked' }];
  return [...checkerGates(state, person), ...workGates(state)];
}

type Checker = Pick<Stamp, 'by' | 'roles'>;

/** The builder cannot be the second checker of the same job, nor can somebody who is still learning. */
function checkerGates(state: JobState, { by, roles }: Checker): readonly Gate[] {
  if (state.builders.includes(by)) return [{ code: 'builder-cannot-check', person: by }];
  if (isLearner(roles)) return [{ code: 'apprentice-cannot-check', person: by }];
  return standingSignature(state, 'built') === undefined ? [{ code: 'not-signed-as-built' }] : [];
}

/** Why this person may not confirm this joint: still learning themselves, or their own work. */
function confirmingGates(state: JobState, joint: string, { by, roles }: Checker): readonly Gate[] {
  const code = 'cannot-confirm-joint';
  if (isLearner(roles)) return [{ code, person: by, because: 'still-learning' }];
  const isOwn = state.joints[joint]?.tightened?.by === by;
  return isOwn ? [{ code, person: by, because: 'own-work' }] : [];
}

function handOverGates(state: JobState): readonly Gate[] {
  return [
    ...(standingSignature(state, 'built') === undefined
      ? [{ code: 'not-signed-as-built' } as const]
      : []),
    ...(standingSignature(state, 'checked') === undefined
      ? [{ code: 'not-signed-as-checked' } as const]
      : []),
    ...workGates(state),
  ];
}

/** Steps that could be done now: to do, stale or reopened, with every gate open. */
export function isStepOpen(state: JobState, step: string): boolean {
  return standingOfStep(state, step) !== 'done' && stepGates(state, step).length === 0;
}

export function openSteps(state: JobState): readonly PlanStep[] {
  return stepsOf(state).filter((step) => isStepOpen(state, step.id));
}
