/** What a storage rejects with, as a refusal that can be shown. */

import { ok, type Result, refuse } from '../engine/base';
import type { StorageProblem, StorageRefusal } from '../storage/contract';

export function refusalIn(error: unknown): StorageRefusal {
  if (isStorageProblem(error)) return error.refusal;
  return { code: 'storage-failed', cause: error instanceof Error ? error.message : String(error) };
}

/** For reads and single writes, which reject instead of answering. */
export async function attempted<T>(work: () => Promise<T>): Promise<Result<T, StorageRefusal>> {
  try {
    return ok(await work());
  } catch (error) {
    return refuse(refusalIn(error));
  }
}

function isStorageProblem(error: unknown): error is StorageProblem {
  return error instanceof Error && 'refusal' in error;
}
