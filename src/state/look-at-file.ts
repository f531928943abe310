/** A record file looked at before anything is kept: each record verified, and how it stands to the one that is held. */

import { ok, type Result } from '../engine/base';
import { type LogStanding, mergeLogs, standingOfLog } from '../engine/integrity';
import { replay } from '../engine/job';
import type {
  FileRecord,
  FileRefusal,
  OpenedFile,
  ToldProgress,
  WithRecordFiles,
} from './file-ports';
import { broughtKeys } from './known-keys';
import type { AppPorts } from './ports';
import { checkSignaturesIn, type SignatureChecked } from './signature-check';

export type LookPorts = Pick<AppPorts, 'storage' | 'keys'> & WithRecordFiles;

export interface GoodRecord {
  readonly job: string;
  readonly frameNumber: string;
  readonly make: string;
  readonly model: string;
  readonly heads: readonly string[];
  readonly entries: number;
  /** `new` when this tablet holds no such record; otherwise how the file's stands to the held one. */
  readonly standing: 'new' | LogStanding;
  /** Entries that are not held here yet. */
  readonly added: number;
  /** Tablets that wrote on it without having seen each other. */
  readonly forks: number;
  readonly isHandedOver: boolean;
  readonly signatures: readonly SignatureChecked[];
  readonly pictures: number;
  readonly picturesMissing: number;
}

export interface RefusedRecord {
  readonly job: string;
  readonly refusal: FileRefusal;
}

export interface FileLooked {
  readonly file: OpenedFile;
  readonly good: readonly GoodRecord[];
  readonly refused: readonly RefusedRecord[];
  /** Whose public keys this tablet did not know: names where the file tells them. */
  readonly newSigners: readonly string[];
}

/** Reads everything once and keeps nothing. Progress counts records. */
export async function lookAtFile(
  ports: LookPorts,
  picked: Blob,
  onProgress: ToldProgress = () => undefined,
): Promise<Result<FileLooked, FileRefusal>> {
  const opened = await ports.recordFiles.open(picked);
  if (!opened.ok) return opened;
  const file = opened.value;
  const good: GoodRecord[] = [];
  const refused: RefusedRecord[] = [];
  const { records } = file.manifest;
  for (const [index, { job }] of records.entries()) {
    const read = await file.readRecord(job);
    const looked = read.ok ? await lookedAt(ports, file, read.value) : read;
    if (looked.ok) good.push(looked.value);
    else refused.push({ job, refusal: looked.refusal });
    onProgress(index + 1, records.length);
  }
  const { newFor } = broughtKeys(await ports.storage.keys.all(), file.people.publicKeys);
  return ok({ file, good, refused, newSigners: newFor.map((id) => nameIn(file, id)) });
}

async function lookedAt(
  ports: LookPorts,
  file: OpenedFile,
  record: FileRecord,
): Promise<Result<GoodRecord, FileRefusal>> {
  const { job, entries, plan, row, heads, pictures, picturesMissing } = record;
  const held = await ports.storage.log(job);
  const merged = ports.recordFiles.merge(held, record);
  if (!merged.ok) return merged;
  const state = replay(entries, plan?.plan);
  return ok({
    job,
    frameNumber: row.frameNumber,
    make: row.make,
    model: row.model,
    heads,
    entries: entries.length,
    standing: held.entries.length === 0 ? 'new' : standingOfLog(entries, held.entries),
    added: mergeLogs(held.entries, entries).added.length,
    forks: forksIn(entries),
    isHandedOver: state.handedOver !== undefined,
    signatures: await checkSignaturesIn(job, state, async (jws, by) => {
      const known = await ports.keys.verify(jws, by);
      if (known.ok) return { ...known, by: 'here' as const };
      const keys = file.people.publicKeys.find(({ id }) => id === `person:${by}`)?.keys ?? [];
      const brought = await ports.keys.verifyWith(jws, keys);
      if (brought.ok) return { ...brought, by: 'file' as const };
      return keys.length > 0 ? brought : known;
    }),
    pictures: pictures.length,
    picturesMissing,
  });
}

function forksIn(entries: FileRecord['entries']): number {
  const children = new Map<string, number>();
  for (const parent of entries.flatMap(({ parents }) => [...new Set(parents)]))
    children.set(parent, (children.get(parent) ?? 0) + 1);
  return [...children.values()].filter((count) => count > 1).length;
}

function nameIn({ people }: OpenedFile, id: string): string {
  return people.people.find((person) => `person:${person.id}` === id)?.name ?? '';
}
