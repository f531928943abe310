import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { factsOf } from '../../../src/engine/bike';
import { holds, type Plan, planSchema, resolvePlan } from '../../../src/engine/plan';
import { bikeFrom, mountainBike, townBike } from '../../support/bikes';
import { catalogueOf } from '../../support/catalogues';

function planOf(bike: ReturnType<typeof bikeFrom>, rows: Parameters<typeof catalogueOf>[0]): Plan {
  const plan = resolvePlan(bike, catalogueOf(rows));
  if (!plan.ok) throw new Error(`a plan was expected, not ${plan.refusal.code}`);
  return plan.value;
}

const onlyQuill = { ask: 'steering.stem', is: 'quill' };
const onlyThreadless = { ask: 'steering.stem', is: 'threadless' };
const mountain = bikeFrom(mountainBike);
const town = bikeFrom(townBike);

const steering = {
  steps: [
    { id: 'wedge', when: onlyQuill, joint: 'wedge' },
    { id: 'clamp', when: onlyThreadless, joint: 'clamp' },
    {
      id: 'align',
      reliesOn: ['wedge', 'clamp'],
      after: ['wedge', 'clamp'],
      parts: ['cap', 'shim'],
    },
  ],
  joints: [{ id: 'wedge' }, { id: 'clamp' }],
  parts: [
    { id: 'cap', when: onlyThreadless },
    { id: 'shim', when: onlyQuill, kind: 'packing', keep: true },
    { id: 'manual', kind: 'paper' },
  ],
};

describe('what the bike has', () => {
  test.each<[name: string, bike: ReturnType<typeof bikeFrom>, steps: string[], contents: string[]]>(
    [
      ['a mountain bike', mountain, ['clamp', 'align'], ['cap', 'manual']],
      ['a town bike', town, ['wedge', 'align'], ['shim', 'manual']],
    ],
  )('[P2] %s gets its own steps, contents and references', (_, bike, steps, contents) => {
    const plan = planOf(bike, steering);
    expect(plan.steps.map((step) => step.id)).toEqual(steps);
    expect(plan.contents.map((part) => part.id)).toEqual(contents);
    expect(plan.steps.at(-1)).toMatchObject({
      after: steps.slice(0, 1),
      reliesOn: steps.slice(0, 1),
      parts: contents.slice(0, 1),
    });
    expect(plan.steps[0]?.joint?.id).toBe(steps[0]);
  });

  test('[P2] the plan says which catalogue it came from, and asks nothing any more', () => {
    const plan = planOf(mountain, steering);
    expect(plan.catalogue).toBe('for a test');
    expect(JSON.stringify(plan)).not.toMatch(/"(when|variants|ask)":/);
  });

  test('[P2] a plan parses to itself through its schema', () => {
    const plan = planOf(town, steering);
    expect(planSchema.parse(JSON.parse(JSON.stringify(plan)))).toEqual(plan);
  });

  test('[P2] no step and no part for what the bike lacks, whatever the conditions', () => {
    const condition = fc.oneof(
      fc.constantFrom(
        onlyQuill,
        onlyThreadless,
        { not: onlyQuill },
        { ask: 'extras', has: 'rack' },
      ),
      fc.record({ ask: fc.constant('extras'), has: fc.constantFrom('basket', 'bell', 'stand') }),
      fc.record({ ask: fc.constant('front.discMount'), known: fc.boolean() }),
    );
    const rows = fc.array(fc.option(condition, { nil: undefined }), { maxLength: 12 });
    fc.assert(
      fc.property(rows, rows, fc.constantFrom(mountain, town), (stepRows, partRows, bike) => {
        const named = (prefix: string, list: typeof stepRows) =>
          list.map((when, index) => ({ id: `${prefix}${index}`, ...(when && { when }) }));
        // A step that builds both stems keeps every bike inside the catalogue.
        const both = { id: 'both', when: { any: [onlyQuill, onlyThreadless] } };
        const steps = [both, ...named('s', stepRows)];
        const parts = named('p', partRows);
        const plan = planOf(bike, { steps, parts });
        const facts = factsOf(bike);
        const wanted = (list: readonly { id: string; when?: Parameters<typeof holds>[0] }[]) =>
          list.filter((one) => holds(one.when, facts)).map((one) => one.id);
        expect(plan.steps.map((step) => step.id)).toEqual(wanted(steps));
        expect(plan.contents.map((part) => part.id)).toEqual(wanted(parts));
      }),
      { seed: 2409 },
    );
  });
});

describe('joint variants', () => {
  const withVariants = (variants: object[]) => ({
    steps: [{ id: 'bolts', joint: 'faceplate' }],
    joints: [{ id: 'faceplate', bolts: 4, layout: 'rectangle', variants }],
  });
  const jointOn = (bike: typeof mountain, variants: object[]) =>
    planOf(bike, withVariants(variants)).steps[0]?.joint;
  const twoBolts = { when: { ask: 'steering.faceplateBolts', is: 1 }, bolts: 1, layout: 'line' };

  test('[P3] no variant holds: the joint as it stands', () => {
    expect(jointOn(mountain, [twoBolts])).toMatchObject({
      bolts: 4,
      layout: 'rectangle',
      thread: 'M5',
    });
  });

  test('[P3] a variant replaces what it names and leaves the rest', () => {
    expect(jointOn(town, [twoBolts])).toMatchObject({
      id: 'faceplate',
      bolts: 1,
      layout: 'line',
      thread: 'M5',
      usual: { min: 4, max: 6 },
    });
  });

  test('[P3] the first variant that holds wins, and others add nothing', () => {
    const usual = { when: onlyQuill, usual: { min: 15, max: 25 }, thread: 'M8' };
    expect(jointOn(town, [twoBolts, usual])).toMatchObject({
      bolts: 1,
      thread: 'M5',
      usual: { min: 4, max: 6 },
    });
    expect(jointOn(town, [usual, twoBolts])).toMatchObject({
      bolts: 4,
      thread: 'M8',
      usual: { min: 15, max: 25 },
    });
  });

  test('[P3] every field that a variant may name is taken from it', () => {
    const whole = {
      bolts: 2,
      layout: 'pair',
      thread: 'M6',
      bit: '5 mm hex',
      preparation: 'threadlocker',
      preparationNote: 'One drop.',
      usual: { min: 8, max: 12 },
      source: 'another source',
    };
    expect(jointOn(mountain, [{ when: onlyThreadless, ...whole }])).toEqual({
      id: 'faceplate',
      name: 'the faceplate',
      hand: 'right',
      risk: 'A',
      ...whole,
    });
  });
});

describe('limits', () => {
  const measured = {
    steps: [
      {
        id: 'pump',
        measures: [
          {
            id: 'pressure',
            name: 'Front',
            how: 'Read the gauge.',
            unit: 'kPa',
            limit: { rule: 'tyre-window-front' },
          },
        ],
      },
    ],
  };

  test('[P9] a rule becomes numbers with their source', () => {
    const bike = bikeFrom(mountainBike, { front: { tyrePressure: '2–4 bar' } });
    expect(planOf(bike, measured).steps[0]?.measures).toEqual([
      {
        id: 'pressure',
        name: 'Front',
        how: 'Read the gauge.',
        unit: 'kPa',
        limit: { min: 200, max: 400, source: 'printed on the tyre' },
        suggested: 300,
      },
    ]);
  });

  test('[P10] a marking that is not understood refuses the plan', () => {
    const bike = bikeFrom(mountainBike, { front: { tyre: 'round and black' } });
    expect(resolvePlan(bike, catalogueOf(measured))).toMatchObject({
      ok: false,
      refusal: { code: 'tyre-not-understood', wheel: 'front', marking: 'round and black' },
    });
  });
});

describe('what a joint holds together', () => {
  const rows = {
    steps: [
      { id: 'bar', joint: 'bar' },
      { id: 'post', joint: 'post' },
      { id: 'pedal', joint: 'pedal' },
    ],
    joints: [
      { id: 'bar', clamps: ['steering.barMaterial'] },
      { id: 'post', clamps: ['frame.material', 'seat.postMaterial'] },
      { id: 'pedal' },
    ],
  };
  const clampsOn = (bike: ReturnType<typeof bikeFrom>) =>
    planOf(bike, rows).steps.map(({ joint }) => joint?.clamps);

  test('[P30] is what the bike is described to be made of, and nothing where no question answers it', () => {
    const bike = bikeFrom(mountainBike, {
      frame: { material: 'titanium' },
      steering: { barMaterial: 'carbon' },
      seat: { postMaterial: 'unknown' },
    });
    expect(clampsOn(bike)).toEqual([['carbon'], ['titanium', 'unknown'], undefined]);
  });
});

describe('a description that no bike answers to', () => {
  test('[P15] is refused with each pair of features that are at odds', () => {
    const bike = bikeFrom(mountainBike, {
      gears: { drive: 'belt' },
      steering: { stem: 'quill' },
      fork: { steerer: 'carbon' },
    });
    expect(resolvePlan(bike, catalogueOf({ steps: [{ id: 'unpack' }] }))).toEqual({
      ok: false,
      refusal: {
        code: 'features-at-odds',
        contradictions: [
          {
            one: { question: 'gears.drive', answer: 'belt' },
            other: { question: 'gears.kind', answer: 'derailleur' },
          },
          {
            one: { question: 'steering.stem', answer: 'quill' },
            other: { question: 'fork.steerer', answer: 'carbon' },
          },
        ],
      },
    });
  });
});
