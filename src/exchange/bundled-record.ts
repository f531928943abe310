/** One record out of a record file: log, plan and pictures, each byte accounted for, or a refusal that says what is wrong. */

import { ok, type Result, refuse } from '../engine/base';
import {
  digestOf,
  digestOfBytes,
  type Entry,
  type LogDamaged,
  verifyLog,
} from '../engine/integrity';
import { type JobPlan, jobPlanSchema, planNamedIn } from '../engine/job';
import { type BundledRecord, logPath, picturePath, planPath } from './bundle.schema';
import { jsonIn, type MemberMissing, type MemberReader, parsed, textIn } from './bundle-members';
import { isPicture } from './drawn-picture';
import type { CopiedRow, Holdings } from './holdings';
import { isUnderstoodOrNew } from './known-event';
import { picturesIn } from './named-digests';
import { rowOfLog } from './row-of-log';
import type { MemberDamaged } from './zip-member';

/** Far above any job, far below what could exhaust a tablet. */
const largestLog = 16 * 2 ** 20;
const largestPlan = 8 * 2 ** 20;
const largestPicture = 16 * 2 ** 20;
const mostEntries = 20_000;
const mostDevices = 100;
const mostPictures = 2000;

export interface RecordInFile {
  readonly job: string;
  readonly entries: readonly Entry[];
  readonly heads: readonly string[];
  readonly plan?: { readonly digest: string; readonly plan: JobPlan };
  readonly pictures: Holdings['blobs'];
  /** Pictures that the log names and the file does not hold. */
  readonly picturesMissing: number;
  readonly row: CopiedRow;
}

/** `verified` remembers the digests of logs that were found whole: the same bytes need not be verified twice. */
export async function readBundledRecord(
  read: MemberReader,
  record: BundledRecord,
  verified: Set<string>,
): Promise<Result<RecordInFile, RecordRefusal>> {
  const { job, heads } = record;
  const entries = await readLog(read, record);
  if (!entries.ok) return entries;
  if (!verified.has(record.log)) {
    const log = verifyLog(entries.value, { job, heads, inOrder: true });
    if (!log.ok) return refuse({ code: 'record-log-damaged', job, damage: log.refusal });
    const odd = entries.value.find(({ event }) => !isUnderstoodOrNew(event));
    if (odd !== undefined) return refuse({ code: 'record-event-malformed', job, entry: odd.id });
    verified.add(record.log);
  }
  const plan = await readPlan(read, record, planNamedIn(entries.value));
  if (!plan.ok) return plan;
  const pictures = await readPictures(read, record);
  if (!pictures.ok) return pictures;
  const row = rowOfLog(job, entries.value, plan.value?.plan);
  if (row === undefined) return refuse({ code: 'record-without-a-bike', job });
  const held = new Set(pictures.value.map(({ digest }) => digest));
  return ok({
    job,
    entries: entries.value,
    heads,
    ...(plan.value && { plan: plan.value }),
    pictures: pictures.value,
    picturesMissing: picturesIn(entries.value).filter((digest) => !held.has(digest)).length,
    row,
  });
}
export type RecordRefusal =
  | { readonly code: 'record-not-in-file' | 'record-without-a-bike'; readonly job: string }
  | { readonly code: 'record-part-changed'; readonly job: string; readonly path: string }
  | { readonly code: 'record-too-long'; readonly job: string }
  | { readonly code: 'record-log-damaged'; readonly job: string; readonly damage: LogDamaged }
  | { readonly code: 'record-event-malformed'; readonly job: string; readonly entry: string }
  | { readonly code: 'record-plan-missing'; readonly job: string }
  | { readonly code: 'record-picture-forbidden'; readonly job: string; readonly path: string }
  | MemberDamaged
  | MemberMissing;

async function readLog(
  read: MemberReader,
  { job, log, entries: count }: BundledRecord,
): Promise<Result<readonly Entry[], RecordRefusal>> {
  const path = logPath(log);
  const bytes = await read(path, largestLog);
  if (!bytes.ok) return bytes;
  if (digestOfBytes(bytes.value) !== log) return refuse({ code: 'record-part-changed', job, path });
  const lines = textIn(bytes.value)?.split('\n') ?? [];
  if (lines.pop() !== '' || lines.length !== count)
    return refuse({ code: 'record-part-changed', job, path });
  // Looked at before anything is worked out from them: a graph of any size could keep a tablet busy for hours.
  if (lines.length > mostEntries) return refuse({ code: 'record-too-long', job });
  const given = lines.map(parsed);
  const devices = new Set(given.map(deviceIn));
  if (devices.size > mostDevices) return refuse({ code: 'record-too-long', job });
  return ok(given as readonly Entry[]); // looked at by verifyLog, which takes anything
}

function deviceIn(entry: unknown): unknown {
  return typeof entry === 'object' && entry !== null && 'device' in entry
    ? entry.device
    : undefined;
}

async function readPlan(
  read: MemberReader,
  { job, plan: digest }: BundledRecord,
  named: string | undefined,
): Promise<Result<RecordInFile['plan'], RecordRefusal>> {
  if (named !== digest) return refuse({ code: 'record-plan-missing', job });
  if (digest === undefined) return ok(undefined);
  const path = planPath(digest);
  const bytes = await read(path, largestPlan);
  if (!bytes.ok) return bytes;
  const changed = refuse({ code: 'record-part-changed', job, path } as const);
  if (digestOfBytes(bytes.value) !== digest) return changed;
  const given = jsonIn(bytes.value);
  if (!jobPlanSchema.safeParse(given).success) return changed;
  // As it stands: members of a newer app belong to what the digest covers.
  return digestOf(given) === digest ? ok({ digest, plan: given as JobPlan }) : changed;
}

async function readPictures(
  read: MemberReader,
  { job, pictures }: BundledRecord,
): Promise<Result<Holdings['blobs'], RecordRefusal>> {
  if (pictures.length > mostPictures) return refuse({ code: 'record-too-long', job });
  const blobs: Holdings['blobs'][number][] = [];
  for (const picture of pictures) {
    const path = picturePath(picture);
    const bytes = await read(path, largestPicture);
    if (!bytes.ok) return bytes;
    if (digestOfBytes(bytes.value) !== picture.digest)
      return refuse({ code: 'record-part-changed', job, path });
    if (!isPicture(picture.type, bytes.value))
      return refuse({ code: 'record-picture-forbidden', job, path });
    blobs.push({ ...picture, bytes: bytes.value });
  }
  return ok(blobs);
}
