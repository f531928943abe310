/** What is to be kept when a record out of a file meets the one that is held: the union of both, or a refusal and nothing. */

import { ok, type Result, refuse } from '../engine/base';
import { type Entry, mergeLogs, verifyLog } from '../engine/integrity';
import { type JobPlan, planNamedIn } from '../engine/job';
import type { RecordInFile, RecordRefusal } from './bundled-record';
import type { CopiedRow, Holdings } from './holdings';
import { rowOfLog } from './row-of-log';

export interface HeldRecord {
  readonly entries: readonly Entry[];
  readonly plan?: JobPlan;
}

export interface MergedRecord {
  /** Only what was not held yet. */
  readonly entries: readonly Entry[];
  readonly row: CopiedRow;
  readonly plan?: { readonly digest: string; readonly plan: JobPlan };
  readonly blobs: Holdings['blobs'];
}

/** Pure and synchronous, so that it may stand inside a transaction. */
export function mergeRecord(
  held: HeldRecord,
  { job, entries, plan, pictures }: RecordInFile,
): Result<MergedRecord, RecordRefusal> {
  const merged = mergeLogs(held.entries, entries);
  // A record that is new here has been verified when it was read.
  const log = held.entries.length === 0 ? ok(undefined) : verifyLog(merged.entries, { job });
  // Two different entries in one place: one device wrote two histories. What is held stays as it is.
  if (!log.ok) return refuse({ code: 'record-log-damaged', job, damage: log.refusal });
  const named = planNamedIn(merged.entries);
  const ruling = named === plan?.digest ? plan?.plan : held.plan;
  const row = rowOfLog(job, merged.entries, ruling);
  if (row === undefined) return refuse({ code: 'record-without-a-bike', job });
  return ok({ entries: merged.added, row, ...(plan && { plan }), blobs: pictures });
}
