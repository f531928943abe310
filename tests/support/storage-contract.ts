/** The suite that every storage passes; it needs no test runner, so that it also runs inside a browser's page. */

import type { Entry } from '../../src/engine/integrity';
import { logEnd, nextPlace, seal } from '../../src/engine/integrity';
import type { CatalogueVersion } from '../../src/engine/plan';
import type { HeldJob, JobRow, JobWrite, Setting, Storage } from '../../src/storage/contract';

export interface ContractCase {
  readonly title: string;
  /** Only for what is really on a disk. */
  readonly needsDisk?: boolean;
  /** `open` gives a storage on the same data each time, as another tab would have it. */
  run(open: () => Storage): Promise<void>;
}

export const storageContract: readonly ContractCase[] = [
  {
    title: 'a job that nobody knows has no row and an empty log',
    async run(open) {
      const storage = open();
      const held = await heldBy(storage, 'job-1');
      same(held, { log: { entries: [] } });
      same(await storage.row('job-1'), undefined);
      same(await storage.log('job-1'), { entries: [] });
    },
  },
  {
    title: 'a change keeps its entries, row, plan, photos and customer together',
    async run(open) {
      const storage = open();
      const event = { kind: 'job-opened', v: 1, plan: planDigest };
      const opened = nextEntry([], 'tablet-a', event);
      const answer = await storage.changeJob('job-1', undefined, () => ({
        ok: true,
        value: {
          ...writeOf('job-1', [opened]),
          plan: { digest: planDigest, plan: somePlan },
          blobs: [{ digest: photoDigest, type: 'image/jpeg', bytes: Uint8Array.of(255, 216, 255) }],
          customer: { digest: customerDigest, salt: 'salt', name: 'Ada Linden' },
        },
      }));
      same(answer.ok, true);
      same(await storage.row('job-1'), rowOf('job-1', [opened]));
      same(await storage.log('job-1'), { entries: [opened], plan: somePlan });
      same([...((await storage.blob(photoDigest))?.bytes ?? [])], [255, 216, 255]);
      same((await storage.customers.get(customerDigest))?.name, 'Ada Linden');
    },
  },
  {
    title: 'a refusal keeps nothing and is handed back as it is',
    async run(open) {
      const storage = open();
      const refusal = { code: 'step-unknown', step: 'x' } as const;
      const answer = await storage.changeJob('job-1', [], () => ({ ok: false, refusal }));
      same(answer, { ok: false, refusal });
      same(await storage.row('job-1'), undefined);
    },
  },
  {
    title: 'a bug in the work is thrown on, and nothing is kept',
    async run(open) {
      const storage = open();
      const bug = new TypeError('a bug');
      const caught = await storage
        .changeJob('job-1', [], () => {
          throw bug;
        })
        .catch((error: unknown) => error);
      same(caught === bug, true);
      same(await append(storage, 'job-1', 'tablet-a'), 1);
    },
  },
  {
    title: 'heads that were seen spare the log; heads that moved bring it',
    async run(open) {
      const storage = open();
      await append(storage, 'job-1', 'tablet-a');
      const before = await storage.row('job-1');
      same(await heldBy(storage, 'job-1', before?.heads), { row: before });
      await append(storage, 'job-1', 'tablet-a');
      const held = await heldBy(storage, 'job-1', before?.heads);
      same(held.log?.entries.length, 2);
    },
  },
  {
    title: 'two tabs that append at once leave one chain without holes',
    async run(open) {
      const [one, other] = [open(), open()];
      await Promise.all(
        Array.from({ length: 12 }, (_, n) => append(n % 2 ? one : other, 'job-1', 'tablet-a')),
      );
      const { entries } = await one.log('job-1');
      const seqs = entries.map(({ seq }) => seq).sort((a, b) => a - b);
      same(seqs, [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
      same((await other.row('job-1'))?.count, 12);
      same((await other.row('job-1'))?.heads.length, 1);
    },
  },
  {
    title:
      'a record that is taken in joins what is held, with its pictures and customers, all or nothing',
    async run(open) {
      const storage = open();
      const root = nextEntry([], 'tablet-a');
      const here = nextEntry([root], 'tablet-a');
      const there = [nextEntry([root], 'tablet-b', { kind: 'step-done', v: 1 })];
      await storage.changeJob('job-1', undefined, () => ({
        ok: true,
        value: writeOf('job-1', [root, here]),
      }));
      const customers = ['d', 'e'].map((letter) => ({
        digest: letter.repeat(64),
        salt: letter,
        name: `Customer ${letter}`,
      }));
      const blobs = [{ digest: photoDigest, type: 'image/jpeg', bytes: Uint8Array.of(1) }];
      const taken = await storage.changeJob('job-1', undefined, ({ log }) => ({
        ok: true,
        value: {
          entries: there,
          row: rowOf('job-1', [...(log?.entries ?? []), ...there]),
          blobs,
          customers,
        },
      }));
      same(taken.ok, true);
      same((await storage.row('job-1'))?.heads, [here.id, ...there.map(({ id }) => id)].sort());
      same((await storage.log('job-1')).entries.length, 3);
      same((await storage.customers.all()).length, 2);
      const again = storage.changeJob('job-1', undefined, () => {
        throw new Error('the disk gave way');
      });
      same(await again.catch((error: Error) => error.message), 'the disk gave way');
      same((await storage.row('job-1'))?.count, 3);
    },
  },
  {
    title: 'a change without new entries keeps the pictures that came with it',
    async run(open) {
      const storage = open();
      await append(storage, 'job-1', 'tablet-a');
      const blobs = [{ digest: photoDigest, type: 'image/jpeg', bytes: Uint8Array.of(5) }];
      const kept = await storage.changeJob('job-1', undefined, ({ log }) => ({
        ok: true,
        value: { entries: [], row: rowOf('job-1', log?.entries ?? []), blobs },
      }));
      same(kept.ok, true);
      same([...((await storage.blob(photoDigest))?.bytes ?? [])], [5]);
      same((await storage.row('job-1'))?.count, 1);
    },
  },
  {
    title: 'the rows of all jobs are read at once',
    async run(open) {
      const storage = open();
      same(await storage.rows(), []);
      await append(storage, 'job-1', 'tablet-a');
      await append(storage, 'job-2', 'tablet-a');
      same((await storage.rows()).map(({ job }) => job).sort(), ['job-1', 'job-2']);
    },
  },
  {
    title: 'many new jobs are kept all or none',
    async run(open) {
      const storage = open();
      const writes = ['job-1', 'job-2', 'job-3'].map((job) =>
        writeOf(job, [nextEntry([], 'a', undefined, job)]),
      );
      same(await storage.addJobs(writes), { ok: true, value: 3 });
      const more = ['job-4', 'job-2'].map((job) =>
        writeOf(job, [nextEntry([], 'b', undefined, job)]),
      );
      same((await storage.addJobs(more)).ok, false);
      same(await storage.row('job-4'), undefined);
      same((await storage.log('job-4')).entries, []);
      same((await storage.log('job-2')).entries.length, 1);
    },
  },
  {
    title:
      'those who watch rows are told now, after every change of any tab, and no more once they stop',
    async run(open) {
      const [here, elsewhere] = [open(), open()];
      const counts: number[] = [];
      const stop = here.watchRows((rows) => counts.push(rows.length));
      await until(() => counts.at(-1) === 0);
      await append(here, 'job-1', 'tablet-a');
      await until(() => counts.at(-1) === 1);
      await append(elsewhere, 'job-2', 'tablet-a');
      await until(() => counts.at(-1) === 2);
      stop();
      const told = counts.length;
      await append(here, 'job-3', 'tablet-a');
      await pause(30);
      same(counts.length, told);
    },
  },
  {
    title: 'jobs are found by the frame number',
    async run(open) {
      const storage = open();
      await append(storage, 'job-1', 'tablet-a');
      same(
        (await storage.findByFrameNumber('FRAME-JOB-1')).map(({ job }) => job),
        ['job-1'],
      );
      same(await storage.findByFrameNumber('FRAME-JOB-9'), []);
    },
  },
  {
    title: 'jobs are found by a wrench and the days on which it was used',
    async run(open) {
      const storage = open();
      const used = [
        ['job-1', ['B', '2026-11-03', 4], ['D', '2026-11-09', 2]],
        ['job-2', ['B', '2026-11-09', 1], ['B', '2026-11-10', 6]],
        ['job-3', ['BB', '2026-11-09', 9]],
        ['job-4'],
      ] as const;
      for (const [job, ...wrenchDays] of used) {
        const write = writeOf(job, [nextEntry([], 'tablet-a', undefined, job)]);
        await storage.addJobs([{ ...write, row: { ...write.row, wrenchDays } }]);
      }
      const found = async (wrench: string, since: string, until?: string) =>
        (await storage.findByWrench(wrench, { since, until })).map(({ job }) => job).sort();
      same(await found('B', '2026-11-01'), ['job-1', 'job-2']);
      same(await found('B', '2026-11-03', '2026-11-03'), ['job-1']);
      same(await found('B', '2026-11-04', '2026-11-08'), []);
      same(await found('B', '2026-11-04', '2026-11-09'), ['job-2']);
      same(await found('D', '2026-11-09'), ['job-1']);
      same(await found('E', '2026-11-01'), []);
      const [row] = await storage.findByWrench('BB', { since: '2026-11-09' });
      same(row?.wrenchDays, [['BB', '2026-11-09', 9]]);
      await append(storage, 'job-1', 'tablet-a');
      same(await found('D', '2026-11-01'), []);
    },
  },
  {
    title: 'two tabs that change one row of a shelf at once lose neither change',
    async run(open) {
      const [one, other] = [open().settings, open().settings];
      const add = (n: number) => (held: Setting | undefined) => ({
        id: 'list',
        value: [...(Array.isArray(held?.value) ? held.value : []), n],
      });
      await Promise.all(
        Array.from({ length: 8 }, (_, n) => (n % 2 ? one : other).change('list', add(n))),
      );
      const { value } = (await one.get('list')) ?? {};
      same(Array.isArray(value) && [...value].sort(), [0, 1, 2, 3, 4, 5, 6, 7]);
      await one.change('list', () => undefined);
      same((await other.get('list'))?.value, value);
    },
  },
  {
    title: 'a shelf keeps, replaces, lists and removes rows',
    async run(open) {
      const { settings } = open();
      await settings.put({ id: 'a', value: 1 });
      await settings.putAll([
        { id: 'a', value: { deep: [1, 2] } },
        { id: 'b', value: 'two' },
      ]);
      same(await settings.get('a'), { id: 'a', value: { deep: [1, 2] } });
      same((await settings.all()).map(({ id }) => id).sort(), ['a', 'b']);
      await settings.remove('a');
      same(await settings.get('a'), undefined);
    },
  },
  {
    title: 'those who watch a shelf are told now and after every change',
    async run(open) {
      const { people } = open();
      const names: string[] = [];
      const stop = people.watch((rows) => names.push(rows.map(({ name }) => name).join()));
      await until(() => names.at(-1) === '');
      await people.put({ id: 'p1', name: 'Imre', roles: ['mechanic'], active: true });
      await until(() => names.at(-1) === 'Imre');
      await people.remove('p1');
      await until(() => names.at(-1) === '');
      stop();
    },
  },
  {
    title: 'versions of the catalogue are kept, travel with the whole shop, and go with it',
    async run(open) {
      const storage = open();
      same((await storage.holdings()).catalogueVersions, []);
      await storage.catalogueVersions.putAll([someVersion, { ...someVersion, id: 'v2' }]);
      same(await storage.catalogueVersions.get('v1'), someVersion);
      const holdings = await storage.holdings();
      same(holdings.catalogueVersions?.map(({ id }) => id).sort(), ['v1', 'v2']);
      await storage.eraseEverything();
      same(await storage.catalogueVersions.all(), []);
      const { catalogueVersions: _, ...older } = holdings;
      same(await storage.takeIn(older), { ok: true, value: true });
      same(await storage.catalogueVersions.all(), []);
      same(await storage.takeIn(holdings), { ok: true, value: true });
      same((await storage.catalogueVersions.all()).length, 2);
    },
  },
  {
    title: 'a photo comes back byte for byte, also one that was a window on a larger buffer',
    async run(open) {
      const storage = open();
      const bytes = new Uint8Array([9, 1, 2, 3, 9]).subarray(1, 4);
      const kept = await storage.keepBlob({ digest: photoDigest, type: 'image/jpeg', bytes });
      same(kept, { ok: true, value: true });
      const blob = await storage.blob(photoDigest);
      same([blob?.type, ...(blob?.bytes ?? [])], ['image/jpeg', 1, 2, 3]);
      same(await storage.blob(planDigest), undefined);
    },
  },
  {
    title: 'a private key is kept as a key and still signs',
    async run(open) {
      const { keys } = open();
      const made = await crypto.subtle.generateKey(ecdsa, false, ['sign', 'verify']);
      await keys.put({ id: 'device', value: made });
      const { value } = (await keys.get('device')) ?? {};
      const pair = value as CryptoKeyPair; // just put there
      const data = new TextEncoder().encode('signed');
      const signature = await crypto.subtle.sign(ecdsa, pair.privateKey, data);
      same(await crypto.subtle.verify(ecdsa, made.publicKey, signature, data), true);
      same(pair.privateKey.extractable, false);
    },
  },
  {
    title: 'a whole shop goes into an empty one, and into no other',
    async run(open) {
      const storage = open();
      await append(storage, 'job-1', 'tablet-a');
      await append(storage, 'job-2', 'tablet-a');
      await storage.people.put({ id: 'p1', name: 'Imre', roles: ['mechanic'], active: true });
      await storage.keepBlob({ digest: photoDigest, type: 'image/jpeg', bytes: Uint8Array.of(7) });
      const holdings = await storage.holdings();
      same(await storage.takeIn(holdings), {
        ok: false,
        refusal: { code: 'shop-not-empty', jobs: 2 },
      });
      await storage.eraseEverything();
      same((await storage.holdings()).entries, []);
      same(await storage.takeIn(holdings), { ok: true, value: true });
      same((await storage.log('job-2')).entries.length, 1);
      same(await storage.holdings(), holdings);
    },
  },
  {
    title: 'erasing leaves nothing, and those who watch are told',
    async run(open) {
      const storage = open();
      await append(storage, 'job-1', 'tablet-a');
      await storage.keys.put({ id: 'device', value: 1 });
      let rows = -1;
      const stop = storage.watchRows((now) => {
        rows = now.length;
      });
      await until(() => rows === 1);
      await storage.eraseEverything();
      await until(() => rows === 0);
      stop();
      same(await storage.keys.all(), []);
      same((await storage.log('job-1')).entries, []);
    },
  },
  {
    title: 'erasing can leave a shop behind, and nobody sees the book without one',
    async run(open) {
      const storage = open();
      await append(storage, 'job-1', 'tablet-a');
      await storage.settings.put({ id: 'shop', value: 'old' });
      await storage.people.put({ id: 'p1', name: 'Imre', roles: ['mechanic'], active: true });
      const seen: string[] = [];
      const stop = storage.settings.watch((rows) =>
        seen.push(rows.map(({ value }) => value).join()),
      );
      await until(() => seen.at(-1) === 'old');
      await storage.eraseEverything({
        settings: [{ id: 'shop', value: 'new' }],
        keys: [{ id: 'device', value: 7 }],
        people: [{ id: 'p2', name: 'Ada', roles: ['supervisor'], active: true }],
      });
      await until(() => seen.at(-1) === 'new');
      stop();
      same(seen.includes(''), false);
      same(await storage.keys.all(), [{ id: 'device', value: 7 }]);
      same(
        (await storage.people.all()).map(({ name }) => name),
        ['Ada'],
      );
      same(await storage.rows(), []);
    },
  },
  {
    title: 'what was kept is there after closing and opening again',
    needsDisk: true,
    async run(open) {
      const first = open();
      await append(first, 'job-1', 'tablet-a');
      const row = await first.row('job-1');
      first.close();
      same(await open().row('job-1'), row);
    },
  },
  {
    title: 'a closed storage refuses, and says so',
    needsDisk: true,
    async run(open) {
      const storage = open();
      await append(storage, 'job-1', 'tablet-a');
      storage.close();
      const answer = await storage.changeJob('job-1', [], () => ({
        ok: true,
        value: writeOf('job-1', []),
      }));
      same(answer, { ok: false, refusal: { code: 'storage-failed', cause: 'closed' } });
      const caught = await storage.row('job-1').catch((error: unknown) => error);
      same((caught as { refusal?: unknown }).refusal, { code: 'storage-failed', cause: 'closed' });
    },
  },
];

const ecdsa = { name: 'ECDSA', namedCurve: 'P-256', hash: 'SHA-256' };
export const planDigest = 'a'.repeat(64);
const photoDigest = 'b'.repeat(64);
const customerDigest = 'c'.repeat(64);
const someVersion: CatalogueVersion = {
  id: 'v1',
  version: 1,
  at: { claimed: '2026-11-25T10:00:00+01:00', zone: 'Europe/Berlin' },
  by: 'Imre',
  reason: 'It reads better.',
  changes: [{ kind: 'change-words', step: 'unpack', words: { how: 'Lay it on the bench.' } }],
};
const somePlan = {
  catalogue: 'test',
  steps: [],
  contents: [],
  market: 'uk',
} as unknown as NonNullable<JobWrite['plan']>['plan']; // storage never looks inside a plan

/** Appends one entry as `perform` does, and answers how many there are now. */
export async function append(storage: Storage, job: string, device: string): Promise<number> {
  const answer = await storage.changeJob(job, undefined, ({ log }) => {
    const entries = log?.entries ?? [];
    const entry = nextEntry(entries, device, undefined, job);
    return { ok: true, value: { entries: [entry], row: rowOf(job, [...entries, entry]) } };
  });
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusal));
  return answer.value.row.count;
}

function nextEntry(
  seen: readonly Entry[],
  device: string,
  event: Entry['event'] = { kind: 'step-done', v: 1 },
  job = 'job-1',
): Entry {
  return seal({
    v: 1,
    job,
    device,
    ...nextPlace(logEnd(seen, device)),
    at: { claimed: '2026-11-25T10:00:00+01:00', zone: 'Europe/Berlin' },
    by: 'p1',
    event,
  });
}

function writeOf(job: string, entries: readonly Entry[]): JobWrite {
  return { entries, row: rowOf(job, entries) };
}

function rowOf(job: string, entries: readonly Entry[]): JobRow {
  const { heads, lamport, lastSeq } = logEnd(entries, 'tablet-a');
  return {
    job,
    heads,
    lamport,
    seqs: { 'tablet-a': lastSeq },
    count: entries.length,
    wrenchDays: [],
    status: 'on-the-stand',
    make: 'Larkfell',
    model: 'Test',
    kind: 'town',
    frameNumber: `FRAME-${job.toUpperCase()}`,
    waiting: [],
    zones: [],
    steps: { done: 0, of: 0 },
    points: { done: 0, of: 0 },
    openFindings: 0,
  };
}

async function heldBy(storage: Storage, job: string, seen?: readonly string[]): Promise<HeldJob> {
  let held: HeldJob | undefined;
  await storage.changeJob(job, seen, (found) => {
    held = found;
    return { ok: false, refusal: { code: 'only-looking' } };
  });
  if (held === undefined) throw new Error('the work was not asked');
  return held;
}

function same(actual: unknown, expected: unknown): void {
  const [is, should] = [text(actual), text(expected)];
  if (is !== should) throw new Error(`is ${is}\nshould be ${should}`);
}

/** Members in one order, bytes as lists: two values with the same text are the same to a caller. */
function text(value: unknown): string {
  return (
    JSON.stringify(value, (_, member: unknown) => {
      if (member instanceof Uint8Array) return [...member];
      if (typeof member !== 'object' || member === null || Array.isArray(member)) return member;
      return Object.fromEntries(Object.entries(member).sort(([a], [b]) => (a < b ? -1 : 1)));
    }) ?? 'undefined'
  );
}

async function until(condition: () => boolean): Promise<void> {
  for (let waited = 0; !condition(); waited += 5) {
    if (waited > 3000) throw new Error('waited too long');
    await pause(5);
  }
}

function pause(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}
