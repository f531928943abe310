/** Reach-back over the demo shop: which bikes a wrench in doubt concerns, whom they belong to, and that they were called back. */

import { beforeAll, describe, expect, test } from 'vitest';
import { replay, standingOfStep } from '../../src/engine/job';
import type { BikeInDoubt, ReachedBack } from '../../src/state';
import { type Doubt, doubtsOf, type WrenchTool } from '../../src/state/tool-doubts';
import type { Storage } from '../../src/storage/contract';
import { createMemoryStorage } from '../../src/storage/memory/memory-storage';
import { createTestApp, must, settled, type TestApp } from '../support/test-app';

const today = '2026-11-25';

let shop: TestApp;
/** Jobs whose logs were read, in order. */
const read: string[] = [];

beforeAll(async () => {
  shop = createTestApp({ storage: watched(createMemoryStorage()) });
  must(await shop.app.openDemoShop());
  shop.app.session.getState().come('petra');
  await settled();
}, 60_000); // a whole demo, perhaps beside other tests

function watched(storage: Storage): Storage {
  return {
    ...storage,
    log: (job) => {
      read.push(job);
      return storage.log(job);
    },
  };
}

function wrenchOf(id: string): WrenchTool {
  const tool = shop.app.tools.getState().rows.find((row) => row.id === id);
  if (tool?.kind !== 'wrench') throw new Error(`no wrench ${id}`);
  return tool;
}

function lastDoubt(id: string): Doubt {
  return doubtsOf(wrenchOf(id)).at(-1) ?? missing(`doubt about ${id}`);
}

async function reached(id: string): Promise<ReachedBack> {
  return must(await shop.app.reachBackFor(wrenchOf(id), lastDoubt(id)));
}

async function bike(id: string, isWanted: (bike: BikeInDoubt) => boolean): Promise<BikeInDoubt> {
  return (await reached(id)).bikes.find(isWanted) ?? missing('such bike');
}

function missing(what: string): never {
  throw new Error(`there is no ${what}`);
}

/** As if the tester had shown less than the wrench at each of its points, by this share. */
function showingMore(id: string, deviation: number) {
  const { lowest, highest } = wrenchOf(id).wrench;
  return [lowest, highest * 0.6, highest].map((at) => ({ at, deviation }));
}

async function calibrate(id: string, found: ReturnType<typeof showingMore>) {
  const adjusted = { how: 'Adjusted', points: showingMore(id, 0.001) };
  must(await shop.app.calibrate({ wrench: id, on: today, dueOn: '2027-11-25', found, adjusted }));
  await settled();
}

describe('after a drop that nobody has measured', () => {
  test('every joint tightened with it is in doubt, with whose bike it is', async () => {
    const { bikes, looked } = await reached('E');
    expect(bikes.map(({ frameNumber }) => frameNumber)).toEqual(['LF29-203871']);
    const [gone] = bikes;
    expect(gone).toMatchObject({
      status: 'handed-over',
      handedOverAt: expect.stringMatching(/^2026-11-13/),
      customer: { name: 'Jo Marlowe', contact: '01632 960041' },
    });
    expect(looked).toEqual({ bikes: 1, joints: gone?.joints.length });
    for (const joint of gone?.joints ?? []) {
      expect(joint).toMatchObject({ verdict: 'undecided', wrench: { id: 'E' }, onScale: 5 });
      expect(joint.probabilityOutside).toBeUndefined();
    }
  });

  test('only jobs on which it was used are read, and it tells how far it is', async () => {
    const { rows } = shop.app.rack.getState();
    const used = rows.filter(({ wrenchDays }) => wrenchDays.some(([id]) => id === 'E'));
    expect(used.length).toBeGreaterThan(0);
    expect(used.length).toBeLessThan(rows.length / 2);
    read.length = 0;
    const told: (readonly [number, number])[] = [];
    must(
      await shop.app.reachBackFor(wrenchOf('E'), lastDoubt('E'), (done, of) =>
        told.push([done, of]),
      ),
    );
    expect([...read].sort()).toEqual(used.map(({ job }) => job).sort());
    expect(told).toEqual(used.map((_, index) => [index + 1, used.length]));
  });

  test('a customer who was erased is not named any more', async () => {
    const { job } = await bike('E', () => true);
    const { entries, plan } = await shop.storage.log(job);
    const digest = replay(entries, plan).handedOver?.customer ?? '';
    const kept = await shop.storage.customers.get(digest);
    must(await shop.app.eraseCustomer(digest));
    expect((await bike('E', () => true)).customer).toBeUndefined();
    if (kept !== undefined) await shop.storage.customers.put(kept);
  });
});

describe('after a calibration', () => {
  test('that found it a little out, joints with room to spare stay off the list', async () => {
    const before = wrenchOf('C').wrench;
    await calibrate('C', showingMore('C', 0.045)); // outside ± 4 % (ISO 6789-1:2017), by little
    const { bikes, looked } = await reached('C');
    expect(before.calibratedOn < lastDoubt('C').on).toBe(true);
    expect(looked.joints).toBeGreaterThan(0);
    expect(bikes.flatMap(({ joints }) => joints).length).toBeLessThan(looked.joints);
  });

  test('that found it far out, bikes handed over come first, the worst joint first', async () => {
    await calibrate('B', showingMore('B', 0.18));
    const { bikes } = await reached('B');
    const gone = bikes.map(({ status }) => status === 'handed-over');
    expect(gone).toEqual([...gone].sort((a, b) => Number(b) - Number(a)));
    expect(gone.filter(Boolean)).toHaveLength(2);
    expect(gone).toContain(false);
    for (const { joints } of bikes) {
      const classes = joints.map((joint) => joint.class);
      expect(classes).toEqual([...classes].sort());
      for (const { setPoint, low = 0, high = 0, wrench, verdict, on } of joints) {
        expect(wrench.id).toBe('B');
        expect(verdict).not.toBe('inside');
        // Deviation a = (set − true) / true, so the true torque is set / (1 + a): ISO 6789-1, from memory.
        expect(low).toBeCloseTo(setPoint / 1.18, 6);
        expect(high).toBeCloseTo(setPoint / 1.18, 6);
        expect(on >= lastDoubt('B').since.on).toBe(true);
      }
    }
  });

  test('the wrench itself goes on with its new points, counted from nought', () => {
    expect(wrenchOf('B').wrench).toMatchObject({ operations: 0, calibratedOn: today });
  });
});

describe('calling back', () => {
  test('a bike that has gone home gets it into its record, once, and stays on the list', async () => {
    const gone = await bike('B', ({ status }) => status === 'handed-over');
    const call = {
      wrench: 'B',
      doubt: lastDoubt('B').key,
      job: gone.job,
      joints: gone.joints.map(({ joint, step }) => ({ joint, step })),
      text: 'Called back. Coming in on Friday.',
    };
    must(await shop.app.callBack(call));
    must(await shop.app.callBack(call));
    await settled();
    const { entries, plan } = await shop.storage.log(gone.job);
    const said = replay(entries, plan).amendments.filter(({ text }) => text === call.text);
    expect(said).toMatchObject([{ by: 'petra' }]);
    const again = await bike('B', ({ job }) => job === gone.job);
    expect(again.calledBack[0]).toMatchObject({ by: 'petra', how: 'record-amended' });
    expect(again.joints).toHaveLength(gone.joints.length);
  });

  test('a bike that is still here gets its joints reopened, and leaves the list', async () => {
    const here = await bike('B', ({ status }) => status === 'to-be-checked');
    must(
      await shop.app.callBack({
        wrench: 'B',
        doubt: lastDoubt('B').key,
        job: here.job,
        joints: here.joints.map(({ joint, step }) => ({ joint, step })),
        text: 'Wrench B was found outside its tolerance.',
      }),
    );
    await settled();
    const { entries, plan } = await shop.storage.log(here.job);
    const state = replay(entries, plan);
    for (const { step = '' } of here.joints) expect(standingOfStep(state, step)).toBe('reopened');
    const { bikes } = await reached('B');
    expect(bikes.map(({ job }) => job)).not.toContain(here.job);
    expect(wrenchOf('B').history?.at(-1)).toMatchObject({
      kind: 'called-back',
      how: 'steps-reopened',
      job: here.job,
      by: 'petra',
    });
  });

  test('is refused where the job is on hold, and then nothing is noted', async () => {
    const held = shop.app.rack.getState().rows.find(({ status }) => status === 'on-hold');
    const { entries, plan } = await shop.storage.log(held?.job ?? '');
    const done = Object.entries(replay(entries, plan).steps).find(
      ([, { standing }]) => standing === 'done',
    );
    const notes = wrenchOf('B').history?.length;
    const answer = await shop.app.callBack({
      wrench: 'B',
      doubt: lastDoubt('B').key,
      job: held?.job ?? '',
      joints: [{ joint: 'any', step: done?.[0] }],
      text: 'Wrench B was found outside its tolerance.',
    });
    expect(answer).toMatchObject({ ok: false, refusal: { code: 'job-on-hold' } });
    await settled();
    expect(wrenchOf('B').history).toHaveLength(notes ?? -1);
  });
});
