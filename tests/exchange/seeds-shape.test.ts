/** The catalogue's seeds parse, refer only to what is there, ask only what a bike answers, and each fault in them is named. */

import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { conditionFaults } from '../../scripts/seed-conditions';
import { catalogueFrom, seedFaults } from '../../scripts/seed-faults';
import { parseSeed, readSeeds, type Seeds, seedsFolder } from '../../scripts/seed-files';
import { zones } from '../../src/engine/base';
import {
  type Condition,
  jointSchema,
  resolvePlan,
  type Step,
  stepSchema,
} from '../../src/engine/plan';

const { seeds, faults } = readSeeds(seedsFolder);

describe('the seeds on disk', () => {
  test('each file parses with its schema, and no member is misspelt', () => {
    expect(faults).toEqual([]);
  });

  test('nothing in them refers to what is not there, and nothing stands unused', () => {
    expect(seedFaults(seeds)).toEqual([]);
  });

  test('every zone has steps', () => {
    expect(new Set(seeds.steps.map(({ zone }) => zone))).toEqual(new Set(zones));
  });

  test('a title is an instruction without a full stop, and starts with a capital', () => {
    for (const { title } of seeds.steps) expect(title).toMatch(/^[A-Z][^.]*[^.]$/);
  });

  test('each joint that can hurt comes with a caution and a source', () => {
    for (const joint of seeds.joints.filter(({ risk }) => risk === 'A')) {
      const step = seeds.steps.find((one) => one.joint === joint.id);
      expect(step?.cautions.length, joint.id).toBeGreaterThan(0);
      expect(joint.source, joint.id).toMatch(/common practice/);
    }
  });

  test('a quick release is closed by feel, never to a torque', () => {
    // Source: ISO 4210-2 / EN 14766 give lever forces; the imprint in the palm: common practice, no source.
    const levers = seeds.steps.filter(({ id }) => id.startsWith('close-'));
    expect(levers.length).toBe(2);
    for (const { joint, how, right, cautions } of levers) {
      expect(joint).toBeUndefined();
      expect(how).toMatch(/half-way/);
      expect(right).toMatch(/imprint/);
      expect(cautions.join(' ')).toMatch(/never turned like a nut/);
    }
  });
});

describe('a plan from the seeds', () => {
  test.each(seeds.bikes.map((bike) => [`${bike.model} ${bike.frameNumber}`, bike] as const))(
    'of the %s tightens every joint once and needs every part of its box',
    (_, bike) => {
      const plan = resolvePlan(bike, catalogueFrom(seeds));
      if (!plan.ok) throw new Error(JSON.stringify(plan.refusal));
      const { steps, contents } = plan.value;
      const joints = steps.flatMap(({ joint }) => joint?.id ?? []);
      expect(joints).toEqual([...new Set(joints)]);
      const needed = new Set(steps.flatMap(({ parts }) => parts));
      const idle = contents.filter(({ id, kind }) => kind === 'part' && !needed.has(id));
      expect(idle.map(({ id }) => id)).toEqual([]);
    },
  );
});

describe('a fault in a file', () => {
  const schema = z.object({ steps: z.array(stepSchema) });
  const [first] = seeds.steps;
  const written = (change: object) => JSON.stringify({ steps: [{ ...first, ...change }] });

  test.each([
    ['a zone that no bike has', written({ zone: 'attic' }), /unpack › zone/],
    ['a misspelt member', written({ relyOn: ['unpack'] }), /unpack › relyOn: the schema knows no/],
    ['a missing comma', '{ "steps": [', /not JSON/],
  ])('%s is named with its place', (_, text, place) => {
    const parsed = parseSeed('steps/whole-bike.json', text, schema);
    expect(parsed.faults).toHaveLength(1);
    expect(parsed.faults[0]).toMatch(/^steps\/whole-bike\.json: /);
    expect(parsed.faults[0]).toMatch(place);
  });
});

describe('a fault between the files', () => {
  const without = <T extends { id: string }>(rows: readonly T[], id: string) =>
    rows.filter((row) => row.id !== id);
  const changed = (id: string, change: Partial<Step>): Seeds => ({
    ...seeds,
    steps: seeds.steps.map((step) => (step.id === id ? { ...step, ...change } : step)),
  });

  test.each<[situation: string, broken: Seeds, named: string]>([
    [
      'a step that is gone',
      { ...seeds, steps: without(seeds.steps, 'fork-travel') },
      'step brake-hold: there is no step fork-travel',
    ],
    [
      'a joint that is gone',
      { ...seeds, joints: without(seeds.joints, 'quill-wedge') },
      'step quill-wedge: there is no joint quill-wedge',
    ],
    [
      'a part that is gone',
      { ...seeds, parts: without(seeds.parts, 'bell') },
      'step bell: there is no part bell',
    ],
    [
      'a step that waits for itself in the end',
      changed('fit-bar', { after: ['steering-swing'] }),
      'steps: a circle: ',
    ],
    [
      'a joint that no step tightens',
      {
        ...seeds,
        joints: [
          ...seeds.joints,
          jointSchema.parse({ ...seeds.joints[0], id: 'forgotten', variants: [] }),
        ],
      },
      'joint forgotten: no step tightens it',
    ],
    [
      'a joint that two steps tighten',
      changed('fit-bar', { joint: 'faceplate' }),
      'joint faceplate: fit-bar and faceplate both tighten it',
    ],
    ['a part that nobody needs', changed('bell', { parts: [] }), 'part bell: no step needs it'],
    [
      'an id that stands twice',
      { ...seeds, parts: [...seeds.parts, ...seeds.parts.slice(0, 1)] },
      'parts: front-wheel stands there twice',
    ],
    [
      'a question that no bike answers',
      changed('bell', { when: { ask: 'wheels.front', is: 'round' } }),
      'step bell: no bike answers the question wheels.front',
    ],
    [
      'a title that does not fit its line',
      changed('bell', { title: 'Fit the bell beside the grip where the thumb finds it' }),
      'step bell: the title has 53 letters',
    ],
    [
      'an effort that does not rise',
      changed('bell', { effort: [3, 2, 4] }),
      'step bell: effort 3, 2, 4 does not rise',
    ],
  ])('%s is named', (_, broken, named) => {
    expect(seedFaults(broken).some((fault) => fault.startsWith(named))).toBe(true);
  });
});

describe('a condition', () => {
  test.each<[condition: Condition, faults: string[]]>([
    [{ ask: 'front.brake', is: ['linear-pull', 'none'] }, []],
    [{ ask: 'steering.faceplateBolts', is: 4 }, []],
    [{ ask: 'front.fitted', is: false }, []],
    [{ ask: 'extras', has: 'rack' }, []],
    [{ not: { ask: 'frame.minimumInsertion', known: true } }, []],
    [{ ask: 'front.brakes', is: 'none' }, ['no bike answers the question front.brakes']],
    [{ ask: 'front', is: 'none' }, ['no bike answers the question front']],
    [{ ask: 'front.brake', is: 'disk' }, ['no bike answers front.brake with "disk"']],
    [{ ask: 'front.fitted', is: 'no' }, ['no bike answers front.fitted with "no"']],
    [{ ask: 'steering.faceplateBolts', is: 3 }, ['no bike answers steering.faceplateBolts with 3']],
    [{ ask: 'extras', has: 'racks' }, ['no bike answers extras with "racks"']],
    [{ ask: 'extras', is: 'rack' }, ['extras is asked with "has", not the other way']],
    [{ ask: 'kind', has: 'town' }, ['kind is asked with "is", not the other way']],
    [
      { all: [{ ask: 'kind', is: 'town' }, { any: [{ not: { ask: 'kind', is: 'city' } }] }] },
      ['no bike answers kind with "city"'],
    ],
  ])('%j', (condition, expected) => {
    expect(conditionFaults(condition)).toEqual(expected);
  });
});
