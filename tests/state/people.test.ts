/** People and their PINs: wrong ones are noted, lost ones are given anew by a supervisor, and what was signed stays good. */

import { beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { unconfirmedJoints } from '../../src/engine/job';
import { loadJob, workThrough } from '../../src/state';
import {
  checkersPin,
  mechanicsPin,
  openShopWithAJob,
  type ShopWithAJob,
} from '../support/shop-with-a-job';
import { must, settled } from '../support/test-app';

/** Milliseconds: PINs are stretched, which takes its time on a busy machine. */
const patience = 60_000;

let shop: ShopWithAJob;

async function historyOf(id: string) {
  return (await shop.storage.people.get(id))?.history ?? [];
}

describe('a wrong PIN', () => {
  beforeAll(async () => {
    shop = await openShopWithAJob();
  }, patience);

  test(
    'is noted with who was at the stand, and the third says how long the next waits',
    async () => {
      const { app, checker, mechanic } = shop;
      const refusals = [];
      for (const pin of ['000001', '000002', '000003', checkersPin]) {
        const came = await app.comeWithPin(checker.id, pin);
        refusals.push(came.ok ? 'came' : came.refusal);
      }
      expect(refusals).toEqual([
        { code: 'pin-wrong' },
        { code: 'pin-wrong' },
        { code: 'pin-wrong', seconds: 30 },
        { code: 'pin-waits', seconds: expect.any(Number) },
      ]);
      expect(app.session.getState().person).toBe(mechanic.id);
      const wrong = (await historyOf(checker.id)).filter(({ kind }) => kind === 'wrong-pin');
      expect(wrong).toHaveLength(3);
      expect(wrong[0]).toMatchObject({ by: mechanic.id, at: shop.clock.now() });
    },
    patience,
  );

  test(
    'of one person keeps nobody else waiting, and the right one comes to the stand',
    async () => {
      const { app, mechanic } = shop;
      app.session.getState().leave();
      must(await app.comeWithPin(mechanic.id, mechanicsPin));
      expect(app.session.getState().person).toBe(mechanic.id);
    },
    patience,
  );
});

describe('a lost PIN', () => {
  beforeEach(async () => {
    shop = await openShopWithAJob();
  }, patience);

  const lost = { pin: '735102', reason: 'Forgotten on holiday.', supervisorPin: checkersPin };

  test(
    'is given anew by a supervisor with a reason; old signatures stay good, the old PIN does not',
    async () => {
      const { app, bench, job, mechanic, checker } = shop;
      await workThrough(bench, job);
      must(await app.sign({ job, meaning: 'built', pin: mechanicsPin }));
      must(await app.issuePin({ ...lost, person: mechanic.id, supervisor: checker.id }));
      expect((await app.checkSignatures(job)).map(({ finding }) => finding)).toEqual(['good']);
      expect(await app.comeWithPin(mechanic.id, mechanicsPin)).toMatchObject({ ok: false });
      must(await app.comeWithPin(mechanic.id, lost.pin));
      expect((await historyOf(mechanic.id)).map(({ kind }) => kind)).toEqual([
        'joined',
        'new-pin',
        'wrong-pin',
      ]);
      expect((await historyOf(mechanic.id))[1]).toMatchObject({
        by: checker.id,
        reason: 'Forgotten on holiday.',
        at: shop.clock.now(),
      });
    },
    patience,
  );

  test(
    'is not given anew without a reason, by others than a supervisor, nor with a wrong PIN',
    async () => {
      const { app, mechanic, checker } = shop;
      const good = { ...lost, person: mechanic.id, supervisor: checker.id };
      const tried = async (change: Partial<typeof good>) => {
        const issued = await app.issuePin({ ...good, ...change });
        return issued.ok ? 'given' : issued.refusal.code;
      };
      expect(await tried({ reason: ' ' })).toBe('reason-missing');
      expect(await tried({ pin: '111111' })).toBe('pin-not-usable');
      expect(await tried({ supervisor: mechanic.id, supervisorPin: mechanicsPin })).toBe(
        'not-a-supervisor',
      );
      expect(await tried({ supervisorPin: '000001' })).toBe('pin-wrong');
      expect(await tried({ person: 'nobody' })).toBe('person-unknown');
      must(await app.comeWithPin(mechanic.id, mechanicsPin));
      expect((await historyOf(mechanic.id)).map(({ kind }) => kind)).toEqual(['joined']);
    },
    patience,
  );
});

describe('a person who leaves', () => {
  test(
    'keeps their public key: what they signed still verifies, and they sign no more',
    async () => {
      shop = await openShopWithAJob();
      const { app, bench, job, mechanic, checker } = shop;
      await workThrough(bench, job);
      must(await app.sign({ job, meaning: 'built', pin: mechanicsPin }));
      app.session.getState().come(checker.id);
      must(
        await app.retirePerson(mechanic.id, { supervisor: checker.id, supervisorPin: checkersPin }),
      );
      await settled();
      expect((await app.checkSignatures(job)).map(({ finding }) => finding)).toEqual(['good']);
      expect((await historyOf(mechanic.id)).at(-1)).toMatchObject({
        kind: 'left',
        by: checker.id,
      });
      const confirm = { job, joints: [], person: mechanic.id, pin: mechanicsPin };
      expect(await app.confirmJoints(confirm)).toEqual({
        ok: false,
        refusal: { code: 'person-unknown' },
      });
    },
    patience,
  );
});

describe('a second pair of eyes', () => {
  test(
    'confirms an apprentice’s joints by its own PIN while the apprentice stays at the stand',
    async () => {
      shop = await openShopWithAJob();
      const { app, bench, job, checker, storage } = shop;
      const pin = '639471';
      const byChecker = { supervisor: checker.id, supervisorPin: checkersPin };
      const learner = must(
        await app.addPerson({ name: 'Ines', roles: ['apprentice'], pin }, byChecker),
      );
      await settled();
      app.session.getState().come(learner.id);
      const state = await workThrough({ ...bench, person: learner }, job);
      const joints = unconfirmedJoints(state);
      expect(joints.length).toBeGreaterThan(3);
      expect(await app.sign({ job, meaning: 'built', pin })).toMatchObject({
        refusal: { code: 'joints-unconfirmed', joints },
      });
      const own = await app.confirmJoints({ job, joints, person: learner.id, pin });
      expect(own).toMatchObject({ refusal: { code: 'cannot-confirm-joint' } });
      const eyes = { job, joints, person: checker.id };
      expect(await app.confirmJoints({ ...eyes, pin })).toMatchObject({
        refusal: { code: 'pin-wrong' },
      });
      must(await app.confirmJoints({ ...eyes, pin: checkersPin }));
      expect(app.session.getState().person).toBe(learner.id);
      const confirmed = (await loadJob(storage, job))?.state;
      for (const joint of joints) expect(confirmed?.joints[joint]?.confirmed?.by).toBe(checker.id);
      must(await app.sign({ job, meaning: 'built', pin }));
    },
    patience,
  );
});
