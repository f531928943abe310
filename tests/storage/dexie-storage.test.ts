/** Storage through IndexedDB keeps the contract: here on an imitation, for speed; in a real browser in tests/browser. */

import 'fake-indexeddb/auto';
import { afterEach, describe, test } from 'vitest';
import type { Storage } from '../../src/storage/contract';
import { createDexieStorage } from '../../src/storage/dexie/dexie-storage';
import { storageContract } from '../support/storage-contract';

let opened: Storage[] = [];
let count = 0;

afterEach(() => {
  for (const storage of opened) storage.close();
  opened = [];
});

describe('storage through IndexedDB', () => {
  for (const { title, run } of storageContract) {
    test(title, async () => {
      count += 1;
      const name = `contract-${count}`;
      await run(() => {
        const storage = createDexieStorage(name);
        opened.push(storage);
        return storage;
      });
    });
  }
});
