/** A database that an older app has filled opens in this one: nothing is lost, and its rows are brought up to date. */

import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { Dexie } from 'dexie';
import { afterEach, expect, test } from 'vitest';
import { rowOfLog } from '../../src/exchange/row-of-log';
import type { Storage } from '../../src/storage/contract';
import { createDexieStorage } from '../../src/storage/dexie/dexie-storage';
import { type GoldenRecord, goldenNames } from '../golden/record';

const records = goldenNames.map((name): GoldenRecord => {
  const file = new URL(`../golden/${name}.json`, import.meta.url);
  return JSON.parse(readFileSync(file, 'utf8'));
});

let opened: Storage | undefined;

afterEach(() => opened?.close());

/** The tables as version 1 made them, and rows as it kept them: without a word about wrenches. */
async function filledByVersion1(name: string): Promise<void> {
  const old = new Dexie(name);
  old.version(1).stores({
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
  });
  for (const { job, entries, plan } of records) {
    const { wrenchDays: _, ...row } = rowOfLog(job, entries, plan) ?? { wrenchDays: [] };
    await old.table('entries').bulkAdd([...entries]);
    await old.table('jobs').add(row);
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

test('rows of version 1 count the wrenches of their logs once this app has opened them', async () => {
  await filledByVersion1('older-shop');
  opened = createDexieStorage('older-shop');
  for (const { job, entries, plan } of records) {
    const row = await opened.row(job);
    expect(row).toEqual(rowOfLog(job, entries, plan));
    expect((await opened.log(job)).entries).toHaveLength(entries.length);

    const passes = entries.filter(({ event }) => /^pass-made$|^joint-tightened$/.test(event.kind));
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
});

test('a database without jobs opens too, and has room for versions of the catalogue', async () => {
  await filledByVersion1('plain-shop');
  opened = createDexieStorage('plain-shop');
  expect(await opened.catalogueVersions.all()).toEqual([]);
  opened.close();
  opened = createDexieStorage('empty-shop');
  expect(await opened.findByWrench('B', { since: '2026-01-01' })).toEqual([]);
});
