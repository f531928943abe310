import { describe, expect, test } from 'vitest';
import { type FreezingInput, freezePlan, jobPlanSchema } from '../../../src/engine/job';
import { type Figure, figureSchema } from '../../../src/engine/torque';
import { bikeFrom, mountainBike, townBike } from '../../support/bikes';
import { marketSeeds } from '../../support/market-seeds';
import { britain, frozen, seedPlan, smallCatalogue, smallPoints } from '../../support/small-job';

const figure = (source: Figure['source']) => figureSchema.parse({ min: 5, max: 6, source });

describe('freezing', () => {
  test('[J5] keeps the bike that the plan is for, whole, and survives being written down', () => {
    const plan = seedPlan('mountain');
    expect(plan.bike).toEqual(bikeFrom(mountainBike));
    expect(jobPlanSchema.parse(JSON.parse(JSON.stringify(plan)))).toEqual(plan);
    const ids = (kind: 'mountain' | 'town') => seedPlan(kind).steps.map(({ id }) => id);
    expect(ids('mountain')).toContain('front-disc-rub');
    expect(ids('town')).toContain('quill-wedge');
    expect(ids('town')).not.toContain('front-disc-rub');
  });

  test.each<[source: Figure['source'], kept: boolean]>([
    [{ kind: 'document', reference: 'page 4' }, true],
    [{ kind: 'approved', by: 'sunniva', on: '2026-01-10' }, true],
    [{ kind: 'part', printed: '5–6 N·m' }, false],
    [{ kind: 'usual', acceptedBy: 'imre' }, false],
  ])(
    '[J8, J9] a figure holds for every bike of a model only where it was not read on one: %o',
    (source, kept) => {
      const plan = frozen({ figures: { 'stem-bolts': figure(source), kettle: figure(source) } });
      expect(Object.keys(plan.figures)).toEqual(kept ? ['stem-bolts'] : []);
    },
  );

  test('[J41] an approved figure far from the usual of this very joint is not taken over', () => {
    const approved = { kind: 'approved', by: 'sunniva', on: '2026-01-10' } as const;
    const far = figureSchema.parse({ min: 28, max: 32, source: approved });
    expect(frozen({ figures: { 'stem-bolts': far } }).figures).toEqual({});
    const near = figureSchema.parse({ min: 6, max: 7, source: approved });
    expect(frozen({ figures: { 'stem-bolts': near } }).figures).toEqual({ 'stem-bolts': near });
  });

  // 16 CFR 1512.5 (left hand, rear brake on the right); Pedal Bicycles (Safety) Regulations 2010 (right hand), from memory.
  test.each<[market: string, hand: 'left' | 'right']>([
    ['us', 'left'],
    ['gb', 'right'],
  ])('[J19] the lever that the customer is told of is that of the market: %s', (id, hand) => {
    const market = marketSeeds.find((one) => one.id === id) ?? britain;
    expect(frozen({ market }).frontBrakeLever).toBe(hand);
    const brakeless = bikeFrom(mountainBike, { front: { brake: 'none' } });
    expect(frozen({ market, bike: brakeless }).frontBrakeLever).toBe('none');
  });

  test('[J5] a bike that the catalogue cannot carry gets no plan', () => {
    const input: FreezingInput = {
      bike: bikeFrom(townBike, { front: { tyre: 'round' } }),
      catalogue: {
        ...smallCatalogue,
        steps: smallCatalogue.steps.map((step) => ({
          ...step,
          measures: step.measures.map((one) => ({ ...one, limit: { rule: 'tyre-window-front' } })),
        })),
      },
      points: smallPoints,
      market: britain,
      figures: {},
    };
    const plan = freezePlan(input);
    expect(plan.ok).toBe(false);
    expect(plan).toMatchObject({ refusal: { code: 'tyre-not-understood', marking: 'round' } });
  });
});
