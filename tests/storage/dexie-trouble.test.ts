/** When the browser fails: nothing is half kept, the person is told why, and what can be tried again is. */

import 'fake-indexeddb/auto';
import { Dexie } from 'dexie';
import { IDBDatabase, IDBObjectStore } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Storage, StorageRefusal } from '../../src/storage/contract';
import { createDatabase, schemaEpoch } from '../../src/storage/dexie/database';
import { createDexieStorage } from '../../src/storage/dexie/dexie-storage';
import { refusalOfError } from '../../src/storage/dexie/refusal-of-error';
import { append } from '../support/storage-contract';

let name: string;
let count = 0;
let opened: Storage[] = [];

beforeEach(() => {
  count += 1;
  name = `trouble-${count}`;
});

afterEach(() => {
  vi.restoreAllMocks();
  for (const storage of opened) storage.close();
  opened = [];
});

function open(): Storage {
  const storage = createDexieStorage(name);
  opened.push(storage);
  return storage;
}

/** What `append` met, or nothing. */
async function refusalIn(work: Promise<unknown>): Promise<StorageRefusal | undefined> {
  const error = await work.then(
    () => undefined,
    (reason: unknown) => reason,
  );
  return error instanceof Error ? (JSON.parse(error.message) as StorageRefusal) : undefined;
}

const calls = ['get', 'put', 'add'] as const;

/** The n-th call of the browser's store from now on fails, and no other. Answers how many there were. */
function failNthCall(n: number, errorName: string): () => number {
  let made = 0;
  for (const call of calls) {
    const real = IDBObjectStore.prototype[call] as (...args: unknown[]) => unknown;
    vi.spyOn(IDBObjectStore.prototype, call).mockImplementation(function (
      this: IDBObjectStore,
      ...args: unknown[]
    ) {
      made += 1;
      if (made === n) throw new DOMException('made to fail', errorName);
      return real.apply(this, args) as never; // the real call's own answer
    });
  }
  return () => made;
}

describe('a full disk', () => {
  test('for every n: when the n-th call fails, nothing of the change is kept, and it succeeds when tried again', async () => {
    const storage = open();
    await append(storage, 'job-0', 'tablet-a');
    const countCalls = failNthCall(0, '');
    await append(storage, 'job-count', 'tablet-a');
    const all = countCalls();
    expect(all).toBeGreaterThanOrEqual(3);
    for (let n = 1; n <= all; n += 1) {
      vi.restoreAllMocks();
      failNthCall(n, 'QuotaExceededError');
      const job = `job-${n}`;
      expect(await refusalIn(append(storage, job, 'tablet-a'))).toEqual({ code: 'storage-full' });
      vi.restoreAllMocks();
      expect((await storage.log(job)).entries).toEqual([]);
      expect(await storage.row(job)).toBeUndefined();
      expect(await append(storage, job, 'tablet-a')).toBe(1);
    }
    expect(await append(storage, 'job-0', 'tablet-a')).toBe(2);
  });

  test.each([
    ['by itself', new DOMException('full', 'QuotaExceededError')],
    [
      'as the inner error of an abort',
      {
        name: 'AbortError',
        message: 'aborted',
        inner: new DOMException('full', 'QuotaExceededError'),
      },
    ],
    [
      'two errors deep',
      {
        name: 'BulkError',
        message: '',
        inner: {
          name: 'AbortError',
          message: '',
          inner: { name: 'QuotaExceededError', message: '' },
        },
      },
    ],
  ])('is known %s', (_, error) => {
    expect(refusalOfError(error)).toEqual({ code: 'storage-full' });
  });

  test('any other failure is told with its cause', () => {
    expect(refusalOfError(new DOMException('of some kind', 'DataError'))).toEqual({
      code: 'storage-failed',
      cause: 'DataError: of some kind',
    });
    expect(refusalOfError('odd')).toEqual({ code: 'storage-failed', cause: 'odd' });
  });
});

describe('a lost connection', () => {
  /** Dexie binds the browser's call when it opens, so this comes first; `times` is how often it fails once asked to. */
  function loseConnection(errorName: string, times: number): { now(): void; failed(): number } {
    const real = IDBDatabase.prototype.transaction;
    let left = 0;
    let failed = 0;
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
      this: IDBDatabase,
      ...args
    ) {
      if (left === 0) return real.apply(this, args);
      left -= 1;
      failed += 1;
      throw new DOMException('Connection to Indexed Database server lost.', errorName);
    });
    return {
      now() {
        left = times;
      },
      failed: () => failed,
    };
  }

  test.each(['UnknownError', 'InvalidStateError'])(
    'is opened again after %s, and the change that was pending is made',
    async (errorName) => {
      const connection = loseConnection(errorName, 1);
      const storage = open();
      await append(storage, 'job-1', 'tablet-a');
      connection.now();
      expect(await append(storage, 'job-1', 'tablet-a')).toBe(2);
      expect(connection.failed()).toBe(1);
      expect((await storage.log('job-1')).entries).toHaveLength(2);
    },
  );

  test('that is lost after the commit makes nothing twice', async () => {
    const storage = open();
    await append(storage, 'job-1', 'tablet-a');
    // The commit happens, but this tab hears of a lost connection instead.
    const real = Dexie.prototype.transaction as (...args: unknown[]) => Promise<unknown>;
    let isLost = true;
    vi.spyOn(Dexie.prototype, 'transaction').mockImplementation(function (
      this: Dexie,
      ...args: unknown[]
    ) {
      const done = real.apply(this, args);
      if (!isLost || args[0] !== 'rw') return done as never; // Dexie's own promise
      isLost = false;
      return done.then(() => {
        throw new DOMException('Connection to Indexed Database server lost.', 'UnknownError');
      }) as never;
    });
    expect(await append(storage, 'job-1', 'tablet-a')).toBe(2);
    expect((await storage.log('job-1')).entries).toHaveLength(2);
  });

  test('that stays lost is refused, and nothing is kept', async () => {
    const connection = loseConnection('UnknownError', 12);
    const storage = open();
    await append(storage, 'job-1', 'tablet-a');
    connection.now();
    const refusal = await refusalIn(append(storage, 'job-1', 'tablet-a'));
    expect(refusal?.code).toBe('storage-failed');
    vi.restoreAllMocks();
    expect((await open().log('job-1')).entries).toHaveLength(1);
  });
});

describe('tabs with other versions of the app', () => {
  /** As a later version of the app would open it. */
  function newer(): Dexie {
    const database = createDatabase(name);
    database.version(schemaEpoch + 1).stores({ later: 'id' });
    return database;
  }

  test('a newer one that upgrades makes this one refuse, and say so, for good', async () => {
    const storage = open();
    await append(storage, 'job-1', 'tablet-a');
    const told: (StorageRefusal | undefined)[] = [];
    storage.onTrouble((refusal) => told.push(refusal));
    const later = await newer().open();
    expect(await refusalIn(append(storage, 'job-1', 'tablet-a'))).toEqual({
      code: 'storage-outdated',
    });
    later.close();
    expect(await refusalIn(append(storage, 'job-1', 'tablet-a'))).toEqual({
      code: 'storage-outdated',
    });
    expect(told).toEqual([{ code: 'storage-outdated' }]);
  });

  test('this one does not open what a newer one has made', async () => {
    (await newer().open()).close();
    expect(await refusalIn(append(open(), 'job-1', 'tablet-a'))).toEqual({
      code: 'storage-outdated',
    });
  });

  test('an older one that holds the database open blocks this one, which says so and goes on when it is gone', async () => {
    const older = await new Promise<globalThis.IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open(name, 1);
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const storage = open();
    expect(await refusalIn(append(storage, 'job-1', 'tablet-a'))).toEqual({
      code: 'storage-blocked',
    });
    // The browser says "blocked" only once; a second tap is answered all the same.
    expect(await refusalIn(append(storage, 'job-1', 'tablet-a'))).toEqual({
      code: 'storage-blocked',
    });
    const told: (StorageRefusal | undefined)[] = [];
    storage.onTrouble((refusal) => told.push(refusal));
    expect(told).toEqual([{ code: 'storage-blocked' }]);
    older.close();
    await vi.waitFor(async () => expect(await append(storage, 'job-1', 'tablet-a')).toBe(1));
    expect(told).toEqual([{ code: 'storage-blocked' }, undefined]);
  });
});
