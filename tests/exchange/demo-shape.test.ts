/** The invented shop holds together: people, board, bikes, figures and jobs fit each other and the engine. */

import { describe, expect, test } from 'vitest';
import { isGtin } from '../../src/engine/bike';
import { routeFor } from '../../src/engine/inspection';
import { type Joint, unorderedPlan } from '../../src/engine/plan';
import {
  adapterSchema,
  type Figure,
  planSetPoint,
  rankWrenches,
  readyWrench,
  usableFigure,
  wrenchSchema,
} from '../../src/engine/torque';
import { newtonMetres, parseTorqueMarking } from '../../src/engine/units';
import {
  demoBikesSchema,
  demoFiguresSchema,
  demoJobsSchema,
  demoPeopleSchema,
  demoToolsSchema,
} from '../../src/exchange/demo.schema';
import { readDemo, wrenchesOn } from '../support/demo-files';
import { seedCatalogue, seedPoints } from '../support/seed-catalogue';

const firstStart = '2027-02-28';
const { people } = demoPeopleSchema.parse(readDemo('people.json'));
const tools = demoToolsSchema.parse(readDemo('tools.json'));
const { bikes } = demoBikesSchema.parse(readDemo('bikes.json'));
const book = demoFiguresSchema.parse(readDemo('figures.json'));
const { jobs } = demoJobsSchema.parse(readDemo('jobs.json'));
const board = wrenchesOn(firstStart, tools.wrenches);

function bikeOf(frameNumber: string) {
  const bike = bikes.find((one) => one.frameNumber === frameNumber);
  if (bike === undefined) throw new Error(`no bike ${frameNumber}`);
  return bike;
}

const catalogue = seedCatalogue();

function planOf(frameNumber: string) {
  const plan = unorderedPlan(bikeOf(frameNumber), catalogue);
  if (!plan.ok) throw new Error(JSON.stringify(plan.refusal));
  return plan.value;
}

describe('the people', () => {
  test('have a PIN each that is not a pattern', () => {
    const pins = people.map(({ pin }) => pin);
    expect(new Set(pins).size).toBe(pins.length);
    for (const pin of pins) expect(new Set(pin).size).toBeGreaterThanOrEqual(5);
  });

  test('can build, learn, supervise, and check each other’s work', () => {
    for (const role of ['mechanic', 'apprentice', 'supervisor'] as const)
      expect(people.some(({ roles }) => roles.includes(role))).toBe(true);
    expect(people.filter(({ roles }) => roles.includes('mechanic')).length).toBeGreaterThan(1);
  });
});

describe('the tool board', () => {
  test.each(board.map((wrench) => [wrench.id, wrench] as const))(
    'wrench %s is one',
    (_, wrench) => {
      expect(wrenchSchema.parse(wrench)).toEqual(wrench);
      expect(wrench.calibratedOn < firstStart).toBe(true);
    },
  );

  test('has adapters that fit the wrench their grip was measured on', () => {
    for (const adapter of tools.adapters) {
      expect(adapterSchema.safeParse(adapter).success).toBe(true);
      expect(board.some(({ id }) => id === adapter.wrench)).toBe(true);
    }
  });

  test('has one wrench that was dropped, one that is overdue, and five fit for use', () => {
    const refusals = board.flatMap((wrench) => {
      const ready = readyWrench(wrench, firstStart);
      return ready.ok ? [] : [ready.refusal.code];
    });
    expect(refusals.sort()).toEqual(['calibration-overdue', 'wrench-not-in-service']);
    expect(board).toHaveLength(7);
  });

  test('covers the usual range of every joint of every demo bike', () => {
    const joints = bikes.flatMap(({ frameNumber }) =>
      planOf(frameNumber).steps.flatMap(({ joint }) => joint ?? []),
    );
    expect(joints.length).toBeGreaterThan(50);
    expect([
      ...new Set(joints.filter((joint) => !isCovered(usualOf(joint))).map(({ id }) => id)),
    ]).toEqual([]);
  });
});

describe('the figure book', () => {
  test.each(['Hardtail 29', 'Town 7'])(
    'with the parts’ own markings knows every joint of the %s once',
    (model) => {
      const bike = bikes.find((one) => one.model === model);
      const joints = planOf(bike?.frameNumber ?? '').steps.flatMap(({ joint }) => joint?.id ?? []);
      const inBook = book.figures.filter((row) => row.model === model).map(({ joint }) => joint);
      const onPart = book.markings.filter((row) => row.model === model).map(({ joint }) => joint);
      expect([...inBook, ...onPart].sort()).toEqual([...joints].sort());
      expect(onPart.length).toBeGreaterThanOrEqual(2);
      expect(onPart.length).toBeLessThanOrEqual(3);
    },
  );

  test('holds figures that may be used and that a wrench on the board can set', () => {
    for (const { figure } of book.figures) {
      expect(usableFigure(figure).ok).toBe(true);
      expect(isCovered(figure)).toBe(true);
    }
  });

  test('leaves to the parts only markings that can be read, agree with themselves, and can be set', () => {
    for (const { printed } of book.markings) {
      const read = parseTorqueMarking(printed);
      if (!read.ok) throw new Error(JSON.stringify(read.refusal));
      expect(read.value.disagree).toBe(false);
      expect(isCovered({ ...read.value.figure, source: { kind: 'part', printed } })).toBe(true);
    }
  });

  test('stays inside or near the usual range of its joint', () => {
    for (const { make, model, joint, figure } of book.figures) {
      const bike = bikes.find((one) => one.make === make && one.model === model);
      const { steps } = planOf(bike?.frameNumber ?? '');
      const usual = steps.find((step) => step.joint?.id === joint)?.joint?.usual;
      if (usual === undefined) throw new Error(`no joint ${joint} on the ${model}`);
      // A marking with one end says nothing of the other.
      expect(figure.min ?? usual.min).toBeGreaterThanOrEqual(usual.min * 0.8);
      expect(figure.max ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(usual.max * 1.2);
    }
  });
});

describe('the bikes', () => {
  test('carry article numbers that are right and reserved for use inside a shop (prefix 20 to 29, GS1)', () => {
    for (const { gtin = '' } of bikes) {
      expect(isGtin(gtin)).toBe(true);
      expect(gtin).toMatch(/^2\d{12}$/);
    }
  });

  test('have a frame number each, and a plan in the catalogue', () => {
    expect(new Set(bikes.map(({ frameNumber }) => frameNumber)).size).toBe(bikes.length);
    for (const { frameNumber } of bikes)
      expect(planOf(frameNumber).steps.length).toBeGreaterThan(30);
  });
});

describe('the jobs', () => {
  test('are one for each bike, in every state', () => {
    expect(jobs.map(({ bike }) => bike).sort()).toEqual(
      bikes.map(({ frameNumber }) => frameNumber).sort(),
    );
    expect(new Set(jobs.map(({ state }) => state)).size).toBe(5);
  });

  test('are done by people of the shop, and checked by another than the builder', () => {
    const known = new Set(people.map(({ id }) => id));
    for (const job of jobs) {
      expect(known.has(job.receivedBy)).toBe(true);
      if ('builder' in job) expect(known.has(job.builder)).toBe(true);
      if (job.state === 'handed-over') {
        expect(known.has(job.checker)).toBe(true);
        expect(job.checker).not.toBe(job.builder);
        expect(job.daysAgo).toBeLessThan(job.receivedDaysAgo);
      }
    }
  });

  test('stop part of the way where they say so, and wait for parts that the bike has', () => {
    for (const job of jobs) {
      if (job.state !== 'on-the-stand' && job.state !== 'on-hold') continue;
      const plan = planOf(job.bike);
      expect(job.stepsDone).toBeLessThan(plan.steps.length);
      if (job.state === 'on-hold') {
        const contents = plan.contents.map(({ id }) => id);
        expect(job.missing.filter((part) => !contents.includes(part))).toEqual([]);
      }
    }
  });

  test('found things only at points of the bike’s own walk, and closed all but what the customer was told', () => {
    const findings = jobs.flatMap((job) =>
      job.state === 'handed-over' ? job.findings.map((one) => ({ ...one, bike: job.bike })) : [],
    );
    expect(findings.length).toBeGreaterThan(2);
    for (const { point, severity, closedHow, bike } of findings) {
      expect(routeFor(bikeOf(bike), seedPoints()).some(({ id }) => id === point)).toBe(true);
      expect(closedHow === undefined).toBe(severity === 'tell-customer');
    }
  });
});

function usualOf(joint: Pick<Joint, 'usual'>): Figure {
  return {
    min: newtonMetres(joint.usual.min),
    max: newtonMetres(joint.usual.max),
    source: { kind: 'usual', acceptedBy: 'noor' },
  };
}

function isCovered(figure: Figure): boolean {
  return rankWrenches(figure, board, firstStart).some(({ wrench }) => {
    const plan = planSetPoint({ figure, wrench, on: firstStart });
    return plan.ok && plan.value.covered;
  });
}
