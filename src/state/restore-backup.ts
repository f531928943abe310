/** A backup into an empty book, or in place of the demo: people, tools, figures and customers first, then every record. */

import { ok, type Result, refuse } from '../engine/base';
import type { ShopNotEmpty, StorageRefusal } from '../storage/contract';
import { type LastBackup, lastSetting, restoringSetting } from './backup-state';
import type { FileRefusal, ToldProgress, WithRecordFiles } from './file-ports';
import { erasedCustomers, rememberErased } from './forget-customer';
import type { FileLooked } from './look-at-file';
import { emptyBook } from './own-shop';
import type { AppPorts, CopyRefusal } from './ports';
import { attempted } from './storage-refusals';
import { type TakenIn, takeInRecords } from './take-in-records';

export type RestorePorts = Pick<AppPorts, 'storage' | 'clock'> & WithRecordFiles;

export type RestoreRefusal =
  | StorageRefusal
  | ShopNotEmpty
  | FileRefusal
  | { readonly code: 'file-not-a-backup' };

export async function restoreBackup(
  ports: RestorePorts,
  looked: FileLooked,
  onProgress?: ToldProgress,
): Promise<Result<TakenIn, RestoreRefusal>> {
  const { file } = looked;
  if (file.manifest.scope !== 'shop') return refuse({ code: 'file-not-a-backup' });
  if (looked.good.length === 0 && looked.refused[0]) return refuse(looked.refused[0].refusal);
  const allowed = await mayRestore(ports);
  if (!allowed.ok) return allowed;
  const begun = await attempted(() => furnish(ports, looked, allowed.value.isDemo));
  if (!begun.ok) return begun;
  const taken = await takeInRecords(ports, looked, onProgress);
  if (!taken.ok) return taken;
  const finished = await attempted(async () => {
    await ports.storage.settings.put({ id: lastSetting, value: backupIn(looked) });
    await ports.storage.settings.remove(restoringSetting);
  });
  return finished.ok ? taken : finished;
}

/** What was restored has been backed up: the file that it came from. */
function backupIn({ file: { manifest } }: FileLooked): LastBackup {
  const entries = manifest.records.reduce((sum, record) => sum + record.entries, 0);
  const { root, count } = manifest.digest;
  return { day: manifest.at.slice(0, 10), records: count, entries, root };
}

/** Only where nothing can be overwritten: no jobs, only the demo's, or those that a broken-off restore has left. */
async function mayRestore({
  storage,
}: Pick<RestorePorts, 'storage'>): Promise<
  Result<{ readonly isDemo: boolean }, ShopNotEmpty | StorageRefusal>
> {
  const read = await attempted(async () => ({
    jobs: (await storage.rows()).length,
    isDemo: isDemo((await storage.settings.get('shop'))?.value),
    isBrokenOff: (await storage.settings.get(restoringSetting)) !== undefined,
  }));
  if (!read.ok) return read;
  const { jobs, isBrokenOff, ...answer } = read.value;
  if (jobs > 0 && !answer.isDemo && !isBrokenOff) return refuse({ code: 'shop-not-empty', jobs });
  return ok(answer);
}

async function furnish(
  { storage, clock }: RestorePorts,
  { file: { manifest, people, customers, shopParts } }: FileLooked,
  isDemoHere: boolean,
): Promise<void> {
  const { name, market } = manifest.shop;
  const settings = [
    { id: restoringSetting, value: { at: clock.now().claimed } },
    { id: 'shop', value: { name, market, demo: false } },
  ];
  if (isDemoHere) await emptyBook(storage, { settings });
  else await storage.settings.putAll(settings);
  await storage.people.putAll(people.people);
  await storage.tools.putAll(shopParts?.tools ?? []);
  await storage.figures.putAll(shopParts?.figures ?? []);
  await storage.catalogueVersions.putAll(shopParts?.catalogueVersions ?? []);
  await rememberErased(storage.settings, customers.erased);
  const erased = new Set(await erasedCustomers(storage.settings));
  await storage.customers.putAll(customers.customers.filter(({ digest }) => !erased.has(digest)));
}

/** A copy as an earlier Standbook wrote it, in JSON: into a book without jobs, or in place of the demo. */
export async function restoreOlderCopy(
  ports: RestorePorts & Pick<AppPorts, 'readCopy'>,
  content: string,
): Promise<Result<number, CopyRefusal | ShopNotEmpty | StorageRefusal>> {
  const copy = await ports.readCopy(content);
  if (!copy.ok) return copy;
  const allowed = await mayRestore(ports);
  if (!allowed.ok) return allowed;
  const { settings } = copy.value;
  const emptied = await attempted(() => emptyBook(ports.storage, { settings }));
  if (!emptied.ok) return emptied;
  const taken = await ports.storage.takeIn(copy.value);
  return taken.ok ? ok(copy.value.rows.length) : taken;
}

function isDemo(value: unknown): boolean {
  return typeof value === 'object' && value !== null && 'demo' in value && value.demo === true;
}
