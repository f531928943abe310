/** A made-up plan of eight steps and four points, and somebody who works any plan off. */

import { pointSchema } from '../../src/engine/inspection';
import {
  type Asked,
  freezePlan,
  type JobPlan,
  missingMeasures,
  nextPass,
  openSteps,
  pointsOf,
  standingOfStep,
  stepById,
  topicsToTell,
  uncheckedContents,
} from '../../src/engine/job';
import type { PlanMeasure, PlanStep } from '../../src/engine/plan';
import { type Figure, figureSchema, planSetPoint, type Wrench } from '../../src/engine/torque';
import { bikeFrom, mountainBike, townBike } from './bikes';
import { catalogueOf } from './catalogues';
import {
  customer,
  doing,
  imre,
  opened,
  type Played,
  petra,
  signing,
  type Who,
} from './given-when-then';
import { marketSeeds } from './market-seeds';
import { seedCatalogue, seedPoints } from './seed-catalogue';
import { TODAY, wrench } from './wrenches';

export const britain = marketSeeds.find(({ id }) => id === 'gb') ?? missing('gb');

const insertion = {
  id: 'insertion',
  name: 'how deep the post sits',
  how: 'Measure it.',
  unit: 'mm',
  limit: { min: 63, source: 'made up for a test' },
};

export const smallCatalogue = catalogueOf({
  steps: [
    { id: 'clamp', zone: 'whole-bike' },
    { id: 'wheel', zone: 'front-wheel', after: ['clamp'], parts: ['front-wheel'] },
    { id: 'axle', zone: 'front-wheel', reliesOn: ['wheel'], joint: 'front-axle' },
    { id: 'rub', zone: 'front-wheel', reliesOn: ['axle'] },
    {
      id: 'front-tyre-pressure',
      zone: 'front-wheel',
      after: ['wheel'],
      measures: [
        {
          id: 'pressure',
          name: 'pressure',
          how: 'Read the gauge.',
          unit: 'kPa',
          limit: { min: 200, max: 400, source: 'made up for a test' },
        },
      ],
    },
    { id: 'stem', zone: 'cockpit', after: ['clamp'], joint: 'stem-bolts' },
    { id: 'levers', zone: 'cockpit', reliesOn: ['stem'], joint: 'lever-bolts' },
    { id: 'post', zone: 'seat', after: ['clamp'], parts: ['seat-post'], measures: [insertion] },
  ],
  joints: [
    { id: 'front-axle', usual: { min: 8, max: 12 } },
    { id: 'stem-bolts', bolts: 4, layout: 'rectangle', usual: { min: 5, max: 6 } },
    { id: 'lever-bolts', bolts: 2, layout: 'pair', risk: 'C' },
  ],
  parts: [
    { id: 'front-wheel' },
    { id: 'seat-post' },
    { id: 'manual', kind: 'paper', keep: true },
    { id: 'film', kind: 'packing' },
  ],
});

const look = { zone: 'frame', look: 'Look at it.', right: 'It is right.' };

export const smallPoints = [
  { id: 'wheel-straight', place: 'front-rim', severity: 'stop-ride', reliesOn: ['wheel', 'axle'] },
  { id: 'stem-holds', place: 'stem', severity: 'stop-ride', reliesOn: ['stem'] },
  { id: 'paint', place: 'down-tube', severity: 'tell-customer' },
  {
    id: 'post-depth',
    place: 'seat-post',
    severity: 'before-hand-over',
    reliesOn: ['post'],
    measure: insertion,
  },
].map((row) => pointSchema.parse({ name: `the ${row.id}`, ...look, ...row }));

export const smallPlan = frozen({ catalogue: smallCatalogue, points: smallPoints });

/** The plan of the real catalogue, for the mountain bike or the town bike. */
export function seedPlan(bike: 'mountain' | 'town'): JobPlan {
  return frozen({
    bike: bikeFrom(bike === 'mountain' ? mountainBike : townBike),
    catalogue: seedCatalogue(),
    points: seedPoints(),
  });
}

export function frozen(changes: Partial<Parameters<typeof freezePlan>[0]>): JobPlan {
  const plan = freezePlan({
    bike: bikeFrom(mountainBike),
    catalogue: smallCatalogue,
    points: smallPoints,
    market: britain,
    figures: {},
    ...changes,
  });
  if (!plan.ok) throw new Error(JSON.stringify(plan.refusal));
  return plan.value;
}

export const board: readonly Wrench[] = [
  wrench({ id: 'small', increment: 0.1 }),
  wrench({ id: 'tiny', lowest: 0.3, highest: 5, increment: 0.1 }),
  wrench({ id: 'large', lowest: 10, highest: 100, increment: 1 }),
];

export function printedFigure(min: number, max: number): Figure {
  return figureSchema.parse({ min, max, source: { kind: 'part', printed: `${min}–${max} N·m` } });
}

export function contentsChecked(played: Played, who: Who = imre): Played {
  const parts = uncheckedContents(played.state).map(
    (part) => ({ part, state: 'present' }) as const,
  );
  return parts.length === 0 ? played : doing(played, { kind: 'check-contents', parts }, who);
}

/** The next thing to ask for so that this step comes nearer to being done. */
export function nextTowards({ state }: Played, id: string): Asked {
  const step = stepById(state, id) ?? missing(id);
  const [measure] = missingMeasures(state, step).flatMap(
    (wanted) => step.measures.find((one) => one.id === wanted) ?? [],
  );
  if (measure !== undefined)
    return { kind: 'take-measure', at: id, measure: measure.id, value: goodValue(measure) };
  return step.joint === undefined ? { kind: 'do-step', step: id } : nextAtJoint({ state }, step);
}

function nextAtJoint({ state }: Pick<Played, 'state'>, step: PlanStep): Asked {
  const next = nextPass(state, step);
  if (next.ok) {
    const { figure, pass } = next.value;
    const fit = board.find((one) => planSetPoint({ figure, wrench: one, on: TODAY }).ok);
    return {
      kind: 'make-pass',
      step: step.id,
      pass: pass.pass,
      wrench: fit ?? missing(`a wrench for ${step.id}`),
    };
  }
  const { id, usual } = step.joint ?? missing(`the joint of ${step.id}`);
  return { kind: 'enter-figure', joint: id, figure: printedFigure(usual.min, usual.max) };
}

export function stepDone(before: Played, id: string, who: Who = imre): Played {
  let played = before;
  while (standingOfStep(played.state, id) !== 'done')
    played = doing(played, nextTowards(played, id), who);
  return played;
}

export function stepsDone(before: Played, ids: readonly string[], who: Who = imre): Played {
  return ids.reduce((played, id) => stepDone(played, id, who), before);
}

/** Contents and every step that can be done, in the order of the plan. */
export function built(before: Played, who: Who = imre): Played {
  let played = contentsChecked(before, who);
  for (let [step] = openSteps(played.state); step; [step] = openSteps(played.state))
    played = stepDone(played, step.id, who);
  return played;
}

/** Every point that is not settled is looked at and found good. */
export function walked(before: Played, who: Who = imre): Played {
  return pointsOf(before.state)
    .filter(({ id }) => before.state.points[id]?.stale !== false)
    .reduce((played, { id, measure }) => {
      const value = measure && { value: goodValue(measure) };
      return doing(played, { kind: 'look-at-point', point: id, verdict: 'good', ...value }, who);
    }, before);
}

export function signedBuilt(played: Played, who: Who = imre): Played {
  return doing(played, { kind: 'sign-built', signing: signing(played, 'built') }, who);
}

export function signedChecked(played: Played, who: Who = petra): Played {
  return doing(played, { kind: 'sign-checked', signing: signing(played, 'checked') }, who);
}

export function handOver(played: Played): Extract<Asked, { kind: 'hand-over' }> {
  return {
    kind: 'hand-over',
    customer,
    told: topicsToTell(played.state),
    firstCheck: '2026-04-13',
    signing: signing(played, 'received'),
  };
}

/** Worked off, walked round and signed by the mechanic. */
export function builtAndSigned(plan: JobPlan = smallPlan): Played {
  return signedBuilt(walked(built(opened(plan))));
}

export function handedOver(plan: JobPlan = smallPlan): Played {
  const ready = signedChecked(builtAndSigned(plan));
  return doing(ready, handOver(ready), petra);
}

/** Where to aim; otherwise well inside the limits. */
function goodValue({ suggested, limit: { min, max } }: PlanMeasure): number {
  if (suggested !== undefined) return suggested;
  if (min !== undefined && max !== undefined) return (min + max) / 2;
  return max === undefined ? (min ?? 1) * 1.25 : max / 2;
}

function missing(what: string): never {
  throw new Error(`there is no ${what}`);
}
