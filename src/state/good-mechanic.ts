/** A good mechanic: works a whole plan off through the real commands, as the demo and the journeys need it. */

import { assert } from '../engine/base';
import type { Bike } from '../engine/bike';
import type { RoutePoint } from '../engine/inspection';
import {
  type Asked,
  type AskedOf,
  type JobState,
  missingMeasures,
  nextPass,
  openSteps,
  pointsOf,
  standingOfStep,
  stepById,
} from '../engine/job';
import type { PlanMeasure, PlanStep } from '../engine/plan';
import { type Figure, rankWrenches, type Wrench } from '../engine/torque';
import { parseTorqueMarking } from '../engine/units';
import type { Storage } from '../storage/contract';
import { loadJob } from './load-job';
import type { Actor, Perform } from './perform';

export interface Bench {
  readonly storage: Pick<Storage, 'log'>;
  readonly perform: Perform;
  readonly person: Actor;
  readonly wrenches: readonly Wrench[];
  /** What stands on the part of this joint, where the figure book has nothing. */
  readonly printedOn?: (joint: string, bike: Pick<Bike, 'make' | 'model'>) => string | undefined;
  readonly today: () => string;
  /** Time goes by, in minutes. */
  readonly spend?: (minutes: number) => void;
}

export interface Build {
  /** Parts that are not in the box. */
  readonly missing?: readonly string[];
  /** Stops after so many steps; without it the whole plan is built. */
  readonly steps?: number;
}

/** Checks the contents and builds, step by step in the order of the plan. */
export async function build(bench: Bench, job: string, how: Build = {}): Promise<JobState> {
  let state = await checkContents(bench, job, how.missing ?? []);
  for (let done = 0; done < (how.steps ?? Number.POSITIVE_INFINITY); done += 1) {
    const [step] = openSteps(state);
    if (step === undefined) break;
    state = await doStep(bench, job, state, step);
  }
  return state;
}

/** Looks at every point that is not settled, and finds all of them good. */
export async function walk(bench: Bench, job: string): Promise<JobState> {
  let state = await stateOf(bench, job);
  for (const point of pointsOf(state)) {
    if (state.points[point.id]?.stale === false) continue;
    bench.spend?.(0.5);
    state = await does(bench, job, lookedAt(point));
  }
  return state;
}

/** Contents, every step, and the walk: everything up to the signature. */
export async function workThrough(bench: Bench, job: string): Promise<JobState> {
  await build(bench, job);
  return walk(bench, job);
}

/** Does what must not be refused. */
export async function does(bench: Bench, job: string, asked: Asked): Promise<JobState> {
  const done = await bench.perform(job, asked, bench.person);
  assert(done.ok, `${asked.kind} was refused: ${done.ok ? '' : JSON.stringify(done.refusal)}`);
  return done.value.state;
}

async function stateOf({ storage }: Bench, job: string): Promise<JobState> {
  const loaded = await loadJob(storage, job);
  assert(loaded !== undefined, `there is no job ${job}`);
  return loaded.state;
}

async function checkContents(
  bench: Bench,
  job: string,
  missing: readonly string[],
): Promise<JobState> {
  const state = await stateOf(bench, job);
  const parts = (state.plan?.contents ?? [])
    .filter(({ id }) => state.contents[id] === undefined)
    .map(({ id }) => ({ part: id, state: missing.includes(id) ? 'missing' : 'present' }) as const);
  if (parts.length === 0) return state;
  bench.spend?.(4);
  return does(bench, job, { kind: 'check-contents', parts });
}

async function doStep(
  bench: Bench,
  job: string,
  state: JobState,
  step: PlanStep,
): Promise<JobState> {
  bench.spend?.(step.effort[1]);
  if (step.joint !== undefined) return tighten(bench, job, state, step);
  const measures = Object.fromEntries(
    missingMeasures(state, step).flatMap((id) => {
      const measure = step.measures.find((candidate) => candidate.id === id);
      return measure === undefined ? [] : [[id, goodValue(measure)]];
    }),
  );
  return does(bench, job, { kind: 'do-step', step: step.id, measures });
}

async function tighten(
  bench: Bench,
  job: string,
  before: JobState,
  step: PlanStep,
): Promise<JobState> {
  let state = before;
  for (const measure of step.measures) {
    if (!missingMeasures(state, step).includes(measure.id)) continue;
    const value = goodValue(measure);
    state = await does(bench, job, {
      kind: 'take-measure',
      at: step.id,
      measure: measure.id,
      value,
    });
  }
  while (standingOfStep(state, step.id) !== 'done') {
    state = await makeNextPass(bench, job, state, stepById(state, step.id) ?? step);
  }
  return state;
}

async function makeNextPass(
  bench: Bench,
  job: string,
  state: JobState,
  step: PlanStep,
): Promise<JobState> {
  const next = nextPass(state, step);
  if (!next.ok) {
    assert(next.refusal.code === 'figure-missing', `no pass for ${step.id}`);
    const figure = figureRead(bench, state, step);
    return does(bench, job, { kind: 'enter-figure', joint: next.refusal.joint, figure });
  }
  const { figure, pass } = next.value;
  const [best] = rankWrenches(figure, bench.wrenches, bench.today());
  assert(best?.plan !== undefined, `no wrench on the board is fit for ${step.id}`);
  return does(bench, job, {
    kind: 'make-pass',
    step: step.id,
    pass: pass.pass,
    wrench: best.wrench,
  });
}

/** What is printed on the part; where nothing is, the usual range, under the mechanic's own name. */
function figureRead({ printedOn, person }: Bench, { bike }: JobState, step: PlanStep): Figure {
  const printed = bike && printedOn?.(step.joint?.id ?? '', bike);
  if (printed !== undefined) {
    const read = parseTorqueMarking(printed);
    assert(read.ok && read.value.figure !== undefined, `${printed} says nothing`);
    return { ...read.value.figure, source: { kind: 'part', printed } };
  }
  assert(step.joint !== undefined, `${step.id} has no joint`);
  return { ...step.joint.usual, source: { kind: 'usual', acceptedBy: person.id } } as Figure; // the catalogue's own range
}

export function lookedAt(point: RoutePoint): AskedOf<'look-at-point'> {
  const { id, measure } = point;
  const value = measure && goodValue(measure);
  return {
    kind: 'look-at-point',
    point: id,
    verdict: 'good',
    ...(value !== undefined && { value }),
  };
}

/** Where to aim; otherwise well inside the limits. */
function goodValue({ suggested, limit }: PlanMeasure): number {
  const { min, max } = limit;
  if (suggested !== undefined) return suggested;
  if (min !== undefined && max !== undefined) return (min + max) / 2;
  if (max !== undefined) return max / 2;
  return (min ?? 1) * 1.25;
}
