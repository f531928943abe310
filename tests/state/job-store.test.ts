/** One open job: what is shown as done is on the disk, what failed is kept to be asked again, and other tabs are followed. */

import { beforeEach, describe, expect, test } from 'vitest';
import { type Asked, openSteps } from '../../src/engine/job';
import type { JobStore } from '../../src/state';
import { createMemoryStorage } from '../../src/storage/memory/memory-storage';
import { createFailingStorage, type FailingStorage } from '../support/failing-storage';
import { openShopWithAJob, type ShopWithAJob } from '../support/shop-with-a-job';
import { settled } from '../support/test-app';

let shop: ShopWithAJob;
let failing: FailingStorage;
let store: JobStore;

const holding: Asked = { kind: 'hold-job', for: 'part', note: 'pedals' };

beforeEach(async () => {
  failing = createFailingStorage(createMemoryStorage());
  shop = await openShopWithAJob({ storage: failing.storage });
  store = await shop.app.openJobStore(shop.job);
  await settled();
});

/** The first step that needs no wrench and no measure. */
async function firstStep(): Promise<Asked> {
  const { contents } = store.getState().state.plan ?? { contents: [] };
  const parts = contents.map(({ id }) => ({ part: id, state: 'present' as const }));
  await store.act({ kind: 'check-contents', parts });
  const [step] = openSteps(store.getState().state).filter(
    ({ joint, measures }) => joint === undefined && measures.length === 0,
  );
  return { kind: 'do-step', step: step?.id ?? '' };
}

describe('what is asked of a job', () => {
  test('is shown as done only when it is on the disk', async () => {
    const asked = await firstStep();
    const before = store.getState();
    const acting = store.act(asked);
    expect(store.getState()).toMatchObject({ busy: true, state: before.state });
    expect(await acting).toBe(true);
    const { entries, heads, state, busy } = store.getState();
    expect(busy).toBe(false);
    expect((await shop.storage.log(shop.job)).entries).toEqual(entries);
    expect((await shop.storage.row(shop.job))?.heads).toEqual(heads);
    expect(Object.values(state.steps)).toHaveLength(1);
  });

  test('is done once when it is tapped twice', async () => {
    const asked = await firstStep();
    const before = store.getState().entries.length;
    const [first, second] = await Promise.all([store.act(asked), store.act(asked)]);
    expect([first, second]).toEqual([true, true]);
    expect(store.getState().entries.length).toBe(before + 1);
    expect(store.getState().problem).toBeUndefined();
  });

  test('waits for what is on its way, and is not lost', async () => {
    const asked = await firstStep();
    const [first, second] = await Promise.all([store.act(asked), store.act(holding)]);
    expect([first, second]).toEqual([true, true]);
    const kinds = store.getState().entries.map(({ event }) => event.kind);
    expect(kinds.slice(-2)).toEqual(['step-done', 'job-held']);
  });

  test('is refused with facts, and changes nothing', async () => {
    const before = store.getState().entries;
    expect(await store.act({ kind: 'do-step', step: 'no-such-step' })).toBe(false);
    expect(store.getState().problem?.refusal).toMatchObject({ code: 'step-unknown' });
    expect(store.getState().entries).toBe(before);
    store.dismiss();
    expect(store.getState().problem).toBeUndefined();
  });

  test('needs somebody at the stand', async () => {
    shop.app.session.getState().leave();
    expect(await store.act(holding)).toBe(false);
    expect(store.getState().problem).toMatchObject({
      asked: holding,
      refusal: { code: 'nobody-at-the-stand' },
    });
    shop.app.session.getState().come(shop.mechanic.id);
    expect(await store.retry()).toBe(true);
    expect(store.getState().problem).toBeUndefined();
  });
});

describe('a write that fails', () => {
  test('for every n: the n-th is not shown as done, is kept, and succeeds when asked again', async () => {
    const asked: Asked[] = [
      holding,
      { kind: 'resume-job' },
      { kind: 'raise-finding', finding: 'f1', severity: 'tell-customer', text: 'A scratch.' },
      { kind: 'close-finding', finding: 'f1', how: 'Touched up.' },
      holding,
    ];
    for (let n = 1; n <= asked.length; n += 1) {
      failing = createFailingStorage(createMemoryStorage());
      shop = await openShopWithAJob({ storage: failing.storage });
      store = await shop.app.openJobStore(shop.job);
      await settled();
      failing.failAt(n);
      for (const [index, one] of asked.entries()) {
        const before = store.getState();
        const isDone = await store.act(one);
        expect(isDone).toBe(index + 1 !== n);
        if (isDone) continue;
        expect(store.getState()).toMatchObject({
          busy: false,
          state: before.state,
          problem: { asked: one, refusal: { code: 'storage-full' } },
        });
        expect((await shop.storage.log(shop.job)).entries).toHaveLength(before.entries.length);
        expect(await store.retry()).toBe(true);
      }
      expect(store.getState().state.hold?.note).toBe('pedals');
      const { entries } = await shop.storage.log(shop.job);
      expect(entries).toEqual(store.getState().entries);
    }
  });
});

describe('another tab', () => {
  test('is followed: its changes are shown and counted', async () => {
    const done = await shop.bench.perform(shop.job, holding, shop.mechanic);
    expect(done.ok).toBe(true);
    await settled();
    await settled();
    expect(store.getState()).toMatchObject({
      changedElsewhere: 1,
      state: { hold: { for: 'part' } },
    });
  });

  test('may have moved the heads: then it is decided again on what is there', async () => {
    await shop.bench.perform(shop.job, holding, shop.mechanic);
    expect(await store.act({ kind: 'do-step', step: 'unpack' })).toBe(false);
    expect(store.getState().problem?.refusal).toMatchObject({ code: 'job-on-hold' });
    expect(await store.act({ kind: 'resume-job' })).toBe(true);
    await settled();
    const { entries } = await shop.storage.log(shop.job);
    expect(store.getState().entries).toEqual(entries);
  });

  test('one’s own changes are not counted as its', async () => {
    await store.act(holding);
    await settled();
    await settled();
    expect(store.getState().changedElsewhere).toBe(0);
  });
});

describe('a store', () => {
  test('is shared by everybody who has the job open', async () => {
    const other = await shop.app.openJobStore(shop.job);
    await store.act(holding);
    expect(other.getState().state.hold?.for).toBe('part');
    other.close();
    await store.act({ kind: 'resume-job' });
    expect(store.getState().state.hold).toBeUndefined();
  });

  test('says when there is no such job', async () => {
    const none = await shop.app.openJobStore('no-such-job');
    await settled();
    expect(none.getState().status).toBe('missing');
  });

  test('says when the disk cannot be read', async () => {
    const refusal = { code: 'storage-outdated' } as const;
    const unreadable = await openShopWithAJob();
    unreadable.storage.log = () => Promise.reject(Object.assign(new Error('x'), { refusal }));
    const failed = await unreadable.app.openJobStore(unreadable.job);
    await settled();
    expect(failed.getState()).toMatchObject({ status: 'failed', failure: refusal });
  });
});
