/** Opens a record file: its directory, its manifest and that both tell of the same members; records are read one at a time. */

import { ok, type Refused, type Result, refuse } from '../engine/base';
import { digestOf, digestOfBytes, isUnderDigest } from '../engine/integrity';
import {
  type BundledCustomers,
  type BundledPeople,
  type BundledShop,
  bundleFormat,
  bundleVersion,
  customersSchema,
  logPath,
  type Manifest,
  manifestSchema,
  memberPaths,
  peopleSchema,
  picturePath,
  planPath,
  shopSchema,
} from './bundle.schema';
import { jsonIn, type MemberReader, memberReader } from './bundle-members';
import { type RecordInFile, type RecordRefusal, readBundledRecord } from './bundled-record';
import { type FileBytes, readZipDirectory, type ZipMember, type ZipRefusal } from './zip-directory';
import type { MemberDamaged } from './zip-member';

/** Manifest, people and the like; logs and pictures have limits of their own. */
const largestText = 32 * 2 ** 20;

export interface OpenedBundle {
  readonly manifest: Manifest;
  readonly people: BundledPeople;
  readonly customers: BundledCustomers;
  readonly shopParts: BundledShop | undefined;
  /** Verifies one record and everything it names. */
  readRecord(job: string): Promise<Result<RecordInFile, RecordRefusal>>;
}

export async function openBundle(file: FileBytes): Promise<Result<OpenedBundle, BundleRefusal>> {
  const members = await readZipDirectory(file);
  if (!members.ok) return members;
  const read = memberReader(file, members.value);
  const manifest = await readManifest(read);
  if (!manifest.ok) return manifest;
  const fault = membersFault(members.value, manifest.value) ?? recordsFault(manifest.value);
  if (fault) return fault;
  return openParts(read, manifest.value);
}
export type BundleRefusal =
  | ZipRefusal
  | MemberDamaged
  | { readonly code: 'file-of-another-version'; readonly version: number }
  | { readonly code: 'file-manifest-malformed'; readonly place: string }
  | { readonly code: 'file-member-missing' | 'file-member-unnamed'; readonly path: string }
  | { readonly code: 'file-member-changed'; readonly path: string }
  | { readonly code: 'file-part-malformed'; readonly path: string; readonly place: string }
  | { readonly code: 'file-record-twice' | 'file-proof-wrong'; readonly job: string };

async function readManifest(read: MemberReader): Promise<Result<Manifest, BundleRefusal>> {
  const bytes = await read(memberPaths.manifest, largestText);
  if (!bytes.ok) {
    const isAnother = bytes.refusal.code === 'file-member-missing';
    return isAnother ? refuse({ code: 'file-not-a-record-file' }) : bytes;
  }
  const given = jsonIn(bytes.value);
  if (typeof given !== 'object' || given === null || !('format' in given && 'version' in given))
    return refuse({ code: 'file-not-a-record-file' });
  const { format, version } = given;
  if (format !== bundleFormat || typeof version !== 'number')
    return refuse({ code: 'file-not-a-record-file' });
  if (version !== bundleVersion) return refuse({ code: 'file-of-another-version', version });
  const manifest = manifestSchema.safeParse(given);
  if (manifest.success) return ok(manifest.data);
  const place = manifest.error.issues[0]?.path.join('.') ?? '';
  return refuse({ code: 'file-manifest-malformed', place });
}

/** A member that nobody names could hide anything; one that is named and not there is a loss. */
function membersFault(
  members: ReadonlyMap<string, ZipMember>,
  { records, others }: Manifest,
): Refused<BundleRefusal> | undefined {
  const named = new Set<string>([
    memberPaths.manifest,
    ...others.map(({ path }) => path),
    ...records.flatMap(({ log, plan, pictures }) => [
      logPath(log),
      ...(plan === undefined ? [] : [planPath(plan)]),
      ...pictures.map(picturePath),
    ]),
  ]);
  const unnamed = [...members.keys()].find((path) => !named.has(path));
  if (unnamed !== undefined) return refuse({ code: 'file-member-unnamed', path: unnamed });
  const missing = [...named].find((path) => !members.has(path));
  return missing === undefined ? undefined : refuse({ code: 'file-member-missing', path: missing });
}

function recordsFault({ records, digest }: Manifest): Refused<BundleRefusal> | undefined {
  const seen = new Set<string>();
  for (const { job, heads, proof } of records) {
    if (seen.has(job)) return refuse({ code: 'file-record-twice', job });
    seen.add(job);
    if (proof.size !== digest.count || !isUnderDigest({ job, heads }, proof, digest.root))
      return refuse({ code: 'file-proof-wrong', job });
  }
  return undefined;
}

async function openParts(
  read: MemberReader,
  manifest: Manifest,
): Promise<Result<OpenedBundle, BundleRefusal>> {
  const parts = new Map<string, unknown>();
  for (const { path, sha256 } of manifest.others) {
    const bytes = await read(path, largestText);
    if (!bytes.ok) return bytes;
    if (digestOfBytes(bytes.value) !== sha256) return refuse({ code: 'file-member-changed', path });
    if (path.endsWith('.json')) parts.set(path, jsonIn(bytes.value));
  }
  const people = shaped<BundledPeople>(parts, memberPaths.people, peopleSchema, noPeople);
  if (!people.ok) return people;
  const customers = shaped<BundledCustomers>(parts, memberPaths.customers, customersSchema, nobody);
  if (!customers.ok) return customers;
  const changed = customers.value.customers.some(
    ({ digest, ...rest }) => digestOf(rest) !== digest,
  );
  if (changed) return refuse({ code: 'file-member-changed', path: memberPaths.customers });
  const shop = shaped<BundledShop | undefined>(parts, memberPaths.shop, shopSchema, undefined);
  if (!shop.ok) return shop;
  const recordByJob = new Map(manifest.records.map((record) => [record.job, record]));
  const verified = new Set<string>();
  return ok({
    manifest,
    people: people.value,
    customers: customers.value,
    shopParts: shop.value,
    async readRecord(job) {
      const record = recordByJob.get(job);
      return record === undefined
        ? refuse({ code: 'record-not-in-file', job })
        : readBundledRecord(read, record, verified);
    },
  });
}

const noPeople: BundledPeople = { people: [], publicKeys: [] };
const nobody: BundledCustomers = { customers: [], erased: [] };

interface Shape {
  safeParse(given: unknown): {
    readonly success: boolean;
    readonly error?: { readonly issues: readonly { readonly path: readonly PropertyKey[] }[] };
  };
}

/** As it stands, so that what a newer app has added is not lost on the way. */
function shaped<T>(
  parts: ReadonlyMap<string, unknown>,
  path: string,
  shape: Shape,
  otherwise: T,
): Result<T, BundleRefusal> {
  if (!parts.has(path)) return ok(otherwise);
  const given = parts.get(path);
  const read = shape.safeParse(given);
  if (read.success) return ok(given as T); // the schema has looked
  const place = read.error?.issues[0]?.path.join('.') ?? '';
  return refuse({ code: 'file-part-malformed', path, place });
}
