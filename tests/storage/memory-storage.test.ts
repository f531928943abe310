/** Storage in memory keeps the contract. */

import { describe, test } from 'vitest';
import { createMemoryStorage } from '../../src/storage/memory/memory-storage';
import { storageContract } from '../support/storage-contract';

describe('storage in memory', () => {
  for (const { title, run } of storageContract.filter(({ needsDisk }) => !needsDisk)) {
    test(title, async () => {
      const storage = createMemoryStorage();
      await run(() => storage);
    });
  }
});
