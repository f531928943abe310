/** A database that an older app has filled opens in this one: nothing is lost, and its rows are brought up to date. */

import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { Dexie } from 'dexie';
import { afterEach, expect, test } from 'vitest';
import { rowOfLog } from '../../src/exchange/row-of-log';
import type { Storage } from '../../src/storage/contract';
import { schemaEpoch } from '../../src/storage/dexie/database';
import { createDexieStorage } from '../../src/storage/dexie/dexie-storage';
import { type GoldenRecord, goldenNames } from '../golden/record';

const records = goldenNames.map((name): GoldenRecord => {
  const file = new URL(`../golden/${name}.json`, import.meta.url);
  return JSON.parse(readFileSync(file, 'utf8'));
});

let opened: Storage | undefined;

afterEach(() => opened?.close());

/** The tables as each released version made them: a promise, never changed, and one more with each new version. */
const first = {
  entries: 'id, job',
  jobs: 'job, frameNumber',
  plans: 'digest',
  blobs: 'digest',
  people: 'id',
  customers: 'digest',
  tools: 'id',
  catalogue: 'id',
  settings: 'id',
  keys: 'id',
};
const released: Readonly<Record<number, Readonly<Record<string, string>>>> = {
  1: first,
  2: { ...first, jobs: 'job, frameNumber, *wrenchDays' },
  3: { ...first, jobs: 'job, frameNumber, *wrenchDays', catalogueVersions: 'id' },
};

/** Rows as version 1 kept them say not a word about wrenches. */
async function filledBy(version: number, name: string): Promise<void> {
  const old = new Dexie(name);
  old.version(version).stores(released[version] ?? {});
  for (const { job, entries, plan } of records) {
    const { wrenchDays, ...row } = rowOfLog(job, entries, plan) ?? { wrenchDays: [] };
    await old.table('entries').bulkAdd([...entries]);
    await old.table('jobs').add(version === 1 ? row : { ...row, wrenchDays });
    await old.table('plans').put({ digest: planOf({ entries }), plan });
  }
  await old.table('tools').add({ id: 'B', kind: 'wrench', wrench: { id: 'B' } });
  await old.table('settings').add({ id: 'shop', value: { name: 'An older shop' } });
  old.close();
}

function planOf({ entries }: Pick<GoldenRecord, 'entries'>): unknown {
  const event = entries.find((entry) => entry.event.kind === 'job-opened')?.event;
  return event && 'plan' in event ? event.plan : undefined;
}

test('every released version has its fixture here', () => {
  expect(Object.keys(released).map(Number)).toEqual(
    Array.from({ length: schemaEpoch }, (_, index) => index + 1),
  );
});

test.each(Object.keys(released).map(Number))(
  'a book of version %i opens in this app: every log and row is there, and rows count their wrenches',
  async (version) => {
    const name = `older-shop-${version}`;
    await filledBy(version, name);
    opened = createDexieStorage(name);
    for (const { job, entries, plan } of records) {
      const row = await opened.row(job);
      expect(row).toEqual(rowOfLog(job, entries, plan));
      expect((await opened.log(job)).entries).toHaveLength(entries.length);

      const passes = entries.filter(({ event }) =>
        /^pass-made$|^joint-tightened$/.test(event.kind),
      );
      expect(passes.length).toBeGreaterThan(20);
      const operations = row?.wrenchDays.reduce((sum, [, , count]) => sum + count, 0);
      expect(operations).toBeGreaterThan(passes.length);
      for (const [wrench, since] of row?.wrenchDays ?? []) {
        const found = await opened.findByWrench(wrench, { since, until: since });
        expect(found.map((one) => one.job)).toContain(job);
      }
    }
    expect(await opened.tools.get('B')).toMatchObject({ kind: 'wrench' });
    expect(await opened.settings.get('shop')).toEqual({
      id: 'shop',
      value: { name: 'An older shop' },
    });
  },
);

test('a database without jobs opens too, and has room for versions of the catalogue', async () => {
  await filledBy(1, 'plain-shop');
  opened = createDexieStorage('plain-shop');
  expect(await opened.catalogueVersions.all()).toEqual([]);
  opened.close();
  opened = createDexieStorage('empty-shop');
  expect(await opened.findByWrench('B', { since: '2026-01-01' })).toEqual([]);
});
