/** Builds whole bikes tap by tap on the real storage, and after each tap writes the same entries in the barest way. */

import type { JobPlan } from '../../../src/engine/job';
import type { Wrench } from '../../../src/engine/torque';
import { createClock } from '../../../src/platform/clock';
import { newId } from '../../../src/platform/ids';
import {
  type Bench,
  createPerform,
  does,
  type Perform,
  type Performed,
  workThrough,
} from '../../../src/state';
import type { Storage } from '../../../src/storage/contract';
import { createDexieStorage } from '../../../src/storage/dexie/dexie-storage';
import { appendBare, openBareStores, putBare } from './bare-put';

export interface TapsAsked {
  readonly plan: JobPlan;
  readonly wrenches: readonly Wrench[];
  readonly jobs: number;
}

/** Milliseconds of one tap, of the engine's part in it, and of the two bare writes that followed it. */
export interface TapTimed {
  readonly tap: number;
  readonly engine: number;
  readonly put: number;
  readonly append: number;
  /** How many entries the tap wrote. */
  readonly entries: number;
}

declare global {
  interface Window {
    timeTaps(asked: TapsAsked): Promise<readonly TapTimed[]>;
  }
}

window.timeTaps = async ({ plan, wrenches, jobs }) => {
  const storage = createDexieStorage('taps');
  const bare = await openBareStores('bare');
  const clock = createClock();
  const timed: TapTimed[] = [];
  let engine = 0;
  const changeJob: Storage['changeJob'] = (job, seen, work) =>
    storage.changeJob(job, seen, (held) => {
      const began = performance.now();
      const answer = work(held);
      engine = performance.now() - began;
      return answer;
    });
  const ports = { storage: { changeJob }, clock, device: newId() };
  const perform = timedPerform(createPerform(ports), async (performed, tap) => {
    timed.push({ tap, engine, ...(await timeBareWrites(bare, storage, performed)) });
  });
  for (let n = 0; n < jobs; n += 1) {
    const person = { id: 'builder', roles: ['mechanic'] as const };
    const bench: Bench = { storage, perform, person, wrenches, today: clock.today };
    const job = newId();
    await does(bench, job, { kind: 'receive-box', bike: plan.bike });
    await does(bench, job, { kind: 'open-job', plan });
    await workThrough(bench, job);
  }
  return timed;
};

/** From the tap to the answer that it is on the disk. */
function timedPerform(
  perform: Perform,
  onDone: (performed: Performed, tap: number) => Promise<void>,
): Perform {
  return async (...asked) => {
    const tapped = performance.now();
    const done = await perform(...asked);
    const tap = performance.now() - tapped;
    if (done.ok) await onDone(done.value, tap);
    return done;
  };
}

async function timeBareWrites(
  bare: IDBDatabase,
  storage: Storage,
  { entries }: Performed,
): Promise<Omit<TapTimed, 'tap' | 'engine'>> {
  const [first] = entries;
  const row = first && (await storage.row(first.job));
  if (first === undefined || row === undefined) throw new Error('a tap leaves an entry and a row');
  const put = await duration(() => putBare(bare, first));
  const append = await duration(() => appendBare(bare, entries, row));
  return { put, append, entries: entries.length };
}

async function duration(work: () => Promise<void>): Promise<number> {
  const began = performance.now();
  await work();
  return performance.now() - began;
}
