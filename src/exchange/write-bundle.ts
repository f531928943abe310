/** Writes a record file piece by piece: each job's log, plan and pictures, then what belongs to the shop, then the manifest. */

import { ok, type Result, refuse } from '../engine/base';
import { canonicalJson, headsOf, orderLog, shopDigest } from '../engine/integrity';
import { recordCode, replay, statusOf } from '../engine/job';
import {
  type BundledRecord,
  bundleFormat,
  bundleVersion,
  logPath,
  type Manifest,
  manifestSchema,
  memberPaths,
  type PictureType,
  picturePath,
  pictureTypes,
  planPath,
} from './bundle.schema';
import type { BundleSource, BundleWritten, ReadRecord, ToldProgress } from './bundle-source';
import { csvLines } from './csv-cell';
import { digestsIn } from './named-digests';
import { textDigest } from './text-digest';
import { type ByteSink, createZipWriter, type ZipWriter } from './zip-writer';

/** What a ZIP file without extensions can hold, less a margin. */
const greatestSize = 4_000_000_000;
const mostMembers = 60_000;

const indexHeader = ['frame_number', 'make', 'model', 'status', 'record', 'handed_over', 'log'];

type Unproved = Omit<BundledRecord, 'proof'>;

/** Progress counts records. Rejects when the sink or the source does. */
export async function writeBundle(
  source: BundleSource,
  sink: ByteSink,
  onProgress: ToldProgress = () => undefined,
): Promise<Result<BundleWritten, BundleNotWritten>> {
  const zip = createZipWriter(sink);
  const records: Unproved[] = [];
  const index: (readonly string[])[] = [indexHeader];
  const isWritten = new Set<string>();
  for (const job of source.jobs) {
    const read = await source.readRecord(job);
    if (read.entries.length === 0) continue;
    const record = await writeRecord(zip, source, job, read, isWritten);
    records.push(record);
    index.push(indexRow(record, read));
    if (zip.size() > greatestSize || zip.count() > mostMembers)
      return refuse({ code: 'file-too-large-to-write', records: records.length });
    onProgress(records.length, source.jobs.length);
  }
  const others = [
    await writeText(zip, memberPaths.readme, source.readme),
    await writeText(zip, memberPaths.index, csvLines(index)),
    await writeText(zip, memberPaths.people, jsonText(source.people)),
    ...(source.customers === undefined
      ? []
      : [await writeText(zip, memberPaths.customers, jsonText(source.customers))]),
    ...(source.shopParts === undefined
      ? []
      : [await writeText(zip, memberPaths.shop, jsonText(source.shopParts))]),
  ];
  const manifest = manifestOf(source, records, others);
  await writeText(zip, memberPaths.manifest, jsonText(manifestSchema.parse(manifest)));
  await zip.end();
  return ok({ records: records.length, size: zip.size(), digest: manifest.digest });
}
export type BundleNotWritten = {
  readonly code: 'file-too-large-to-write';
  readonly records: number;
};

async function writeRecord(
  zip: ZipWriter,
  { readPicture }: BundleSource,
  job: string,
  { entries, plan }: ReadRecord,
  isWritten: Set<string>,
): Promise<Unproved> {
  const log = orderLog(entries)
    .map((entry) => `${canonicalJson(entry)}\n`)
    .join('');
  const sha256 = textDigest(log);
  await zip.add(logPath(sha256), encoded(log), 'packed');
  const planText = plan === undefined ? undefined : canonicalJson(plan);
  const planDigest = planText === undefined ? undefined : textDigest(planText);
  if (planText !== undefined && planDigest !== undefined && !isWritten.has(planDigest)) {
    isWritten.add(planDigest);
    await zip.add(planPath(planDigest), encoded(planText), 'packed');
  }
  const pictures: BundledRecord['pictures'] = [];
  for (const digest of digestsIn(entries)) {
    const blob = await readPicture(digest);
    if (blob === undefined || !isPictureType(blob.type)) continue;
    const picture = { digest, type: blob.type };
    pictures.push(picture);
    if (isWritten.has(digest)) continue;
    isWritten.add(digest);
    await zip.add(picturePath(picture), blob.bytes, 'stored');
  }
  return {
    job,
    heads: [...headsOf(entries)],
    entries: entries.length,
    log: sha256,
    plan: planDigest,
    pictures,
  };
}

function manifestOf(
  { scope, at, device, shop, ends }: BundleSource,
  records: readonly Unproved[],
  others: Manifest['others'],
): Manifest {
  const written = new Map(records.map(({ job, heads }) => [job, heads]));
  // What was read and written counts, also where the job went on while the file was written.
  const rest = ends.filter(({ job }) => !written.has(job));
  const digest = shopDigest([...rest, ...records]);
  return {
    format: bundleFormat,
    version: bundleVersion,
    scope,
    at,
    device,
    shop,
    digest: { root: digest.root, count: digest.count },
    records: records.flatMap((record) => {
      const proof = digest.proofOf(record.job);
      return proof === undefined
        ? []
        : [{ ...record, proof: { ...proof, proof: [...proof.proof] } }];
    }),
    others,
  };
}

/** What a person looks for in a list, without the app. */
function indexRow({ job, log }: Unproved, { entries, plan }: ReadRecord): readonly string[] {
  const state = replay(entries, plan);
  return [
    state.bike?.frameNumber ?? '',
    state.bike?.make ?? '',
    state.bike?.model ?? '',
    statusOf(state),
    recordCode(job),
    state.handedOver?.at.claimed ?? '',
    logPath(log),
  ];
}

async function writeText(zip: ZipWriter, path: string, content: string) {
  await zip.add(path, encoded(content), 'packed');
  return { path, sha256: textDigest(content) };
}

function jsonText(value: unknown): string {
  return `${JSON.stringify(value, null, 1)}\n`;
}

function encoded(content: string): Uint8Array {
  return new TextEncoder().encode(content);
}

function isPictureType(type: string): type is PictureType {
  return Object.hasOwn(pictureTypes, type);
}
