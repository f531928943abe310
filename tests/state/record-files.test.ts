/** Record files in the whole app: what comes in, what never comes back, what a code proves, and a restore broken off. */

import { beforeAll, describe, expect, test } from 'vitest';
import type { SheetCode } from '../../src/state';
import { createMemoryStorage } from '../../src/storage/memory/memory-storage';
import { openShopWithAJob } from '../support/shop-with-a-job';
import { createTestApp, must, settled, type TestApp } from '../support/test-app';

let demo: TestApp;
let backup: Blob;
let sealed: string;
let code: string;

beforeAll(async () => {
  demo = createTestApp();
  must(await demo.app.openDemoShop());
  await settled();
  must(await demo.app.saveBackup('download'));
  backup = demo.saved[0]?.content ?? new Blob();
  sealed = demo.app.rack.getState().rows.find(({ status }) => status === 'handed-over')?.job ?? '';
  code = must(await demo.app.sealCode(sealed));
}, 60_000); // a whole demo, perhaps beside other tests

/** Milliseconds: a whole shop is verified and kept. */
const patience = 30_000;

describe('a backup in a shop that has work of its own', () => {
  test(
    'is not restored over it, but its records can be taken in; strangers do not stand at its stand',
    async () => {
      const own = await openShopWithAJob();
      const looked = must(await own.app.lookAtFile(backup));
      expect(await own.app.restoreBackup(looked)).toMatchObject({
        refusal: { code: 'shop-not-empty', jobs: 1 },
      });
      const before = looked.good.find(({ job }) => job === sealed);
      expect(before?.signatures.map(({ finding }) => finding)).toEqual(
        Array(3).fill('good-by-its-file'),
      );
      const count = demo.app.rack.getState().rows.length;
      expect(must(await own.app.takeInRecords(looked))).toMatchObject({
        fresh: count,
        refused: [],
      });
      await settled();
      expect(own.app.rack.getState().rows).toHaveLength(count + 1);
      expect(own.app.shop.getState().name).toBe('Test');
      const active = own.app.people.getState().rows.filter(({ active: isActive }) => isActive);
      expect(active.map(({ name }) => name)).toEqual(['Noor', 'Petra']);
      // What was signed elsewhere can be checked from now on.
      expect((await own.app.checkSignatures(sealed)).map(({ finding }) => finding)).toEqual(
        Array(3).fill('good'),
      );
      expect(await own.app.checkLog(sealed)).toMatchObject({ ok: true });
    },
    patience,
  );
});

describe('a restore that was broken off', () => {
  test(
    'is said to be, and the same file finishes it',
    async () => {
      const storage = createMemoryStorage();
      let left = 2;
      const failing = createTestApp({
        storage: {
          ...storage,
          async changeJob(job, seen, work) {
            if (left === 0) throw new Error('the tablet was switched off');
            left -= 1;
            return storage.changeJob(job, seen, work);
          },
        },
      });
      const half = must(await failing.app.lookAtFile(backup));
      await expect(failing.app.restoreBackup(half)).rejects.toThrow('switched off');
      await settled();
      expect(failing.app.backup.getState().isRestoring).toBe(true);

      const { app } = createTestApp({ storage });
      must(await app.restoreBackup(must(await app.lookAtFile(backup))));
      await settled();
      expect(app.rack.getState().rows).toEqual(demo.app.rack.getState().rows);
      const records = demo.app.rack.getState().rows.length;
      expect(app.backup.getState()).toMatchObject({ isRestoring: false, last: { records } });
    },
    patience,
  );
});

describe('a customer who was erased', () => {
  test(
    'does not come back with an older file, and is forgotten where a newer one is read',
    async () => {
      const { app, storage } = createTestApp();
      must(await app.restoreBackup(must(await app.lookAtFile(backup))));
      const { customers } = await storage.holdings();
      const [gone] = customers;
      if (gone === undefined) throw new Error('the demo has customers');
      must(await app.eraseCustomer(gone.digest));
      must(await app.takeInRecords(must(await app.lookAtFile(backup))));
      expect(await app.customerOf(gone.digest)).toBeUndefined();
      expect((await storage.holdings()).customers).toHaveLength(customers.length - 1);

      const { app: newer, saved } = createTestApp({ storage });
      must(await newer.saveBackup('download'));
      const other = createTestApp();
      must(await other.app.restoreBackup(must(await other.app.lookAtFile(backup))));
      expect(await other.app.customerOf(gone.digest)).toBeDefined();
      const file = saved[0]?.content ?? new Blob();
      must(await other.app.takeInRecords(must(await other.app.lookAtFile(file))));
      expect(await other.app.customerOf(gone.digest)).toBeUndefined();
    },
    patience,
  );

  test('is in no record that is saved for somebody else', async () => {
    must(await demo.app.saveRecords([sealed], { name: 'one', withCustomers: false }));
    const file = demo.saved.at(-1)?.content ?? new Blob();
    const { app } = createTestApp();
    const looked = must(await app.lookAtFile(file));
    expect(looked.good).toHaveLength(1);
    expect(looked.file.customers).toEqual({ customers: [], erased: [] });
    expect(looked.file.manifest.digest.count).toBe(demo.app.rack.getState().rows.length);
  });
});

describe('a record whose signers nobody here knows', () => {
  test(
    'is unaltered all the same, and its signatures are said to be unchecked',
    async () => {
      const { app, storage } = createTestApp();
      must(await app.restoreBackup(must(await app.lookAtFile(backup))));
      for (const { id } of await storage.keys.all()) await storage.keys.remove(id);
      expect(await app.checkLog(sealed)).toMatchObject({ ok: true });
      const found = (await app.checkSignatures(sealed)).map(({ finding }) => finding);
      expect(found).toEqual(Array(3).fill('signer-unknown'));
      // With somebody else's keys under their names they are wrong, and that is damage.
      const people = await storage.people.all();
      const other = await demo.storage.keys.get('device');
      await storage.keys.putAll(
        people.map(({ id }) => ({ id: `person:${id}`, value: other?.value })),
      );
      expect(await app.checkLog(sealed)).toMatchObject({
        ok: false,
        refusal: { code: 'signature-wrong' },
      });
    },
    patience,
  );
});

describe('the code of a sheet', () => {
  test('proves the record that it was printed from, here and in a file', async () => {
    const read = must(await demo.app.readCode(` ${code.slice(0, 80)}\n${code.slice(80)} `));
    expect(read).toMatchObject({ kind: 'sheet', job: sealed, isSignedHere: true });
    const sheet = read as SheetCode; // as the line above says
    expect(must(await demo.app.verifyHeld(sheet))).toMatchObject({ outcome: 'whole', beside: 0 });

    const { app } = createTestApp();
    expect(must(await app.readCode(code))).toMatchObject({ isSignedHere: false });
    expect(must(await app.verifyHeld(sheet))).toEqual({ outcome: 'not-here' });
    const looked = must(await app.lookAtFile(backup));
    expect(await app.verifyInFile(looked, sheet)).toMatchObject({ outcome: 'whole', after: 0 });
    for (const other of [
      { ...sheet, heads: ['f'.repeat(64)] },
      { ...sheet, frame: 'ANOTHER-1' },
    ])
      expect(await app.verifyInFile(looked, other)).toEqual({ outcome: 'not-what-was-printed' });
    expect(await app.verifyInFile(looked, { ...sheet, job: 'job-x' })).toEqual({
      outcome: 'not-here',
    });
  });

  test('holds an amendment for what it is: something that came after', async () => {
    const { app } = createTestApp({ device: 'tablet-c' });
    must(await app.restoreBackup(must(await app.lookAtFile(backup))));
    await settled();
    const [person] = app.people.getState().rows;
    app.session.getState().come(person?.id ?? '');
    const store = await app.openJobStore(sealed);
    await store.act({ kind: 'amend-record', text: 'Called about the first check.' });
    const sheet = must(await app.readCode(code)) as SheetCode; // a sheet's
    expect(must(await app.verifyHeld(sheet))).toMatchObject({ outcome: 'whole', after: 1 });
  });

  test.each([
    ['nothing', ''],
    ['a word', 'hello'],
    ['another token', 'eyJhbGciOiJub25lIn0.eyJzdWIiOiIxIn0.'],
    ['four parts', 'a.b.c.d'],
    [
      'heads that are none',
      `a.${Buffer.from('{"job":"j","frame":"f","head":"x","on":"2026-11-25"}').toString('base64url')}.c`,
    ],
    [
      'a day that is none',
      `a.${Buffer.from(`{"job":"j","frame":"f","head":"${'a'.repeat(64)}","on":"soon"}`).toString('base64url')}.c`,
    ],
    ['a book', 'a'.repeat(5000)],
  ])('is not %s', async (_, text) => {
    expect(await demo.app.readCode(text)).toEqual({
      ok: false,
      refusal: { code: 'code-not-readable' },
    });
  });
});

describe('the day’s page', () => {
  test('carries the digest that the backup of that moment carries too', async () => {
    const page = must(await demo.app.dayPage());
    const looked = must(await createTestApp().app.lookAtFile(backup));
    expect(looked.file.manifest.digest).toEqual({ root: page.root, count: page.count });
    const read = must(await demo.app.readCode(page.code ?? ''));
    expect(read).toMatchObject({ kind: 'day', root: page.root, isSignedHere: true });
  });
});
