/** Commands at the stand: steps, figures, passes, measures. */

import { ok, type Result, refuse } from '../base';
import type { PlanStep } from '../plan';
import { permissibleDeviation, planSetPoint, usableFigure } from '../torque';
import type { AskedOf, Command } from './command';
import type { Deciders } from './decider';
import type { JobEvent, PassMade } from './event.schema';
import { measureEvent, missingMeasures } from './measuring';
import { judgeReadings } from './pass-readings';
import type { JobRefusal } from './refusal';
import { isLearner, unconfirmedJoints } from './second-eyes';
import type { JobState } from './state';
import { standingOfStep, stepById, stepOfJoint } from './status';
import { nextPass, withFigure } from './tightening';

type BuildCommands =
  | 'do-step'
  | 'reopen-step'
  | 'set-step-aside'
  | 'enter-figure'
  | 'make-pass'
  | 'take-measure'
  | 'confirm-joint';

type Answer = Result<readonly JobEvent[], JobRefusal>;

export const buildDeciders: Deciders<BuildCommands> = {
  'do-step': ({ step: id, measures = {} }, state) => {
    const step = stepById(state, id);
    if (step === undefined) return refuse({ code: 'step-unknown', step: id });
    if (standingOfStep(state, id) === 'done')
      return refuse({ code: 'step-already-done', step: id });
    if (step.joint !== undefined)
      return refuse({ code: 'step-needs-tightening', step: id, joint: step.joint.id });
    return finishStep(state, step, measures);
  },

  'reopen-step': ({ step: id, reason }, state) => {
    if (stepById(state, id) === undefined) return refuse({ code: 'step-unknown', step: id });
    const standing = standingOfStep(state, id);
    if (standing !== 'done' && standing !== 'stale')
      return refuse({ code: 'step-not-done', step: id });
    if (reason.trim() === '') return refuse({ code: 'reason-missing' });
    return ok([{ kind: 'step-reopened', v: 1, step: id, reason: reason.trim() }]);
  },

  'set-step-aside': ({ step: id, reason }, state) => {
    if (stepById(state, id) === undefined) return refuse({ code: 'step-unknown', step: id });
    if (standingOfStep(state, id) === 'done')
      return refuse({ code: 'step-already-done', step: id });
    if (reason.trim() === '') return refuse({ code: 'reason-missing' });
    return ok([{ kind: 'step-set-aside', v: 1, step: id, reason: reason.trim() }]);
  },

  'enter-figure': enterFigure,

  'make-pass': (command, state) => {
    const step = stepById(state, command.step);
    if (step === undefined) return refuse({ code: 'step-unknown', step: command.step });
    if (standingOfStep(state, step.id) === 'done')
      return refuse({ code: 'step-already-done', step: step.id });
    if (command.figure === undefined || step.joint === undefined)
      return makePass(command, state, step);
    const { figure, stamp } = command;
    const joint = step.joint.id;
    const entered = enterFigure({ joint, figure, stamp }, state);
    if (!entered.ok) return entered;
    const made = makePass(command, withFigure(state, joint, figure), step);
    return made.ok ? ok([...entered.value, ...made.value]) : made;
  },

  'confirm-joint': ({ joint }, state) => {
    const tightened = state.joints[joint]?.tightened;
    if (tightened === undefined || !unconfirmedJoints(state).includes(joint))
      return refuse({ code: 'joint-needs-no-second-eyes', joint });
    return ok([{ kind: 'joint-confirmed', v: 1, joint, tightened: tightened.entry }]);
  },

  'take-measure': ({ at, measure, value }, state) => {
    const event = measureEvent(state, at, measure, value);
    return event.ok ? ok([event.value]) : event;
  },
};

function enterFigure(
  { joint, figure, stamp }: Pick<Command<'enter-figure'>, 'joint' | 'figure' | 'stamp'>,
  state: JobState,
): Answer {
  const step = stepOfJoint(state, joint);
  if (step === undefined) return refuse({ code: 'joint-unknown', step: joint });
  if (standingOfStep(state, step.id) === 'done')
    return refuse({ code: 'step-already-done', step: step.id });
  if (figure.source.kind === 'usual' && figure.source.acceptedBy !== stamp.by)
    return refuse({ code: 'usual-range-needs-own-name' });
  const usable = usableFigure(figure);
  if (!usable.ok) return usable;
  return ok([{ kind: 'figure-entered', v: 1, joint, figure }]);
}

/** Every measure of a step must lie inside its limits before the step is done; values given now count at once. */
function finishStep(
  state: JobState,
  step: PlanStep,
  values: Readonly<Record<string, number>>,
): Answer {
  const taken: JobEvent[] = [];
  for (const [measure, value] of Object.entries(values)) {
    const event = measureEvent(state, step.id, measure, value);
    if (!event.ok) return event;
    if (event.value.judged === 'outside') return outside(step, measure, value);
    taken.push(event.value);
  }
  const missing = missingMeasures(state, step).filter((id) => !Object.hasOwn(values, id));
  if (missing.length > 0)
    return refuse({ code: 'step-needs-measures', step: step.id, measures: missing });
  return ok([...taken, { kind: 'step-done', v: 1, step: step.id }]);
}

function outside(step: PlanStep, id: string, value: number): Answer {
  const measure = step.measures.find((candidate) => candidate.id === id);
  return refuse({
    code: 'measure-outside-limits',
    measure: measure?.name ?? id,
    value,
    unit: measure?.unit ?? '',
    min: measure?.limit.min,
    max: measure?.limit.max,
  });
}

/** A pass is kept with the wrench and its setting; the last one also keeps where the joint ends, and does the step. */
function makePass(
  {
    pass: asked,
    wrench,
    adapter,
    readings = [],
    stamp,
  }: AskedOf<'make-pass'> & Pick<Command, 'stamp'>,
  state: JobState,
  step: PlanStep,
): Answer {
  const next = nextPass(state, step);
  if (!next.ok) return next;
  const { figure, pass, of } = next.value;
  if (pass.pass !== asked) return refuse({ code: 'pass-out-of-turn', expected: pass.pass, asked });
  const usable = usableFigure(figure);
  if (!usable.ok) return usable;
  const plan = planSetPoint({ figure, wrench, on: stamp.on, ...(adapter && { adapter }) });
  if (!plan.ok) return plan;
  const { setPoint, onScale, jointLow, jointHigh } = plan.value;
  const { id: joint = step.id, bolts = 1 } = step.joint ?? {};
  const read = judgeReadings({ joint, bolts, figure, pass, wrench, adapter, readings });
  if (!read.ok) return read;
  const made: PassMade = {
    joint,
    pass: asked,
    of,
    wrench: {
      id: wrench.id,
      name: wrench.name,
      type: wrench.type,
      class: wrench.class,
      unit: wrench.unit,
      dueOn: wrench.dueOn,
      deviation: permissibleDeviation(wrench),
    },
    adapter: adapter && { ...adapter },
    setPoint,
    onScale,
    ...(read.value.length > 0 && { readings: [...read.value] }),
    ...(isLearner(stamp.roles) && { byLearner: true }),
  };
  if (asked < of) return ok([{ kind: 'pass-made', v: 1, ...made }]);
  const finished = finishStep(state, step, {});
  if (!finished.ok) return finished;
  return ok([
    { kind: 'joint-tightened', v: 1, ...made, figure, jointLow, jointHigh },
    ...finished.value,
  ]);
}
