/** A storage that fails when a test says so, as a full disk or a lost database would. */

import { refuse } from '../../src/engine/base';
import type { Storage, StorageRefusal } from '../../src/storage/contract';

export interface FailingStorage {
  readonly storage: Storage;
  /** How many changes of jobs were asked for. */
  readonly changes: () => number;
  /** The n-th change from now on fails, once; 1 is the next. */
  failAt(n: number, refusal?: StorageRefusal): void;
}

export function createFailingStorage(storage: Storage): FailingStorage {
  let changes = 0;
  let failing: { readonly at: number; readonly refusal: StorageRefusal } | undefined;
  return {
    changes: () => changes,
    failAt(n, refusal = { code: 'storage-full' }) {
      failing = { at: changes + n, refusal };
    },
    storage: {
      ...storage,
      async changeJob(job, seen, work) {
        changes += 1;
        if (failing?.at === changes) return refuse(failing.refusal);
        return storage.changeJob(job, seen, work);
      },
    },
  };
}
