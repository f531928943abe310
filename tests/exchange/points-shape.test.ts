/** The inspection points hold together: with the bike's description, with the catalogue, and with each other. */

import { describe, expect, test } from 'vitest';
import { bikeSchema, questions } from '../../src/engine/bike';
import { routeFor } from '../../src/engine/inspection';
import { type Condition, questionsAsked, resolvePlan } from '../../src/engine/plan';
import { demoBikesSchema } from '../../src/exchange/demo.schema';
import { mountainBike, townBike } from '../support/bikes';
import { readDemo } from '../support/demo-files';
import { seedCatalogue, seedPoints } from '../support/seed-catalogue';

const points = seedPoints();
const { bikes } = demoBikesSchema.parse(readDemo('bikes.json'));

describe('each point', () => {
  test('has a name of its own, for itself and for its measure', () => {
    const ids = points.map(({ id }) => id);
    expect(ids).toEqual([...new Set(ids)]);
    const measures = points.flatMap(({ measure }) => measure?.id ?? []);
    // Two sides of one bike are two places of one measure.
    for (const bike of bikes) {
      const onRoute = routeFor(bike, points).flatMap(({ measure, side }) =>
        measure === undefined ? [] : `${measure.id} ${side}`,
      );
      expect(onRoute).toEqual([...new Set(onRoute)]);
    }
    expect(measures.length).toBeGreaterThan(0);
  });

  test('measures what a step of the same measure’s name measures: same unit, same limit', () => {
    const known = new Map<string, object>();
    const places = [
      ...seedCatalogue().steps.flatMap((step) => step.measures),
      ...measuresOf(points),
    ];
    for (const { id, unit, limit } of places) {
      const { source: _, ...bounds } = { source: '', ...limit };
      expect({ unit, ...bounds }, id).toEqual(known.get(id) ?? { unit, ...bounds });
      known.set(id, { unit, ...bounds });
    }
  });

  test.each([
    ['front-pressure'],
    ['rear-pressure'],
    ['front-rim-swing'],
    ['front-rim-swing-rim-brake'],
    ['front-rim-swing-racing'],
    ['rear-rim-swing'],
    ['rear-rim-swing-rim-brake'],
    ['rear-rim-swing-racing'],
    ['seat-post-inside'],
    ['stoker-post-inside'],
    ['quill-inside'],
    ['lever-grip-distance'],
    ['lever-grip-distance-small'],
    ['grip-end-width'],
    ['timing-chain-movement'],
    ['chain-movement'],
    ['toe-room'],
  ])('and the build and the walk both measure %s', (id) => {
    const atSteps = seedCatalogue().steps.flatMap((step) => step.measures);
    expect(atSteps.filter((one) => one.id === id)).toHaveLength(1);
    expect(measuresOf(points).filter((one) => one.id === id).length).toBeGreaterThan(0);
  });

  test('shares no name with a step, because measures and findings name the place where they were taken', () => {
    const steps = new Set(seedCatalogue().steps.map(({ id }) => id));
    expect(points.map(({ id }) => id).filter((id) => steps.has(id))).toEqual([]);
  });

  test('asks only what a bike can answer', () => {
    const asked = points.flatMap(({ when }) => (when === undefined ? [] : questionsAsked(when)));
    expect(asked.filter((question) => !questions.includes(question))).toEqual([]);
  });

  test('asks for answers that the description allows', () => {
    const answers = points.flatMap(({ when }) => (when === undefined ? [] : answersIn(when)));
    expect(answers.length).toBeGreaterThan(20);
    expect(answers.filter(([question, answer]) => !isAllowed(question, answer))).toEqual([]);
  });

  test('relies on steps that the catalogue has', () => {
    const steps = new Set(seedCatalogue().steps.map(({ id }) => id));
    const unknown = points.flatMap(({ id, reliesOn }) =>
      reliesOn.filter((step) => !steps.has(step)).map((step) => `${id} → ${step}`),
    );
    expect(unknown).toEqual([]);
  });

  test('is never called like a step, so that a log cannot mix them up', () => {
    const steps = new Set(seedCatalogue().steps.map(({ id }) => id));
    expect(points.map(({ id }) => id).filter((id) => steps.has(id))).toEqual([]);
  });

  test('is short enough to read at arm’s length, and asks for one thing', () => {
    for (const { look, right, name } of points) {
      expect(name.length).toBeLessThanOrEqual(34);
      expect(look.length).toBeLessThanOrEqual(170);
      expect(right.length).toBeLessThanOrEqual(240);
      expect(look.match(/\.(?=\s|$)/g)).toHaveLength(1);
    }
  });

  test('has a limit with a source, or a rule that works one out, wherever it measures', () => {
    for (const { measure } of points) {
      if (measure === undefined || 'rule' in measure.limit) continue;
      expect(measure.limit.min ?? measure.limit.max).toBeDefined();
    }
  });
});

describe('the whole walk', () => {
  test('looks at every joint whose failure can hurt', () => {
    const { steps, joints } = seedCatalogue();
    const looked = new Set(points.flatMap(({ reliesOn }) => reliesOn));
    const dangerous = joints.filter(({ risk }) => risk === 'A').map(({ id }) => id);
    const missed = dangerous.filter(
      (joint) => !steps.some((step) => step.joint === joint && looked.has(step.id)),
    );
    expect(dangerous.length).toBeGreaterThan(10);
    expect(missed).toEqual([]);
  });

  test.each(bikes.map((bike) => [`${bike.make} ${bike.model} ${bike.frameNumber}`, bike] as const))(
    'of the %s looks at every dangerous joint of its own plan',
    (_, bike) => {
      const plan = resolvePlan(bike, seedCatalogue());
      if (!plan.ok) throw new Error(JSON.stringify(plan.refusal));
      const looked = new Set(routeFor(bike, points).flatMap(({ reliesOn }) => reliesOn));
      const missed = plan.value.steps.filter(
        ({ id, joint }) => joint?.risk === 'A' && !looked.has(id),
      );
      expect(missed.map(({ id }) => id)).toEqual([]);
    },
  );

  test.each([
    ['mountain', mountainBike],
    ['town', townBike],
  ])('of a bare %s bike has between 25 and 36 points', (_, description) => {
    const route = routeFor(bikeSchema.parse(description), points);
    expect(route.length).toBeGreaterThanOrEqual(25);
    expect(route.length).toBeLessThanOrEqual(36);
  });

  test('asks each end of every demo bike whether its wheel is held and its brake bites', () => {
    for (const bike of bikes) {
      const route = routeFor(bike, points).map(({ id }) => id);
      for (const end of ['front', 'rear']) {
        expect(route.filter((id) => id.startsWith(`${end}-wheel-`))).toHaveLength(1);
        expect(route.filter((id) => id.startsWith(`${end}-brake-`))).toHaveLength(1);
        expect(route.filter((id) => id.startsWith(`${end}-rim`))).toHaveLength(1);
      }
      expect(route.filter((id) => id.includes('tyre-room'))).toHaveLength(1);
    }
  });
});

function answersIn(condition: Condition): readonly (readonly [string, unknown])[] {
  if ('all' in condition) return condition.all.flatMap(answersIn);
  if ('any' in condition) return condition.any.flatMap(answersIn);
  if ('not' in condition) return answersIn(condition.not);
  if ('has' in condition) return [[condition.ask, [condition.has]]];
  if ('is' in condition) return [condition.is].flat().map((answer) => [condition.ask, answer]);
  return [];
}

/** A description that gives this answer to this question still parses, even where this bike lacks the part. */
function isAllowed(question: string, answer: unknown): boolean {
  const bike = structuredClone(bikeSchema.parse(townBike)) as Record<string, unknown>;
  const path = question.split('.');
  const last = path.pop() ?? '';
  const part = path.reduce((inner, name) => inner[name] as Record<string, unknown>, bike);
  part[last] = answer;
  const parsed = bikeSchema.safeParse(bike);
  return parsed.success && questions.includes(question);
}

function measuresOf(route: ReturnType<typeof seedPoints>) {
  return route.flatMap(({ measure }) => measure ?? []);
}
