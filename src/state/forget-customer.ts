/** Forgetting a customer: the row and its salt go, and no file may bring them back. */

import { ok, type Result } from '../engine/base';
import type { Storage, StorageRefusal } from '../storage/contract';
import { attempted } from './storage-refusals';

const settingId = 'erased-customers';

/** Digests of those who asked to be forgotten; without the salt, which is gone, they say nothing. */
export async function erasedCustomers(
  settings: Pick<Storage['settings'], 'get'>,
): Promise<readonly string[]> {
  const value = (await settings.get(settingId))?.value;
  return Array.isArray(value) ? value.filter((digest) => typeof digest === 'string') : [];
}

export async function rememberErased(
  settings: Storage['settings'],
  digests: readonly string[],
): Promise<void> {
  const before = await erasedCustomers(settings);
  const all = [...new Set([...before, ...digests])].sort();
  if (all.length > before.length) await settings.put({ id: settingId, value: all });
}

export async function forgetCustomer(
  { settings, customers }: Pick<Storage, 'settings' | 'customers'>,
  digest: string,
): Promise<Result<true, StorageRefusal>> {
  const done = await attempted(async () => {
    // First, so that a row that a crash left behind is still known as one to forget.
    await rememberErased(settings, [digest]);
    await customers.remove(digest);
  });
  return done.ok ? ok(true) : done;
}
