/** How a job is read and written inside one transaction. Nothing but Dexie is awaited here. */

import type { HeldJob, JobWrite, KeptBlob } from '../contract';
import { isSameHeads } from '../heads';
import { planDigestIn } from '../plan-of-log';
import type { BlobRow, Database } from './database';

export function jobTables({ entries, jobs, plans, blobs, customers }: Database) {
  return [entries, jobs, plans, blobs, customers];
}

export async function heldJob(
  database: Database,
  job: string,
  seen: readonly string[] | undefined,
): Promise<HeldJob> {
  const row = await database.jobs.get(job);
  if (row !== undefined && isSameHeads(row.heads, seen)) return { row };
  const log = await heldLog(database, job);
  return row === undefined ? { log } : { row, log };
}

export async function heldLog(
  database: Database,
  job: string,
): Promise<NonNullable<HeldJob['log']>> {
  const entries = await database.entries.where('job').equals(job).toArray();
  const digest = planDigestIn(entries);
  const kept = digest === undefined ? undefined : await database.plans.get(digest);
  return kept === undefined ? { entries } : { entries, plan: kept.plan };
}

/** Starts every put of a change; the transaction is aborted when one of them fails. */
export function putJob(database: Database, write: JobWrite, isNew: boolean): PromiseLike<unknown> {
  const { entries, row, plan, blobs, customer, customers } = write;
  return Promise.all([
    database.entries.bulkAdd(entries),
    isNew ? database.jobs.add(row) : database.jobs.put(row),
    plan && database.plans.put(plan),
    blobs && database.blobs.bulkPut(blobs.map(blobRow)),
    customer && database.customers.put(customer),
    customers && database.customers.bulkPut(customers),
  ]);
}

export function blobRow({ digest, type, bytes }: KeptBlob): BlobRow {
  return { digest, type, bytes: new Uint8Array(bytes).buffer };
}

export function keptBlob({ digest, type, bytes }: BlobRow): KeptBlob {
  return { digest, type, bytes: new Uint8Array(bytes) };
}
