/** Reads a copy: every log verified, every digest worked out again; all of it or nothing. */

import { ok, type Refused, type Result, refuse } from '../engine/base';
import {
  digestOf,
  digestOfBytes,
  type Entry,
  type LogDamaged,
  verifyLog,
} from '../engine/integrity';
import { type JobPlan, planNamedIn } from '../engine/job';
import { bytesFromBase64 } from './base64';
import { type Copy, copyFormat, copySchema, copyVersion } from './copy.schema';
import type { CopiedRow, Holdings } from './holdings';
import { isUnderstoodOrNew } from './known-event';
import { rowOfLog } from './row-of-log';

export function readCopy(text: string): Result<Holdings, CopyRefusal> {
  const shaped = copyIn(text);
  if (!shaped.ok) return shaped;
  const copy = shaped.value;
  const planByDigest = new Map(copy.plans.map(({ digest, plan }) => [digest, plan]));
  const rows: CopiedRow[] = [];
  for (const { job, heads, entries } of copy.jobs) {
    const row = verifiedRow(job, heads, entries as readonly Entry[], planByDigest); // the schema has looked
    if (!row.ok) return row;
    rows.push(row.value);
  }
  const blobs = blobsIn(copy);
  if (!blobs.ok) return blobs;
  return (
    digestFault(copy) ??
    ok({
      entries: copy.jobs.flatMap(({ entries }) => entries as readonly Entry[]), // as above
      rows,
      plans: copy.plans,
      blobs: blobs.value,
      people: copy.people,
      customers: copy.customers,
      tools: copy.tools,
      figures: copy.figures,
      catalogueVersions: copy.catalogueVersions,
      settings: copy.shop === undefined ? [] : [{ id: 'shop', value: copy.shop }],
      keys: keyRows(copy),
    })
  );
}
export type CopyRefusal =
  | { readonly code: 'copy-not-readable' }
  | { readonly code: 'copy-of-another-version'; readonly version: number }
  | { readonly code: 'copy-malformed'; readonly place: string }
  | { readonly code: 'copy-log-damaged'; readonly job: string; readonly damage: LogDamaged }
  | { readonly code: 'copy-event-malformed'; readonly job: string; readonly entry: string }
  | { readonly code: 'copy-plan-missing'; readonly job: string }
  | { readonly code: 'copy-digest-wrong'; readonly place: string };

function copyIn(text: string): Result<Copy, CopyRefusal> {
  let given: unknown;
  try {
    given = JSON.parse(text);
  } catch {
    return refuse({ code: 'copy-not-readable' });
  }
  if (typeof given !== 'object' || given === null || !('format' in given && 'version' in given))
    return refuse({ code: 'copy-not-readable' });
  const { format, version } = given;
  if (format !== copyFormat || typeof version !== 'number')
    return refuse({ code: 'copy-not-readable' });
  if (version !== copyVersion) return refuse({ code: 'copy-of-another-version', version });
  const copy = copySchema.safeParse(given);
  if (copy.success) return ok(copy.data);
  return refuse({ code: 'copy-malformed', place: copy.error.issues[0]?.path.join('.') ?? '' });
}

function verifiedRow(
  job: string,
  heads: readonly string[],
  entries: readonly Entry[],
  plans: ReadonlyMap<string, JobPlan>,
): Result<CopiedRow, CopyRefusal> {
  const log = verifyLog(entries, { job, heads });
  if (!log.ok) return refuse({ code: 'copy-log-damaged', job, damage: log.refusal });
  const odd = entries.find(({ event }) => !isUnderstoodOrNew(event));
  if (odd !== undefined) return refuse({ code: 'copy-event-malformed', job, entry: odd.id });
  const named = planNamedIn(entries);
  const plan = plans.get(named ?? '');
  if (named !== undefined && plan === undefined) return refuse({ code: 'copy-plan-missing', job });
  const row = rowOfLog(job, entries, plan);
  return row === undefined ? refuse({ code: 'copy-malformed', place: job }) : ok(row);
}

function blobsIn({ blobs }: Copy): Result<Holdings['blobs'], CopyRefusal> {
  const read = blobs.map(({ base64, ...blob }) => ({ ...blob, bytes: bytesFromBase64(base64) }));
  const whole = read.flatMap(({ bytes, ...blob }) =>
    bytes !== undefined && digestOfBytes(bytes) === blob.digest ? [{ ...blob, bytes }] : [],
  );
  if (whole.length === blobs.length) return ok(whole);
  const wrong = blobs.find(({ digest }) => !whole.some((blob) => blob.digest === digest));
  return refuse({ code: 'copy-digest-wrong', place: `blobs.${wrong?.digest ?? ''}` });
}

function digestFault({ plans, customers }: Copy): Refused<CopyRefusal> | undefined {
  const plan = plans.find((row) => digestOf(row.plan) !== row.digest);
  if (plan) return refuse({ code: 'copy-digest-wrong', place: `plans.${plan.digest}` });
  const customer = customers.find(({ digest, ...rest }) => digestOf(rest) !== digest);
  return customer && refuse({ code: 'copy-digest-wrong', place: `customers.${customer.digest}` });
}

/** The device that wrote the copy is a former one here: this device signs with its own key. */
function keyRows({ publicKeys }: Copy): NonNullable<Holdings['keys']> {
  const isDevice = (id: string) => id === 'device' || id === 'former-devices';
  const devices = publicKeys.filter(({ id }) => isDevice(id)).flatMap(({ keys }) => keys);
  const people = publicKeys.filter(({ id }) => !isDevice(id));
  return [
    ...people.map(({ id, keys }) => ({ id, value: { publicKeys: keys } })),
    { id: 'former-devices', value: { publicKeys: devices } },
  ];
}
