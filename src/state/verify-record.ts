/** A printed code held against a record: the one on this tablet, or the one in a file. */

import type { Result } from '../engine/base';
import { besideHeads, type Entry, type LogDamaged, pastOf, verifyLog } from '../engine/integrity';
import type { StorageRefusal } from '../storage/contract';
import type { FileRefusal } from './file-ports';
import type { FileLooked } from './look-at-file';
import type { AppPorts } from './ports';
import type { SheetCode } from './read-code';
import { checkSignatures, type SignatureChecked, wrongSignatures } from './signature-check';
import { attempted } from './storage-refusals';

export type Verified =
  | { readonly outcome: 'not-here' }
  | { readonly outcome: 'damaged'; readonly refusal: LogDamaged | FileRefusal }
  /** The record does not contain what was printed, or is about another frame. */
  | { readonly outcome: 'not-what-was-printed' }
  | {
      readonly outcome: 'whole';
      readonly entries: number;
      /** Entries that came after the page was printed. */
      readonly after: number;
      /** Entries that another tablet had written by then and the printing one had not seen. */
      readonly beside: number;
      readonly signatures: readonly SignatureChecked[];
    };

export async function verifyHeld(
  ports: Pick<AppPorts, 'storage' | 'keys'>,
  { job, frame, heads }: SheetCode,
): Promise<Result<Verified, StorageRefusal>> {
  return attempted(async (): Promise<Verified> => {
    const row = await ports.storage.row(job);
    const { entries } = await ports.storage.log(job);
    if (row === undefined || entries.length === 0) return { outcome: 'not-here' };
    const checks = await checkSignatures(ports, job);
    const signatures = wrongSignatures(checks);
    const log = verifyLog(entries, { job, heads: row.heads, signatures });
    if (!log.ok) return { outcome: 'damaged', refusal: log.refusal };
    return row.frameNumber === frame
      ? held(entries, heads, checks)
      : { outcome: 'not-what-was-printed' };
  });
}

export async function verifyInFile(
  { file, good, refused }: FileLooked,
  { job, frame, heads }: SheetCode,
): Promise<Verified> {
  const damaged = refused.find((record) => record.job === job);
  if (damaged !== undefined) return { outcome: 'damaged', refusal: damaged.refusal };
  const record = good.find((candidate) => candidate.job === job);
  if (record === undefined) return { outcome: 'not-here' };
  const read = await file.readRecord(job);
  if (!read.ok) return { outcome: 'damaged', refusal: read.refusal };
  if (record.frameNumber !== frame) return { outcome: 'not-what-was-printed' };
  return held(read.value.entries, heads, record.signatures);
}

function held(
  entries: readonly Entry[],
  heads: readonly string[],
  signatures: readonly SignatureChecked[],
): Verified {
  const past = pastOf(entries, heads);
  if (past === undefined) return { outcome: 'not-what-was-printed' };
  const beside = besideHeads(entries, heads).length;
  const after = entries.length - past.length - beside;
  return { outcome: 'whole', entries: entries.length, after, beside, signatures };
}
