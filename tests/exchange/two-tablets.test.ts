/** Two tablets that were apart exchange record files both ways and end equal, whatever they did and in whatever order. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { digestOfBytes, verifyLog } from '../../src/engine/integrity';
import type { Asked } from '../../src/engine/job';
import type { Extras } from '../../src/state';
import { bikeFrom, mountainBike, townBike } from '../support/bikes';
import { createTablet, heldBy, type Tablet } from '../support/tablets';

const noor = { id: 'noor', roles: ['mechanic'] } as const;
const seed = 20261125;
/** Milliseconds: each run writes, verifies and joins some dozen files. */
const patience = 60_000;

const jobs = ['job-1', 'job-2', 'job-3'] as const;

/** What somebody does at one of the tablets; where the log does not allow it, nothing happens. */
const anyWork = fc.record({
  turn: fc.constant('work' as const),
  tablet: fc.nat(2),
  job: fc.constantFrom(...jobs),
  what: fc.constantFrom('receive', 'due', 'describe', 'photo', 'hold', 'resume'),
  note: fc.nat(1000),
  minutes: fc.integer({ min: -600, max: 600 }),
});
const anyMeeting = fc.record({
  turn: fc.constant('meet' as const),
  from: fc.nat(2),
  to: fc.nat(2),
  jobs: fc.option(fc.subarray([...jobs], { minLength: 1 })),
});
const anyHistory = fc.array(fc.oneof({ weight: 4, arbitrary: anyWork }, anyMeeting), {
  minLength: 4,
  maxLength: 22,
});

type Work = typeof anyWork extends fc.Arbitrary<infer T> ? T : never;

function askedBy({ what, note, job }: Work): { asked: Asked; extras?: Extras } {
  const bike = bikeFrom(job === 'job-1' ? mountainBike : townBike, { colour: `shade ${note}` });
  if (what === 'due')
    return { asked: { kind: 'set-due', due: `2026-12-0${1 + (note % 9)}T10:00` } };
  if (what === 'describe') return { asked: { kind: 'describe-bike', bike } };
  if (what === 'hold') return { asked: { kind: 'hold-job', for: 'part', note: `part ${note}` } };
  if (what === 'resume') return { asked: { kind: 'resume-job' } };
  if (what === 'receive') return { asked: { kind: 'receive-box', bike } };
  const bytes = Uint8Array.of(0xff, 0xd8, 0xff, note % 256, note >> 8);
  const blob = { digest: digestOfBytes(bytes), type: 'image/jpeg', bytes };
  return {
    asked: { kind: 'receive-box', bike, photos: [blob.digest] },
    extras: { blobs: [blob] },
  };
}

async function meet(from: Tablet, to: Tablet, only: readonly string[] | null): Promise<void> {
  if (from === to) return;
  const what = only === null ? { withCustomers: true } : { jobs: only, withCustomers: false };
  await to.takeIn(await from.write(what));
}

describe('tablets that were apart', () => {
  test(
    `end equal after any history of work and meetings (seed ${seed})`,
    async () => {
      let entries = 0;
      let forks = 0;
      await fc.assert(
        fc.asyncProperty(anyHistory, async (history) => {
          const tablets = ['tablet-a', 'tablet-b', 'tablet-c'].map((name) => createTablet(name));
          const [a, b, c] = tablets as [Tablet, Tablet, Tablet];
          for (const job of ['job-1', 'job-2'])
            await a.perform(job, { kind: 'receive-box', bike: bikeFrom(townBike) }, noor);
          for (const tablet of [b, c]) await meet(a, tablet, null);
          for (const turn of history) {
            if (turn.turn === 'meet') {
              await meet(tablets[turn.from] ?? a, tablets[turn.to] ?? a, turn.jobs);
              continue;
            }
            const tablet = tablets[turn.tablet] ?? a;
            tablet.clock.pass(turn.minutes);
            const { asked, extras } = askedBy(turn);
            await tablet.perform(turn.job, asked, noor, extras);
          }
          for (const [from, to] of [
            [a, b],
            [c, b],
            [b, a],
            [b, c],
          ] as const)
            await meet(from, to, null);
          const held = await heldBy(a);
          expect(await heldBy(b)).toEqual(held);
          expect(await heldBy(c)).toEqual(held);
          for (const { job, heads } of held.rows) {
            const log = verifyLog((await a.storage.log(job)).entries, { job, heads });
            expect(log.ok).toBe(true);
            if (log.ok) forks += log.value.forks.length;
          }
          entries += held.entries.length;
        }),
        { seed, numRuns: 40 },
      );
      // Otherwise the histories were too tame to show anything.
      expect(entries).toBeGreaterThan(100);
      expect(forks).toBeGreaterThan(5);
    },
    patience,
  );

  test('tell what was new, and the same file again brings nothing', async () => {
    const [a, b] = [createTablet('tablet-a'), createTablet('tablet-b')];
    await a.perform('job-1', { kind: 'receive-box', bike: bikeFrom(mountainBike) }, noor);
    await a.perform('job-2', { kind: 'receive-box', bike: bikeFrom(townBike) }, noor);
    const first = await a.write();
    const none = { refused: [], grown: 0, known: 0 };
    expect(await b.takeIn(first)).toEqual({ ...none, fresh: 2, entries: 2 });
    expect(await b.takeIn(first)).toEqual({ ...none, fresh: 0, known: 2, entries: 0 });
    await a.perform('job-1', { kind: 'set-due', due: '2026-12-01T10:00' }, noor);
    await b.perform('job-1', { kind: 'hold-job', for: 'part', note: 'pedals' }, noor);
    const looked = await b.look(await a.write());
    expect(looked.good.map(({ job, standing, added }) => [job, standing, added])).toEqual([
      ['job-1', 'apart', 1],
      ['job-2', 'same', 0],
    ]);
    expect(await b.takeIn(await a.write())).toEqual({
      ...none,
      fresh: 0,
      grown: 1,
      known: 1,
      entries: 1,
    });
    expect((await b.storage.row('job-1'))?.heads).toHaveLength(2);
  });

  test('a tablet that was copied and wrote two histories is refused, and what is held stays whole', async () => {
    const [a, twin, b] = ['tablet-a', 'tablet-a', 'tablet-b'].map((name) => createTablet(name)) as [
      Tablet,
      Tablet,
      Tablet,
    ];
    await a.perform('job-1', { kind: 'receive-box', bike: bikeFrom(mountainBike) }, noor);
    await twin.takeIn(await a.write());
    await a.perform('job-1', { kind: 'set-due', due: '2026-12-01T10:00' }, noor);
    await twin.perform('job-1', { kind: 'set-due', due: '2026-12-02T10:00' }, noor);
    await b.takeIn(await a.write());
    const before = await heldBy(b);
    const taken = await b.takeIn(await twin.write());
    expect(taken.refused).toMatchObject([
      { job: 'job-1', refusal: { code: 'record-log-damaged', damage: { code: 'seq-forked' } } },
    ]);
    expect(await heldBy(b)).toEqual(before);
  });
});
