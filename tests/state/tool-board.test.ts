/** The tool board: tools come and change, every note of them is kept, and a wrench in doubt goes on only calibrated. */

import { beforeEach, describe, expect, test } from 'vitest';
import { type Adapter, adapterSchema, readyWrench, type Wrench } from '../../src/engine/torque';
import type { Tool } from '../../src/state';
import { doubtsOf, type WrenchTool } from '../../src/state/tool-doubts';
import { createTestApp, must, settled, type TestApp } from '../support/test-app';
import { wrench } from '../support/wrenches';

const today = '2026-11-25';
const adapter: Adapter = adapterSchema.parse({ grip: 180, offset: 30, angle: 0 });

/** A click wrench 2–25 N·m of class A: within ± 4 % (ISO 6789-1:2017, maximum above 10 N·m). */
const own: Wrench = wrench({
  id: 'B',
  calibratedOn: '2026-06-01',
  dueOn: '2027-06-01',
  operations: 4000,
});

let shop: TestApp;

beforeEach(async () => {
  shop = createTestApp();
  must(await shop.app.startOwnShop({ shop: 'Quay', market: 'gb', name: 'Petra', pin: '508236' }));
  await settled();
  must(await shop.app.addTool({ kind: 'wrench', wrench: own }));
  await settled();
}, 20_000);

function toolOf(id = 'B'): Tool | undefined {
  return shop.app.tools.getState().rows.find((tool) => tool.id === id);
}

function wrenchOf(id = 'B'): WrenchTool {
  const tool = toolOf(id);
  if (tool?.kind !== 'wrench') throw new Error(`no wrench ${id}`);
  return tool;
}

async function calibrate(own: Partial<Parameters<TestApp['app']['calibrate']>[0]> = {}) {
  const calibration = { wrench: 'B', on: today, dueOn: '2027-11-25', found: inside, ...own };
  const answer = await shop.app.calibrate(calibration);
  await settled();
  return answer;
}

const inside = [
  { at: 2, deviation: 0.02 },
  { at: 15, deviation: -0.01, uncertainty: 0.01 },
  { at: 25, deviation: 0.04 },
];
const outside = [
  { at: 2, deviation: 0.02 },
  { at: 15, deviation: 0.07 },
  { at: 25, deviation: 0.06 },
];

async function happened(to: Wrench['condition'], on = today, reason = 'Fell off the bench') {
  const answer = await shop.app.changeCondition({ wrench: 'B', to, on, reason });
  await settled();
  return answer;
}

describe('a tool', () => {
  test('comes onto the board with who put it there', () => {
    const [petra] = shop.app.people.getState().rows;
    expect(wrenchOf().history).toMatchObject([{ kind: 'added', by: petra?.id }]);
    expect(wrenchOf().wrench).toEqual(own);
  });

  test('never takes the name of another, not even of a retired one', async () => {
    must(await happened('retired'));
    expect(await shop.app.addTool({ kind: 'wrench', wrench: own })).toEqual({
      ok: false,
      refusal: { code: 'tool-name-taken', name: 'B' },
    });
    expect(wrenchOf().wrench.condition).toBe('retired');
  });

  test('is described anew without its calibration, its count or its history changing', async () => {
    const { name: _, ...rest } = own;
    const described = { ...rest, name: 'Click wrench, long', kind: 'click' } as const;
    const { lowest, highest, increment, unit, type } = described;
    must(
      await shop.app.describeWrench('B', {
        name: described.name,
        kind: 'click',
        type,
        class: described.class,
        lowest,
        highest,
        increment,
        unit,
      }),
    );
    await settled();
    const { wrench: now, history } = wrenchOf();
    expect(now).toEqual({ ...own, name: 'Click wrench, long', kind: 'click' });
    expect(history?.map(({ kind }) => kind)).toEqual(['added', 'changed']);
  });

  test('that is an adapter is changed, retired and brought back', async () => {
    must(await shop.app.addTool({ id: 'x', kind: 'adapter', name: 'Crowfoot', adapter }));
    const longer = adapterSchema.parse({ grip: 180, offset: 40, angle: 90 });
    must(
      await shop.app.describeAdapter({
        id: 'x',
        kind: 'adapter',
        name: 'Crowfoot 10',
        adapter: longer,
        wrench: 'B',
      }),
    );
    must(await shop.app.retireAdapter('x', true));
    await settled();
    expect(toolOf('x')).toMatchObject({
      name: 'Crowfoot 10',
      adapter: longer,
      wrench: 'B',
      retired: true,
    });
    must(await shop.app.retireAdapter('x', false));
    await settled();
    expect(toolOf('x')).toMatchObject({ retired: false });
    expect(toolOf('x')?.history).toHaveLength(4);
  });

  test('that is not there is refused, and so is everything while nobody is at the stand', async () => {
    const nowhere = { ok: false, refusal: { code: 'tool-missing' } };
    expect(await calibrate({ wrench: 'Z' })).toEqual(nowhere);
    expect(await shop.app.retireAdapter('B', true)).toEqual(nowhere);
    shop.app.session.getState().leave();
    expect(await happened('dropped')).toEqual({
      ok: false,
      refusal: { code: 'nobody-at-the-stand' },
    });
  });
});

describe('a condition', () => {
  test.each(['dropped', 'overloaded'] as const)(
    '%s keeps it from the stand until it is calibrated, with day and reason kept',
    async (to) => {
      must(await happened(to, '2026-11-24'));
      expect(readyWrench(wrenchOf().wrench, today)).toMatchObject({
        ok: false,
        refusal: { code: 'wrench-not-in-service', condition: to },
      });
      expect(wrenchOf().history?.at(-1)).toMatchObject({
        kind: 'condition',
        from: 'in service',
        to,
        on: '2026-11-24',
        reason: 'Fell off the bench',
      });
      expect(await happened('in service', today, 'Looks fine')).toMatchObject({
        ok: false,
        refusal: { code: 'wrench-needs-calibration', wrench: 'B' },
      });
      // Away in between hides nothing.
      must(await happened('away', today, 'Sent to be calibrated'));
      expect(await happened('in service', today, 'Came back')).toMatchObject({ ok: false });
      must(await calibrate());
      expect(readyWrench(wrenchOf().wrench, today).ok).toBe(true);
    },
  );

  test('away is left again without a calibration', async () => {
    must(await happened('away', today, 'Lent out'));
    must(await happened('in service', today, 'Back from loan'));
    expect(readyWrench(wrenchOf().wrench, today).ok).toBe(true);
    expect(doubtsOf(wrenchOf())).toEqual([]);
  });

  test.each([
    ['without a reason', today, ' ', 'reason-missing'],
    ['on a day that has not come', '2026-11-26', 'Fell', 'day-not-yet'],
  ])('is refused %s', async (_, on, reason, code) => {
    expect(await happened('dropped', on, reason)).toMatchObject({ ok: false, refusal: { code } });
    expect(wrenchOf().wrench.condition).toBe('in service');
  });
});

describe('a calibration', () => {
  test('inside puts it back into service, counts from nought and plans with its points', async () => {
    must(await calibrate({ reference: 'Q-17' }));
    expect(wrenchOf().wrench).toMatchObject({
      calibratedOn: today,
      dueOn: '2027-11-25',
      operations: 0,
      condition: 'in service',
      certificate: { reference: 'Q-17', points: inside },
    });
    expect(wrenchOf().history?.at(-1)).toMatchObject({
      kind: 'calibrated',
      since: '2026-06-01',
      foundOutside: false,
      isGood: true,
      operations: 4000,
    });
  });

  test('is kept beside those before it', async () => {
    must(await calibrate({ on: '2026-11-20', reference: 'first' }));
    must(await calibrate({ reference: 'second' }));
    const kept = wrenchOf().history?.flatMap((note) =>
      note.kind === 'calibrated' ? [[note.reference, note.since]] : [],
    );
    expect(kept).toEqual([
      ['first', '2026-06-01'],
      ['second', '2026-11-20'],
    ]);
  });

  test('that only says it passed leaves the class to say how far it may be out', async () => {
    must(await calibrate({ found: inside }));
    must(await calibrate({ found: [] }));
    expect(wrenchOf().wrench.certificate).toBeUndefined();
    expect(wrenchOf().wrench.calibratedOn).toBe(today);
  });

  test('outside is refused until somebody says what was done or where it goes', async () => {
    expect(await calibrate({ found: outside })).toEqual({
      ok: false,
      refusal: { code: 'wrench-found-outside', wrench: 'B' },
    });
    expect(wrenchOf().wrench).toEqual(own);
    expect(wrenchOf().history).toHaveLength(1);
  });

  test('outside and adjusted goes on with the points it left with, and is in doubt for the time before', async () => {
    must(await calibrate({ found: outside, adjusted: { how: ' Spring ', points: inside } }));
    expect(wrenchOf().wrench).toMatchObject({
      condition: 'in service',
      certificate: { points: inside },
    });
    expect(wrenchOf().history?.at(-1)).toMatchObject({
      foundOutside: true,
      adjusted: { how: 'Spring' },
    });
    expect(doubtsOf(wrenchOf())).toMatchObject([
      { cause: 'found-outside', since: { on: '2026-06-01' }, until: { on: today }, found: outside },
    ]);
  });

  test('outside and out of service leaves it as uncalibrated as it was', async () => {
    must(await calibrate({ found: outside, outOfService: 'away' }));
    expect(wrenchOf().wrench).toEqual({ ...own, condition: 'away' });
    expect(await happened('in service', today, 'Came back')).toMatchObject({
      ok: false,
      refusal: { code: 'wrench-needs-calibration' },
    });
    shop.clock.pass(24 * 60);
    must(await calibrate({ on: '2026-11-26', dueOn: '2027-11-26' }));
    expect(wrenchOf().wrench.condition).toBe('in service');
    expect(doubtsOf(wrenchOf())).toMatchObject([
      { cause: 'found-outside', found: outside, until: { on: '2026-11-26' } },
    ]);
  });

  test.each([
    ['in the future', { on: '2026-11-26' }, 'day-not-yet'],
    ['before the one before', { on: '2026-05-31' }, 'calibration-days-wrong'],
    ['due on its own day', { dueOn: today }, 'calibration-days-wrong'],
    ['tested beyond the scale', { found: [{ at: 40, deviation: 0 }] }, 'test-point-impossible'],
    [
      'adjusted without a word how',
      { found: outside, adjusted: { how: ' ', points: inside } },
      'reason-missing',
    ],
    [
      'adjusted and still outside',
      { found: outside, adjusted: { how: 'Spring', points: outside } },
      'wrench-left-outside',
    ],
    [
      'adjusted and not measured again',
      { found: outside, adjusted: { how: 'Spring', points: [] } },
      'test-points-missing',
    ],
  ])('%s is refused, and nothing is kept', async (_, wrong, code) => {
    expect(await calibrate(wrong)).toMatchObject({ ok: false, refusal: { code } });
    expect(wrenchOf().wrench).toEqual(own);
    expect(wrenchOf().history).toHaveLength(1);
  });
});
