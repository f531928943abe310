/** What each event adds to a job. Never refuses: what is in the log has happened; unknown kinds add nothing. */

import type { Entry } from '../integrity';
import { disturb } from './disturb';
import type { EventOf, JobEvent } from './event.schema';
import type { Finding, JobState, Mark, StepMark } from './state';
import { standingSignature, stepById, stepOfJoint } from './status';
import { withFigure } from './tightening';

type Evolvers = {
  [K in JobEvent['kind']]: (state: JobState, event: EventOf<K>, mark: Mark) => JobState;
};

/** The state after one more entry of the log. */
export function evolve(
  state: JobState,
  entry: Pick<Entry, 'id' | 'by' | 'at' | 'event'>,
): JobState {
  const event = entry.event as JobEvent; // unknown kinds find no evolver below
  const evolver = Object.hasOwn(evolvers, event.kind) ? evolvers[event.kind] : undefined;
  if (evolver === undefined) return state;
  const mark = { by: entry.by, at: entry.at, entry: entry.id };
  return (evolver as (state: JobState, event: JobEvent, mark: Mark) => JobState)(
    state,
    event,
    mark,
  ); // the kind chose it
}

const evolvers: Evolvers = {
  'box-received': (state, { bike, due, delivery, cartonDamage, photos }, mark) => ({
    ...state,
    bike,
    due,
    received: { ...mark, cartonDamage, photos, delivery },
  }),
  'bike-described': (state, { bike }) => ({ ...state, bike }),
  'due-set': (state, { due }) => ({ ...state, due }),
  'job-opened': (state, { plan, market }, mark) => ({
    ...state,
    opened: { ...mark, plan, market },
  }),
  'contents-checked': (state, { parts }, mark) => ({
    ...state,
    contents: {
      ...state.contents,
      ...Object.fromEntries(
        parts.map(({ part, state: found, note }) => [part, { ...mark, state: found, note }]),
      ),
    },
  }),
  'step-done': (state, { step }, mark) => withStepDone(state, step, mark),
  'step-reopened': (state, { step, reason }, mark) =>
    disturb(state, { steps: [step], points: [] }, { ...mark, from: step, reason }),
  'step-set-aside': (state, { step, reason }, mark) =>
    withStep(state, step, {
      standing: 'set-aside',
      done: state.steps[step]?.done ?? [],
      reason,
      disturbed: { ...mark, from: step, reason },
    }),
  'figure-entered': (state, { joint, figure }) => withFigure(state, joint, figure),
  'pass-made': (state, { kind: _, v: __, ...pass }, mark) => {
    const joint = state.joints[pass.joint] ?? { passes: [], stale: false };
    return withBuilder(
      {
        ...state,
        joints: {
          ...state.joints,
          // Two who made the same pass apart have still made one.
          [pass.joint]: {
            ...joint,
            passes: [
              ...joint.passes.filter((made) => made.pass !== pass.pass),
              { ...pass, ...mark },
            ],
          },
        },
      },
      mark,
    );
  },
  'joint-tightened': (state, { kind: _, v: __, ...tightened }, mark) => {
    const joint = state.joints[tightened.joint] ?? { passes: [], stale: false };
    return withBuilder(
      {
        ...state,
        joints: {
          ...state.joints,
          [tightened.joint]: {
            ...joint,
            passes: [
              ...joint.passes.filter(({ pass }) => pass < tightened.pass),
              { ...tightened, ...mark },
            ],
            stale: false,
            tightened: { ...tightened, ...mark },
            confirmed: undefined,
          },
        },
      },
      mark,
    );
  },
  'joint-confirmed': (state, { joint, tightened }, mark) => {
    const held = state.joints[joint];
    // Tightened again meanwhile, on another tablet: what was looked at is no longer there.
    if (held?.tightened?.entry !== tightened) return state;
    return { ...state, joints: { ...state.joints, [joint]: { ...held, confirmed: mark } } };
  },
  'measure-taken': takeMeasure,
  'point-looked-at': (state, { point, verdict, note }, mark) => ({
    ...state,
    points: { ...state.points, [point]: { ...mark, verdict, note, stale: false } },
  }),
  'finding-raised': (state, { finding, at, severity, text, photos }, mark) => ({
    ...state,
    findings: [...state.findings, { id: finding, at, severity, text, photos, raised: mark }],
  }),
  'finding-closed': (state, { finding, how }, mark) => closeFinding(state, finding, how, mark),
  'finding-allowed': (state, { finding, reason }, mark) =>
    withFinding(state, finding, (found) => ({ ...found, allowed: { ...mark, reason } })),
  'job-held': (state, { for: reason, note }, mark) => ({
    ...state,
    hold: { ...mark, for: reason, note },
  }),
  'job-resumed': (state) => ({ ...state, hold: undefined }),
  signed: (state, { kind: _, v: __, ...signature }, mark) => ({
    ...(signature.meaning === 'built' ? withBuilder(state, mark) : state),
    // Rework on another tablet that the signer had not seen: the signature does not cover it.
    signatures: [
      ...state.signatures,
      { ...signature, ...mark, stale: signature.meaning !== 'received' && hasRework(state) },
    ],
  }),
  'sent-back': (state, { steps, points, reason }, mark) => ({
    ...disturb(state, { steps, points }, { ...mark, from: steps[0] ?? points[0] ?? '', reason }),
    sentBack: [...state.sentBack, { ...mark, steps, points, reason }],
  }),
  'handed-over': (state, { kind: _, v: __, ...handedOver }, mark) => ({
    ...state,
    handedOver: { ...mark, ...handedOver },
  }),
  'record-amended': (state, { text }, mark) => ({
    ...state,
    amendments: [...state.amendments, { ...mark, text }],
  }),
};

function withStep(state: JobState, step: string, mark: StepMark): JobState {
  return { ...state, steps: { ...state.steps, [step]: mark } };
}

function withStepDone(state: JobState, step: string, mark: Mark): JobState {
  const { done = [], disturbed } = state.steps[step] ?? {};
  return withBuilder(
    withStep(state, step, {
      standing: 'done',
      done: [...done, mark],
      ...(disturbed && { disturbed }),
    }),
    mark,
  );
}

function hasRework({ steps, points }: JobState): boolean {
  return (
    Object.values(steps).some(({ standing }) => standing !== 'done') ||
    Object.values(points).some(({ stale }) => stale)
  );
}

/** Only work before the built signature makes a builder; what the second checker does at the bike does not. */
function withBuilder(state: JobState, { by }: Mark): JobState {
  return state.builders.includes(by) ? state : { ...state, builders: [...state.builders, by] };
}

function withFinding(state: JobState, id: string, change: (finding: Finding) => Finding): JobState {
  return {
    ...state,
    findings: state.findings.map((finding) => (finding.id === id ? change(finding) : finding)),
  };
}

/** What was put right at a point is looked at again, unless it was only something to tell the customer. */
function closeFinding(state: JobState, id: string, how: string, mark: Mark): JobState {
  const closed = withFinding(state, id, (finding) => ({ ...finding, closed: { ...mark, how } }));
  const finding = state.findings.find((candidate) => candidate.id === id);
  if (finding?.at === undefined || finding.severity === 'tell-customer') return closed;
  if (stepById(state, finding.at) ?? stepOfJoint(state, finding.at)) return closed;
  return disturb(
    closed,
    { steps: [], points: [finding.at] },
    { ...mark, from: finding.at, reason: finding.text },
  );
}

/** A value outside its limits, found at a step that counted as done, reopens it: the result no longer holds. */
function takeMeasure(
  state: JobState,
  { at, measure, value, unit, judged }: EventOf<'measure-taken'>,
  mark: Mark,
): JobState {
  const isWork =
    stepById(state, at) !== undefined && standingSignature(state, 'built') === undefined;
  const key = `${at}.${measure}`;
  // Taken anew it comes last: the keys tell in which order values were taken.
  const { [key]: _, ...others } = state.measures;
  const measured = {
    ...(isWork ? withBuilder(state, mark) : state),
    measures: { ...others, [key]: { ...mark, value, unit, judged, stale: false } },
  };
  if (judged !== 'outside' || state.steps[at]?.standing !== 'done') return measured;
  const reason = `${value} ${unit}`;
  return disturb(measured, { steps: [at], points: [] }, { ...mark, from: at, reason });
}
