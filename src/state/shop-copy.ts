/** A copy of the whole shop: out as a file that people and programs can read, and into an empty shop. */

import { ok, type Result } from '../engine/base';
import type { KeptKey, ShopNotEmpty, StorageRefusal } from '../storage/contract';
import type { AppPorts, CopyRefusal } from './ports';
import { attempted } from './storage-refusals';

type CopyPorts = Pick<AppPorts, 'storage' | 'clock' | 'writeCopy' | 'readCopy' | 'saveFile'>;

export async function saveCopy({
  storage,
  clock,
  writeCopy,
  saveFile,
}: CopyPorts): Promise<Result<true, StorageRefusal>> {
  const read = await attempted(async () => ({
    holdings: await storage.holdings(),
    publicKeys: (await storage.keys.all()).flatMap(publicKeysIn),
  }));
  if (!read.ok) return read;
  const content = await writeCopy({ ...read.value, at: clock.now().claimed });
  saveFile({ name: `standbook-${clock.today()}.json`, type: 'application/json', content });
  return ok(true);
}

export async function readCopy(
  { storage, readCopy: read }: CopyPorts,
  text: string,
): Promise<Result<number, CopyRefusal | ShopNotEmpty | StorageRefusal>> {
  const copy = await read(text);
  if (!copy.ok) return copy;
  const taken = await storage.takeIn(copy.value);
  return taken.ok ? ok(copy.value.rows.length) : taken;
}

/** Only what may be shown to anybody; the private half cannot be read out anyway. */
function publicKeysIn({ id, value }: KeptKey): { id: string; keys: readonly unknown[] }[] {
  if (typeof value !== 'object' || value === null || !('publicKeys' in value)) return [];
  return Array.isArray(value.publicKeys) ? [{ id, keys: value.publicKeys }] : [];
}
