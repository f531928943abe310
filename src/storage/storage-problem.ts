/** What a read that the browser cannot do is rejected with. */

import type { StorageProblem, StorageRefusal } from './contract';

export function createStorageProblem(refusal: StorageRefusal): StorageProblem {
  return Object.assign(new Error(refusal.code), { name: 'StorageProblem', refusal });
}
