/** The catalogue's plans over the whole space of bikes: whatever the description allows is planned, and soundly. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { topologicalOrder } from '../../../src/engine/base';
import { type Bike, contradictionsIn, factsOf } from '../../../src/engine/bike';
import {
  type Catalogue,
  planFaults,
  predecessorsOf,
  questionsAsked,
  resolvePlan,
  unorderedPlan,
} from '../../../src/engine/plan';
import { words } from '../../../src/words';
import { bikeFor, bikeSpace, parameters, spaceOf } from '../../support/bike-space';
import { type Covering, coveringArray, isRuledOut, rowByDice } from '../../support/covering-array';
import { seedCatalogue, seedPoints } from '../../support/seed-catalogue';
import { misplacedIn, recheckFaultsIn, wrongHandsIn } from '../../support/sound-plans';

const catalogue = seedCatalogue();
const points = seedPoints();

/** Refusals that are right: a tyre and a rim that do not go together. */
const rightlyRefused: readonly string[] = ['tyre-window-empty', 'tyre-narrower-than-rim'];

/** A plan in any order that works: what it holds does not hang on which. */
function anyOrder(bike: Bike, from: Catalogue): ReturnType<typeof resolvePlan> {
  const plan = unorderedPlan(bike, from);
  if (!plan.ok) return plan;
  const order = topologicalOrder(predecessorsOf(plan.value.steps));
  if (!order.ok) return { ok: false, refusal: { code: 'plan-cycle', cycle: order.refusal.cycle } };
  const byId = new Map(plan.value.steps.map((step) => [step.id, step]));
  return {
    ok: true,
    value: { ...plan.value, steps: order.value.flatMap((id) => byId.get(id) ?? []) },
  };
}

/** Everything wrong with the plan of one bike, each fault in one line. */
function faultsWith(choice: readonly number[], resolve: typeof resolvePlan): readonly string[] {
  const bike = bikeFor(choice);
  const resolved = resolve(bike, catalogue);
  if (!resolved.ok) {
    const { refusal } = resolved;
    const features = refusal.code === 'bike-outside-catalogue' ? refusal.features : [];
    const named = features.map(({ question, answer }) => `${question}=${String(answer)}`).join(' ');
    const isRight = rightlyRefused.includes(refusal.code);
    const sentence = words.refusal({ ...refusal });
    const isSaid = sentence.length > 20 && !/undefined|\[object|could not be done/.test(sentence);
    return isRight && isSaid ? [] : [`refused: ${refusal.code} ${named}: ${sentence}`];
  }
  const plan = resolved.value;
  const facts = factsOf(bike);
  const ids = new Set(plan.steps.map(({ id }) => id));
  return [
    ...planFaults(bike, plan, catalogue, points).map((fault) => Object.values(fault).join(' ')),
    ...plan.steps.flatMap(({ id, reliesOn }) =>
      reliesOn.filter((other) => !ids.has(other)).map((other) => `${id} relies on no ${other}`),
    ),
    ...(topologicalOrder(predecessorsOf(plan.steps)).ok ? [] : ['a circle']),
    ...misplacedIn(plan, facts),
    ...wrongHandsIn(plan),
    ...recheckFaultsIn(plan),
  ];
}

/** Each fault once, with how many bikes have it and one of them. */
function tallied(rows: Covering['rows'], resolve: typeof resolvePlan): readonly string[] {
  const found = new Map<string, { count: number; choice: readonly number[] }>();
  for (const choice of rows)
    for (const fault of faultsWith(choice, resolve)) {
      const known = found.get(fault);
      found.set(fault, { count: (known?.count ?? 0) + 1, choice: known?.choice ?? choice });
    }
  return [...found].map(
    ([fault, { count, choice }]) =>
      `${fault} (${count} bikes, one: ${JSON.stringify(bikeFor(choice))})`,
  );
}

describe('every pair of features', () => {
  const { rows, unreached } = coveringArray(bikeSpace, 2, 7);

  test('[P18] stands in some bike, but for those that no bike has together', () => {
    expect(rows.length).toBeGreaterThan(100);
    expect(unreached.filter((pair) => !isRuledOut(bikeSpace, pair))).toEqual([]);
    for (const row of rows) expect(contradictionsIn(bikeFor(row))).toEqual([]);
  });

  test('[P18] gives a sound plan, or a refusal that a person understands', () => {
    expect(tallied(rows, resolvePlan)).toEqual([]);
  }, 60_000);
});

describe('every triple of the features that the catalogue tells apart', () => {
  const asked = new Set(
    [
      ...catalogue.steps.map(({ when }) => when),
      ...catalogue.parts.map(({ when }) => when),
      ...catalogue.joints.flatMap(({ variants }) => variants.map(({ when }) => when)),
      ...points.map(({ when }) => when),
    ].flatMap(questionsAsked),
  );
  const isAsked = ({ question }: (typeof parameters)[number]) =>
    asked.has(question.split(':')[0] ?? question);

  test('[P18] gives a sound plan, or a refusal that a person understands', () => {
    const questions = new Set(parameters.filter(isAsked).map(({ question }) => question));
    const { rows } = coveringArray(spaceOf(questions), 3, 11);
    expect(rows.length).toBeGreaterThan(800);
    expect(tallied(rows, anyOrder)).toEqual([]);
  }, 240_000);
});

describe('any bike', () => {
  test('[P18] gives a sound plan, or a refusal that a person understands', () => {
    fc.assert(
      fc.property(fc.nat(), (dice) => {
        const choice = rowByDice(bikeSpace, dice);
        fc.pre(choice !== undefined);
        expect(faultsWith(choice, resolvePlan)).toEqual([]);
      }),
      { seed: 2510, numRuns: 100 },
    );
  }, 120_000);
});
