/** The one way to change a job: stamped once, decided on what is held, sealed in a chain, kept whole or not at all. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { verifyLog } from '../../src/engine/integrity';
import { type Asked, replay } from '../../src/engine/job';
import { createPerform, type Perform } from '../../src/state';
import type { Storage } from '../../src/storage/contract';
import { createMemoryStorage } from '../../src/storage/memory/memory-storage';
import { bikeFrom, townBike } from '../support/bikes';
import { createFixedClock } from '../support/fixed-clock';

const noor = { id: 'noor', roles: ['mechanic'] as const };
const box: Asked = { kind: 'receive-box', bike: bikeFrom(townBike) };
const hold: Asked = { kind: 'hold-job', for: 'part', note: 'pedals' };
const resume: Asked = { kind: 'resume-job' };
const clock = createFixedClock();

function performOn(storage: Pick<Storage, 'changeJob'>, device = 'tablet-a'): Perform {
  return createPerform({ storage, clock, device });
}

describe('a change', () => {
  test('carries who, when and on which device, and follows the heads it was decided on', async () => {
    const storage = createMemoryStorage();
    const perform = performOn(storage);
    await perform('job-1', box, noor);
    await perform('job-1', hold, noor);
    const { entries } = await storage.log('job-1');
    expect(entries).toMatchObject([
      { seq: 1, lamport: 1, parents: [], by: 'noor', device: 'tablet-a', at: clock.now() },
      { seq: 2, lamport: 2, parents: [entries[0]?.id], by: 'noor' },
    ]);
    expect(verifyLog(entries, { job: 'job-1' }).ok).toBe(true);
  });

  test('updates the rack’s row with it', async () => {
    const storage = createMemoryStorage();
    const perform = performOn(storage);
    await perform('job-1', box, noor);
    await perform('job-1', hold, noor);
    const { entries } = await storage.log('job-1');
    expect(await storage.row('job-1')).toMatchObject({
      job: 'job-1',
      status: 'on-hold',
      heads: [entries[1]?.id],
      lamport: 2,
      seqs: { 'tablet-a': 2 },
      count: 2,
      lastBy: 'noor',
    });
  });

  test('reads the log once, and not again while nobody else writes', async () => {
    const storage = createMemoryStorage();
    const logsRead: boolean[] = [];
    const perform = performOn({
      changeJob: (job, seen, work) =>
        storage.changeJob(job, seen, (held) => {
          logsRead.push(held.log !== undefined);
          return work(held);
        }),
    });
    for (const asked of [box, hold, resume, hold]) await perform('job-1', asked, noor);
    expect(logsRead).toEqual([true, false, false, false]);
  });

  test('is refused with the facts, and keeps nothing', async () => {
    const storage = createMemoryStorage();
    const refused = await performOn(storage)('job-1', hold, noor);
    expect(refused).toEqual({ ok: false, refusal: { code: 'box-not-received' } });
    expect(await storage.row('job-1')).toBeUndefined();
  });

  test('that meets a bug keeps nothing, and says that it is one', async () => {
    const storage = createMemoryStorage();
    const perform = performOn(storage);
    await perform('job-1', box, noor);
    const broken = { kind: 'set-due', due: Number.NaN } as unknown as Asked; // cannot be sealed
    expect(await perform('job-1', broken, noor)).toMatchObject({
      ok: false,
      refusal: { code: 'bug' },
    });
    expect((await storage.log('job-1')).entries).toHaveLength(1);
    expect((await perform('job-1', hold, noor)).ok).toBe(true);
  });

  test('gives the state that its log adds up to, whichever tab wrote what', async () => {
    const turn = fc.record({ tab: fc.nat(2), hold: fc.boolean() });
    await fc.assert(
      fc.asyncProperty(fc.array(turn, { maxLength: 12 }), async (turns) => {
        const storage = createMemoryStorage();
        // Tabs of one device, and one of another device on the same storage.
        const tabs = [performOn(storage), performOn(storage), performOn(storage, 'tablet-b')];
        await tabs[0]?.('job-1', box, noor);
        for (const { tab, hold: isHold } of turns) {
          const done = await tabs[tab]?.('job-1', isHold ? hold : resume, noor);
          const { entries, plan } = await storage.log('job-1');
          if (done?.ok) expect(done.value.state).toEqual(replay(entries, plan));
          const row = await storage.row('job-1');
          expect(verifyLog(entries, { job: 'job-1', heads: row?.heads ?? [] }).ok).toBe(true);
        }
      }),
      { numRuns: 40 },
    );
  });
});
