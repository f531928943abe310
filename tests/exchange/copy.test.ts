/** A copy as the first version wrote it: read into an empty shop only when all of it is true, and loses nothing. */

import { beforeAll, describe, expect, test } from 'vitest';
import { readCopy } from '../../src/exchange/read-copy';
import { publicKeysIn } from '../../src/state/known-keys';
import { writeCopy } from '../support/older-copy';
import { openShopWithAJob } from '../support/shop-with-a-job';
import { createTestApp, must, settled, type TestApp } from '../support/test-app';

let demo: TestApp;
let text: string;

beforeAll(async () => {
  demo = createTestApp();
  must(await demo.app.openDemoShop());
  await settled();
  await noteOfEachKind(demo);
  text = writeCopy({
    holdings: await demo.storage.holdings(),
    publicKeys: publicKeysIn(await demo.storage.keys.all()),
    at: demo.clock.now().claimed,
  });
}, 30_000); // a whole demo, perhaps beside other tests

/** A wrench found out and adjusted with a bike called back, one that is away, and an adapter that has retired. */
async function noteOfEachKind({ app }: TestApp): Promise<void> {
  app.session.getState().come('petra');
  const days = { on: '2026-11-25', dueOn: '2027-11-25' };
  const found = [{ at: 14, deviation: 0.07, uncertainty: 0.005 }];
  const adjusted = { how: 'Adjusted', points: [{ at: 14, deviation: 0.001 }] };
  must(await app.calibrate({ wrench: 'B', ...days, reference: 'Q-1', found, adjusted }));
  const gone = app.rack.getState().rows.find(({ status }) => status === 'handed-over');
  const call = { wrench: 'B', doubt: '0', joints: [{ joint: 'saddle-clamp' }], text: 'Called.' };
  must(await app.callBack({ ...call, job: gone?.job ?? '' }));
  must(await app.changeCondition({ wrench: 'C', to: 'away', on: days.on, reason: 'Lent out' }));
  must(await app.retireAdapter('crowfoot-10', true));
  await settled();
}

interface LooseCopy {
  readonly jobs: { readonly entries: { readonly event: Record<string, unknown> }[] }[];
  readonly plans: { readonly plan: Record<string, unknown> }[];
  readonly blobs: Record<string, unknown>[];
  readonly customers: Record<string, unknown>[];
  readonly people: Record<string, unknown>[];
}

/** The copy with one thing in it changed. */
function changed(change: (copy: LooseCopy) => void): string {
  const copy = JSON.parse(text) as LooseCopy; // tests reach into it freely
  change(copy);
  return JSON.stringify(copy);
}

function readsAs(content: string) {
  const read = readCopy(content);
  return read.ok ? 'read' : read.refusal;
}

describe('a copy', () => {
  test('goes into an empty shop with the same heads, photos and customers, and its signatures still hold', async () => {
    const fresh = createTestApp({ device: 'tablet-b' });
    expect(must(await fresh.app.restoreOlderCopy(new Blob([text])))).toBe(
      demo.app.rack.getState().rows.length,
    );
    await settled();
    const heads = (shop: TestApp) =>
      Object.fromEntries(shop.app.rack.getState().rows.map((row) => [row.job, row]));
    expect(heads(fresh)).toEqual(heads(demo));
    const gone = fresh.app.rack.getState().rows.filter(({ status }) => status === 'handed-over');
    for (const { job } of gone) {
      const findings = (await fresh.app.checkSignatures(job)).map(({ finding }) => finding);
      expect(findings).toEqual(['good', 'good', 'good']);
    }
    const before = await demo.storage.holdings();
    const after = await fresh.storage.holdings();
    expect(after.customers).toEqual(before.customers);
    expect(after.blobs).toEqual(before.blobs);
    expect(after.plans).toEqual(before.plans);
    expect(after.tools).toEqual(before.tools);
  });

  test('does not go into a shop that has jobs', async () => {
    const own = await openShopWithAJob();
    const refused = await own.app.restoreOlderCopy(new Blob([text]));
    expect(refused).toMatchObject({ ok: false, refusal: { code: 'shop-not-empty' } });
  });

  test('carries the seal code of the device that wrote it', async () => {
    const job = demo.app.rack.getState().rows[0]?.job ?? '';
    const code = must(await demo.app.sealCode(job));
    expect(code.split('.')).toHaveLength(3);
  });
});

describe('a copy that is not true is refused as a whole', () => {
  test.each<[string, (copy: LooseCopy) => void, object]>([
    [
      'one letter of one entry',
      (copy) => {
        Object.assign(copy.jobs[0]?.entries[0]?.event ?? {}, { due: '2030-01-01T10:00' });
      },
      { code: 'copy-log-damaged', damage: { code: 'entry-changed' } },
    ],
    [
      'a log cut off at its end',
      (copy) => void copy.jobs[5]?.entries.pop(),
      { code: 'copy-log-damaged' },
    ],
    [
      'a plan with another figure',
      (copy) => {
        Object.assign(copy.plans[0]?.plan ?? {}, { market: 'us' });
      },
      { code: 'copy-digest-wrong' },
    ],
    ['a plan left out', (copy) => void copy.plans.splice(0), { code: 'copy-plan-missing' }],
    [
      'a drawn signature of somebody else',
      (copy) => {
        Object.assign(copy.blobs[0] ?? {}, { base64: 'AAAA' });
      },
      { code: 'copy-digest-wrong' },
    ],
    [
      'a customer by another name',
      (copy) => {
        Object.assign(copy.customers[0] ?? {}, { name: 'Somebody Else' });
      },
      { code: 'copy-digest-wrong' },
    ],
    [
      'a person without a name',
      (copy) => {
        Object.assign(copy.people[0] ?? {}, { name: 7 });
      },
      { code: 'copy-malformed', place: 'people.0.name' },
    ],
  ])('%s', (_, change, expected) => {
    expect(readsAs(changed(change))).toMatchObject(expected);
  });

  test.each([
    ['no JSON', 'not a copy', { code: 'copy-not-readable' }],
    ['another JSON', '{"a":1}', { code: 'copy-not-readable' }],
    [
      'a later version',
      '{"format":"standbook-copy","version":2}',
      { code: 'copy-of-another-version', version: 2 },
    ],
  ])('%s', (_, content, expected) => {
    expect(readsAs(content)).toEqual(expected);
  });
});
