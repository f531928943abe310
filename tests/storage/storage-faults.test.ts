/** The n-th call of the browser's database fails, for every n of every operation: all is kept or nothing, and it can be tried again. */

import 'fake-indexeddb/auto';
import { IDBDatabase, IDBIndex, IDBObjectStore } from 'fake-indexeddb';
import { afterEach, describe, expect, test, vi } from 'vitest';
import type { Holdings, Storage } from '../../src/storage/contract';
import { createDexieStorage } from '../../src/storage/dexie/dexie-storage';
import { append, nextEntry, writeOf } from '../support/storage-contract';

let count = 0;
let opened: Storage[] = [];

afterEach(() => {
  vi.restoreAllMocks();
  for (const storage of opened) storage.close();
  opened = [];
});

function open(name: string): Storage {
  const storage = createDexieStorage(name);
  opened.push(storage);
  return storage;
}

const blob = { digest: 'd'.repeat(64), type: 'image/jpeg', bytes: Uint8Array.of(255, 216) };
const person = { id: 'noor', name: 'Noor', roles: ['mechanic'], active: true } as const;

/** Everything of the contract that writes; a refusal and a rejection are both a way of saying no. */
const operations: Readonly<Record<string, (storage: Storage) => Promise<unknown>>> = {
  'a change of a job': (storage) => append(storage, 'job-1', 'tablet-a'),
  'a new job with a photo': (storage) => {
    const entry = nextEntry([], 'tablet-a', { kind: 'x', v: 1 });
    const value = { ...writeOf('job-2', [entry]), blobs: [blob] };
    return said(storage.changeJob('job-2', undefined, () => ({ ok: true, value })));
  },
  'many jobs': (storage) => {
    const writes = ['job-3', 'job-4', 'job-5'].map((job) =>
      writeOf(job, [nextEntry([], 'tablet-a', { kind: 'x', v: 1 }, job)]),
    );
    return said(storage.addJobs(writes));
  },
  'a photo': (storage) => said(storage.keepBlob(blob)),
  'a row': (storage) => storage.people.put(person),
  rows: (storage) => storage.people.putAll([person, { ...person, id: 'petra' }]),
  'a row changed': (storage) =>
    storage.settings.change('shop', (held) => held && { ...held, value: 'changed' }),
  'a row removed': (storage) => storage.settings.remove('shop'),
  'everything erased': (storage) => storage.eraseEverything({ settings: [{ id: 'a', value: 1 }] }),
};

async function said(work: Promise<{ readonly ok: boolean }>): Promise<void> {
  const answer = await work;
  if (!answer.ok) throw new Error(JSON.stringify(answer));
}

async function bookOf(name: string): Promise<Holdings> {
  return open(name).holdings();
}

const targets = [
  [IDBObjectStore.prototype, ['get', 'getAll', 'put', 'add', 'delete', 'clear', 'openCursor']],
  [IDBIndex.prototype, ['get', 'getAll', 'openCursor']],
  [IDBDatabase.prototype, ['transaction']],
] as const;

type Way = 'full' | 'lost' | 'aborted';

/** Answers how many calls there were. */
function failNth(n: number, way: Way): () => number {
  let made = 0;
  for (const [prototype, calls] of targets) {
    for (const call of calls) {
      const methods = prototype as unknown as Record<string, (...args: unknown[]) => unknown>;
      const real = methods[call];
      if (real === undefined) throw new Error(`there is no ${call}`);
      vi.spyOn(methods, call).mockImplementation(function (this: unknown, ...args: unknown[]) {
        made += 1;
        if (made !== n) return real.apply(this, args);
        if (way === 'full') throw new DOMException('made to fail', 'QuotaExceededError');
        if (way === 'lost') throw new DOMException('made to fail', 'UnknownError');
        const request = real.apply(this, args);
        const transaction =
          call === 'transaction' ? (request as { abort(): void }) : (this as Indexed).transaction;
        (transaction ?? (this as Indexed).objectStore?.transaction ?? missing()).abort();
        return request;
      });
    }
  }
  return () => made;
}

interface Indexed {
  readonly transaction?: { abort(): void };
  readonly objectStore?: { readonly transaction: { abort(): void } };
}

function missing(): never {
  throw new Error('nothing to abort');
}

async function filled(): Promise<string> {
  count += 1;
  const name = `faults-${count}`;
  const storage = createDexieStorage(name);
  await append(storage, 'job-1', 'tablet-a');
  await storage.settings.put({ id: 'shop', value: 'as it was' });
  storage.close();
  return name;
}

describe.each(Object.entries(operations))('%s', (_, operate) => {
  test.each(['full', 'lost', 'aborted'] as const)(
    'whichever call fails (%s), is kept whole or not at all, says which, and can be tried again',
    async (way) => {
      const plain = await filled();
      const before = await bookOf(plain);
      await operate(open(plain));
      const after = await bookOf(plain);
      expect(after).not.toEqual(before);
      let tried = 0;
      for (let n = 1; ; n += 1) {
        const name = await filled();
        const made = failNth(n, way);
        const storage = open(name);
        const isKept = await operate(storage).then(
          () => true,
          () => false,
        );
        const calls = made();
        vi.restoreAllMocks();
        if (calls < n) break;
        tried += 1;
        const held = await bookOf(name);
        expect(held, `call ${n} of the database`).toEqual(isKept ? after : before);
        if (!isKept) {
          await operate(storage);
          expect(await bookOf(name), `tried again after call ${n}`).toEqual(after);
        }
      }
      expect(tried).toBeGreaterThan(1);
    },
    60_000,
  );
});
