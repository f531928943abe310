/** Builds whole bikes tap by tap on the real storage, and after each tap makes one bare put of the same entries. */

import type { Entry } from '../../../src/engine/integrity';
import type { JobPlan } from '../../../src/engine/job';
import type { Wrench } from '../../../src/engine/torque';
import { createClock } from '../../../src/platform/clock';
import { newId } from '../../../src/platform/ids';
import {
  type Bench,
  createPerform,
  does,
  type Perform,
  type PerformPorts,
  workThrough,
} from '../../../src/state';
import { createDexieStorage } from '../../../src/storage/dexie/dexie-storage';
import { openBareStore, putBare } from './bare-put';

export interface TapsAsked {
  readonly plan: JobPlan;
  readonly wrenches: readonly Wrench[];
  readonly jobs: number;
}

/** Milliseconds, tap by tap; the put at the same place followed that tap. */
export interface TapsTimed {
  readonly taps: readonly number[];
  readonly puts: readonly number[];
  /** Taps that wrote one entry: the same number of entries as the put. */
  readonly singleTaps: readonly number[];
  readonly entries: number;
}

declare global {
  interface Window {
    timeTaps(asked: TapsAsked): Promise<TapsTimed>;
  }
}

window.timeTaps = async ({ plan, wrenches, jobs }) => {
  const storage = createDexieStorage('taps');
  const bare = await openBareStore('bare');
  const clock = createClock();
  const timed = {
    taps: [] as number[],
    puts: [] as number[],
    singleTaps: [] as number[],
    entries: 0,
  };

  const perform = timedPerform({ storage, clock, device: newId() }, timed, (entry) =>
    putBare(bare, entry),
  );
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

/** From the tap to the answer that it is on the disk; then one bare put of the tap's first entry. */
function timedPerform(
  ports: PerformPorts,
  timed: { taps: number[]; puts: number[]; singleTaps: number[]; entries: number },
  put: (entry: Entry) => Promise<void>,
): Perform {
  const perform = createPerform(ports);
  return async (...asked) => {
    const tapped = performance.now();
    const done = await perform(...asked);
    const tap = performance.now() - tapped;
    const [first] = done.ok ? done.value.entries : [];
    if (!done.ok || first === undefined) return done;

    const began = performance.now();
    await put(first);
    timed.puts.push(performance.now() - began);
    timed.taps.push(tap);
    if (done.value.entries.length === 1) timed.singleTaps.push(tap);
    timed.entries += done.value.entries.length;
    return done;
  };
}
