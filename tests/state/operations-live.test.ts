/** Operations are counted while somebody tightens: the board shows them at once, and the stand refuses past 5000. */

import { beforeAll, describe, expect, test } from 'vitest';
import { nextPass, openSteps, wrenchDays } from '../../src/engine/job';
import { planSetPoint, rankWrenches, type Wrench } from '../../src/engine/torque';
import { build, loadJob } from '../../src/state';
import { openShopWithAJob, type ShopWithAJob } from '../support/shop-with-a-job';
import { must, settled } from '../support/test-app';

let shop: ShopWithAJob;

beforeAll(async () => {
  shop = await openShopWithAJob();
  for (const wrench of shop.bench.wrenches)
    must(await shop.app.addTool({ kind: 'wrench', wrench }));
  await settled();
}, 60_000); // stretched PINs, perhaps beside other tests

function board(): readonly Wrench[] {
  return shop.app.tools
    .getState()
    .rows.flatMap((tool) => (tool.kind === 'wrench' ? [tool.wrench] : []));
}

const operationsOf = (id: string) => board().find((wrench) => wrench.id === id)?.operations ?? 0;

describe('while a bike is built', () => {
  test('each wrench’s count grows by the bolts it has tightened, on the board and in the row', async () => {
    const before = new Map(board().map(({ id }) => [id, operationsOf(id)]));
    await build(shop.bench, shop.job, { steps: 24 });
    await settled();
    const { entries, plan } = await shop.storage.log(shop.job);
    const counted = wrenchDays(entries, plan);
    expect(counted.length).toBeGreaterThan(0);
    expect((await shop.storage.row(shop.job))?.wrenchDays).toEqual(counted);
    for (const [id, , operations] of counted)
      expect(operationsOf(id)).toBe((before.get(id) ?? 0) + operations);
  });

  test('past 5000 operations (ISO 6789-1) the stand refuses the wrench in the middle of a joint', async () => {
    let state = (await loadJob(shop.storage, shop.job))?.state;
    let step = openSteps(state ?? missing())[0];
    while (step?.joint === undefined || step.joint.bolts < 2) {
      state = await build(shop.bench, shop.job, { steps: 1 });
      step = openSteps(state)[0];
    }
    const figure = { ...step.joint.usual, source: { kind: 'part', printed: 'as on the part' } };
    const { act } = await shop.app.openJobStore(shop.job);
    await settled();
    expect(await act({ kind: 'enter-figure', joint: step.joint.id, figure } as never)).toBe(true);
    const [best] = rankWrenches(figure as never, board(), '2026-11-25');
    const tired = { ...(best?.wrench ?? missing()), id: 'T', operations: 4999 };
    must(
      await shop.app.addTool({ kind: 'wrench', wrench: { ...tired, calibratedOn: '2026-11-25' } }),
    );
    await settled();

    const tiredNow = () => board().find(({ id }) => id === 'T') ?? missing();
    expect(planSetPoint({ figure, wrench: tiredNow(), on: '2026-11-25' } as never).ok).toBe(true);
    const pass = { kind: 'make-pass', step: step.id, wrench: tiredNow() } as const;
    expect(await act({ ...pass, pass: 1 })).toBe(true);
    await settled();
    expect(operationsOf('T')).toBe(4999 + step.joint.bolts);
    const now = (await loadJob(shop.storage, shop.job))?.state ?? missing();
    const next = nextPass(now, step);
    expect(next.ok && next.value.pass.pass).toBe(2);
    expect(await act({ ...pass, pass: 2, wrench: tiredNow() })).toBe(false);
    const store = await shop.app.openJobStore(shop.job);
    expect(store.getState().problem?.refusal).toMatchObject({
      code: 'calibration-overdue',
      because: 'operations',
      wrench: 'T',
    });
  }, 30_000);
});

function missing(): never {
  throw new Error('the shop of this test is not as it should be');
}
