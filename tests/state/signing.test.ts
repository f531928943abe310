/** Signing: who signed what, over which heads; and everything the app refuses to sign. */

import { beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { topicsToTell } from '../../src/engine/job';
import { does, loadJob, workThrough } from '../../src/state';
import { createMemoryStorage } from '../../src/storage/memory/memory-storage';
import {
  checkersPin,
  mechanicsPin,
  openShopWithAJob,
  type ShopWithAJob,
} from '../support/shop-with-a-job';
import { must, settled } from '../support/test-app';

let shop: ShopWithAJob;

const at = (person: { readonly id: string }) => shop.app.session.getState().come(person.id);
const refusalOf = async (asked: Promise<{ ok: boolean; refusal?: unknown }>) =>
  (await asked).refusal;

describe('a finished build', () => {
  beforeAll(async () => {
    shop = await openShopWithAJob();
    await workThrough(shop.bench, shop.job);
    await settled();
  });

  test('is signed by its builder, checked by another and handed over, and each signature holds', async () => {
    const { app, job } = shop;
    at(shop.mechanic);
    const wrong = app.sign({ job, meaning: 'built', pin: '999998' });
    expect(await refusalOf(wrong)).toEqual({ code: 'pin-wrong' });
    must(await app.sign({ job, meaning: 'built', pin: mechanicsPin }));

    const ownCheck = app.sign({ job, meaning: 'checked', pin: mechanicsPin });
    expect(await refusalOf(ownCheck)).toMatchObject({ code: 'builder-cannot-check' });
    at(shop.checker);
    const checked = must(await app.sign({ job, meaning: 'checked', pin: checkersPin }));

    const handing = {
      job,
      pin: checkersPin,
      customer: { name: ' Jo Marlowe ', contact: '01632 960041' },
      told: topicsToTell(checked),
      firstCheck: '2027-01-06',
      strokes: '<svg xmlns="http://www.w3.org/2000/svg"/>',
    };
    const untold = app.handOver({ ...handing, told: [] });
    expect(await refusalOf(untold)).toMatchObject({ code: 'customer-not-told' });
    const done = must(await app.handOver(handing));

    const customer = await app.customerOf(done.handedOver?.customer ?? '');
    expect(customer).toMatchObject({ name: 'Jo Marlowe', contact: '01632 960041' });
    const strokes = await app.photo(done.signatures.at(-1)?.strokes ?? '');
    expect(new TextDecoder().decode(strokes?.bytes)).toBe(handing.strokes);
    const found = (await app.checkSignatures(job)).map(({ meaning, finding }) => [
      meaning,
      finding,
    ]);
    expect(found).toEqual([
      ['built', 'good'],
      ['checked', 'good'],
      ['received', 'good'],
    ]);
    expect((await app.checkLog(job)).ok).toBe(true);
  });

  test('leaves no word of the customer in its log', async () => {
    const { entries } = await shop.storage.log(shop.job);
    expect(JSON.stringify(entries)).not.toMatch(/Marlowe|01632/);
  });

  test('can be without its customer and is still whole', async () => {
    const { app, job } = shop;
    const record = await loadJob(shop.storage, job);
    const digest = record?.state.handedOver?.customer ?? '';
    expect(await app.customerOf(digest)).toBeDefined();
    must(await app.eraseCustomer(digest));
    expect(await app.customerOf(digest)).toBeUndefined();
    expect((await app.checkLog(job)).ok).toBe(true);
  });

  test('is sealed: nothing more is signed', async () => {
    const again = shop.app.sign({ job: shop.job, meaning: 'built', pin: checkersPin });
    expect(await refusalOf(again)).toEqual({ code: 'record-sealed' });
  });
});

describe('a signature', () => {
  beforeEach(async () => {
    shop = await openShopWithAJob();
  });

  test('needs the work to be done', async () => {
    const early = shop.app.sign({ job: shop.job, meaning: 'built', pin: mechanicsPin });
    expect(await refusalOf(early)).toMatchObject({ code: 'contents-unchecked' });
  });

  test('of a job nobody knows is refused', async () => {
    const stray = shop.app.sign({ job: 'no-such-job', meaning: 'built', pin: mechanicsPin });
    expect(await refusalOf(stray)).toEqual({ code: 'job-missing' });
  });

  test('is made again when somebody wrote between reading and signing', async () => {
    const storage = createMemoryStorage();
    let meddle: (() => Promise<void>) | undefined;
    shop = await openShopWithAJob({
      storage: {
        ...storage,
        async row(job) {
          const row = await storage.row(job);
          const meddling = meddle;
          meddle = undefined;
          await meddling?.();
          return row;
        },
      },
    });
    const { app, bench, job } = shop;
    await workThrough(bench, job);
    meddle = async () => {
      const finding = { finding: 'f1', severity: 'tell-customer' as const, text: 'A scratch.' };
      await does(bench, job, { kind: 'raise-finding', ...finding });
    };
    const state = must(await app.sign({ job, meaning: 'built', pin: mechanicsPin }));
    expect(state.findings).toHaveLength(1);
    expect((await app.checkSignatures(job)).map(({ finding }) => finding)).toEqual(['good']);
  });

  test('taken from an earlier one, or from somebody else, is found', async () => {
    const { app, bench, job, storage, mechanic, checker } = shop;
    let state = await workThrough(bench, job);
    must(await app.sign({ job, meaning: 'built', pin: mechanicsPin }));
    const [step] = state.plan?.steps ?? [];
    await does(bench, job, { kind: 'reopen-step', step: step?.id ?? '', reason: 'looked odd' });
    state = await workThrough(bench, job);
    const jws = state.signatures[0]?.jws ?? '';
    const heads = (await loadJob(storage, job))?.heads ?? [];
    const old = { meaning: 'built' as const, name: mechanic.name, heads, jws };
    await does(bench, job, { kind: 'sign-built', signing: old });
    const now = (await loadJob(storage, job))?.heads ?? [];
    const borrowed = { meaning: 'checked' as const, name: checker.name, heads: now, jws };
    await does({ ...bench, person: checker }, job, { kind: 'sign-checked', signing: borrowed });
    const found = (await app.checkSignatures(job)).map(({ finding }) => finding);
    expect(found).toEqual(['good', 'signature-of-something-else', 'signature-wrong']);
  });
});
