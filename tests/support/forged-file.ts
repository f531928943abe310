/** Record files as somebody with bad intent would make them: good ones taken apart, changed and put together again. */

import { unzipSync, type Zippable, zipSync } from 'fflate';
import type { Manifest } from '../../src/exchange/bundle.schema';
import type { BundleSource, ReadRecord } from '../../src/exchange/bundle-source';
import { textDigest } from '../../src/exchange/text-digest';
import { writeBundle } from '../../src/exchange/write-bundle';
import { blobSink } from './tablets';

export type Members = Record<string, Uint8Array>;

export async function membersOf(file: Blob): Promise<Members> {
  return unzipSync(new Uint8Array(await file.arrayBuffer()));
}

export function zipped(members: Zippable): Blob {
  return new Blob([new Uint8Array(zipSync(members, { mtime: '1980-01-01T00:00:00' }))]);
}

/** The file with some of its members changed; nothing else is made to fit. */
export async function reworked(file: Blob, change: (members: Members) => void): Promise<Blob> {
  const members = await membersOf(file);
  change(members);
  return zipped(members);
}

/** The file with its manifest changed. */
export function withManifest(file: Blob, change: (manifest: LooseManifest) => void): Promise<Blob> {
  return reworked(file, (members) => {
    const manifest = JSON.parse(textOf(members['manifest.json'])) as LooseManifest; // tests reach into it freely
    change(manifest);
    members['manifest.json'] = bytesOf(JSON.stringify(manifest));
  });
}

export type LooseManifest = {
  -readonly [Name in keyof Manifest]: Manifest[Name];
} & Record<string, unknown>;

/** The file with another text in one of the members that the manifest names by path, and the manifest fitting it. */
export function withPart(file: Blob, path: string, content: string): Promise<Blob> {
  return reworked(file, (members) => {
    members[path] = bytesOf(content);
    const manifest = JSON.parse(textOf(members['manifest.json'])) as Manifest; // as it was written
    const others = manifest.others.filter((other) => other.path !== path);
    const named = { ...manifest, others: [...others, { path, sha256: textDigest(content) }] };
    members['manifest.json'] = bytesOf(JSON.stringify(named));
  });
}

/** A file that is well formed through and through, around records of any content at all. */
export async function fileAround(
  records: Readonly<Record<string, ReadRecord>>,
  pictures: Readonly<Record<string, { readonly type: string; readonly bytes: Uint8Array }>> = {},
): Promise<Blob> {
  const jobs = Object.keys(records);
  const source: BundleSource = {
    scope: 'records',
    at: '2026-11-25T10:00:00+00:00',
    device: 'elsewhere',
    shop: { name: 'Elsewhere', market: 'gb', demo: false },
    jobs,
    ends: [],
    people: { people: [], publicKeys: [] },
    readme: 'What this is.\n',
    readRecord: async (job) => records[job] ?? { entries: [] },
    readPicture: async (digest) => {
      const picture = pictures[digest];
      return picture && { digest, ...picture };
    },
  };
  const sink = blobSink();
  await writeBundle(source, sink);
  return sink.blob();
}

export function textOf(bytes: Uint8Array | undefined): string {
  return new TextDecoder().decode(bytes);
}

export function bytesOf(content: string): Uint8Array {
  return new TextEncoder().encode(content);
}
