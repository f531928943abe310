/** Records out of a file that was looked at, into the book: each joined to what is held, all of it or nothing, and told. */

import { ok, type Result, refuse } from '../engine/base';
import type { Customer, JobWrite, Storage, StorageRefusal } from '../storage/contract';
import type {
  FileRecord,
  FileRefusal,
  OpenedFile,
  ToldProgress,
  WithRecordFiles,
} from './file-ports';
import { erasedCustomers, rememberErased } from './forget-customer';
import { broughtKeys } from './known-keys';
import type { FileLooked, RefusedRecord } from './look-at-file';
import type { AppPorts } from './ports';
import { attempted } from './storage-refusals';

export type TakeInPorts = Pick<AppPorts, 'storage'> & WithRecordFiles;

export interface TakenIn {
  /** Records that were not held before. */
  readonly fresh: number;
  /** Records that were held and have grown. */
  readonly grown: number;
  /** Records that were held already, whole. */
  readonly known: number;
  /** Entries that were not held before. */
  readonly entries: number;
  readonly refused: readonly RefusedRecord[];
}

/** The same file may be taken in again and again: what is held already adds nothing. */
export async function takeInRecords(
  ports: TakeInPorts,
  { file, good, refused }: FileLooked,
  onProgress: ToldProgress = () => undefined,
): Promise<Result<TakenIn, StorageRefusal>> {
  const prepared = await attempted(() => takeInPeople(ports.storage, file));
  if (!prepared.ok) return prepared;
  const customers = new Map(prepared.value.map((customer) => [customer.digest, customer]));
  let told: TakenIn = { fresh: 0, grown: 0, known: 0, entries: 0, refused };
  for (const [index, { job }] of good.entries()) {
    const read = await file.readRecord(job);
    const kept = read.ok ? await takeInRecord(ports, read.value, customers) : read;
    if (kept.ok) {
      const count = kept.value.entries.length;
      const isNew = count > 0 && kept.value.row.count === count;
      told = {
        ...told,
        fresh: told.fresh + (isNew ? 1 : 0),
        grown: told.grown + (!isNew && count > 0 ? 1 : 0),
        known: told.known + (count === 0 ? 1 : 0),
        entries: told.entries + count,
      };
    } else {
      told = { ...told, refused: [...told.refused, { job, refusal: kept.refusal }] };
    }
    onProgress(index + 1, good.length);
  }
  return ok(told);
}

async function takeInRecord(
  { storage, recordFiles }: TakeInPorts,
  record: FileRecord,
  customers: ReadonlyMap<string, Customer>,
): Promise<Result<JobWrite, FileRefusal | StorageRefusal>> {
  const named = customersNamedIn(record).flatMap((digest) => customers.get(digest) ?? []);
  return storage.changeJob<JobWrite, FileRefusal>(record.job, undefined, ({ log }) => {
    if (log === undefined) return refuse({ code: 'job-missing' });
    const merged = recordFiles.merge(log, record);
    return merged.ok ? ok({ ...merged.value, customers: named }) : merged;
  });
}

function customersNamedIn({ entries }: FileRecord): readonly string[] {
  const named = entries.map(({ event }) => ('customer' in event ? event.customer : undefined));
  return [...new Set(named.filter((digest): digest is string => typeof digest === 'string'))];
}

/**
 * Names and public keys, so that what was signed elsewhere can be read and checked here. Whoever is not known yet is
 * known from then on but does not stand at this tablet's stand. Answers the customers that may be taken in.
 */
async function takeInPeople(
  storage: Storage,
  { people, customers }: OpenedFile,
): Promise<readonly Customer[]> {
  const known = new Set((await storage.people.all()).map(({ id }) => id));
  const strangers = people.people.filter(({ id }) => !known.has(id));
  await storage.people.putAll(strangers.map((person) => ({ ...person, active: false })));
  await storage.keys.putAll(broughtKeys(await storage.keys.all(), people.publicKeys).rows);
  await rememberErased(storage.settings, customers.erased);
  const erased = new Set(await erasedCustomers(storage.settings));
  for (const digest of customers.erased) await storage.customers.remove(digest);
  return customers.customers.filter(({ digest }) => !erased.has(digest));
}
