/** The directory at the end of a ZIP file (APPNOTE 6.3), read strictly: what we would not have written is refused. */

import { ok, type Result, refuse } from '../engine/base';

/** A file as the browser hands it over: nothing is read of it but what is asked for. */
export type FileBytes = Pick<Blob, 'size' | 'slice'>;

export interface ZipMember {
  readonly path: string;
  readonly isDeflated: boolean;
  readonly crc: number;
  readonly packed: number;
  readonly size: number;
  /** Where its own header begins. */
  readonly at: number;
}

const endSize = 22;
const largestDirectory = 32 * 2 ** 20;
/** JSON packs ten to one, rarely forty to one; nothing of ours comes near this. */
const greatestSwelling = 150;
/** One folder at most, no dots but before the ending: nothing that could lead out of a folder. */
const plainPath = /^(?:[a-z]+\/)?[A-Za-z0-9_-]{1,80}\.[a-z]{2,5}$/;

export async function readZipDirectory(
  file: FileBytes,
): Promise<Result<ReadonlyMap<string, ZipMember>, ZipRefusal>> {
  const end = await bytesOf(file, Math.max(0, file.size - endSize), file.size);
  if (end.byteLength < endSize || end.getUint32(0, true) !== 0x06054b50) {
    const start = await bytesOf(file, 0, 4);
    const isBegun = start.byteLength === 4 && start.getUint32(0, true) === 0x04034b50;
    return refuse({ code: isBegun ? 'file-cut-short' : 'file-not-a-record-file' });
  }
  const count = end.getUint16(10, true);
  const size = end.getUint32(12, true);
  const at = end.getUint32(16, true);
  const isOneDisk = end.getUint32(4, true) === 0 && end.getUint16(8, true) === count;
  if (!isOneDisk || at + size + endSize !== file.size) return refuse({ code: 'file-cut-short' });
  if (size > largestDirectory) return refuse({ code: 'file-swollen' });
  const members = membersIn(await bytesOf(file, at, at + size), count);
  return members.ok ? (membersFault(members.value, at) ?? mapped(members.value)) : members;
}
export type ZipRefusal =
  | { readonly code: 'file-not-a-record-file' | 'file-cut-short' | 'file-swollen' }
  | { readonly code: 'file-directory-damaged' }
  | { readonly code: 'file-path-forbidden'; readonly path: string }
  | { readonly code: 'file-feature-unknown'; readonly path: string }
  | { readonly code: 'file-members-overlap'; readonly path: string };

export async function bytesOf(file: FileBytes, from: number, to: number): Promise<DataView> {
  return new DataView(await file.slice(from, to).arrayBuffer());
}

function membersIn(view: DataView, count: number): Result<readonly ZipMember[], ZipRefusal> {
  const members: ZipMember[] = [];
  let at = 0;
  for (let n = 0; n < count; n += 1) {
    if (at + 46 > view.byteLength || view.getUint32(at, true) !== 0x02014b50)
      return refuse({ code: 'file-directory-damaged' });
    const flags = view.getUint16(at + 8, true);
    const method = view.getUint16(at + 10, true);
    const length = view.getUint16(at + 28, true);
    const rest = view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if (at + 46 + length + rest > view.byteLength)
      return refuse({ code: 'file-directory-damaged' });
    const path = new TextDecoder().decode(
      new Uint8Array(view.buffer, view.byteOffset + at + 46, length),
    );
    if (!plainPath.test(path)) return refuse({ code: 'file-path-forbidden', path });
    // Only the data descriptor and the UTF-8 flag are ours; the others mean encryption or patches.
    const isPlain = (flags & ~0x0808) === 0 && (method === 0 || method === 8) && rest === 0;
    if (!isPlain) return refuse({ code: 'file-feature-unknown', path });
    const [crc = 0, packed = 0, size = 0] = [16, 20, 24].map((o) => view.getUint32(at + o, true));
    const own = view.getUint32(at + 42, true);
    members.push({ path, isDeflated: method === 8, crc, packed, size, at: own });
    at += 46 + length;
  }
  return at === view.byteLength ? ok(members) : refuse({ code: 'file-directory-damaged' });
}

function membersFault(members: readonly ZipMember[], directoryAt: number) {
  const inPlace = [...members].sort((a, b) => a.at - b.at);
  for (const [n, { path, at, packed, size, isDeflated }] of inPlace.entries()) {
    // Bombs repeat one packed piece under many names, or pack very much into very little.
    if (at + 30 + path.length + packed > (inPlace[n + 1]?.at ?? directoryAt))
      return refuse({ code: 'file-members-overlap' as const, path });
    const isSwollen = isDeflated ? size > greatestSwelling * packed + 1024 : size !== packed;
    if (isSwollen) return refuse({ code: 'file-swollen' as const });
  }
  return undefined;
}

function mapped(members: readonly ZipMember[]): Result<ReadonlyMap<string, ZipMember>, ZipRefusal> {
  const byPath = new Map(members.map((member) => [member.path, member]));
  if (byPath.size === members.length) return ok(byPath);
  return refuse({ code: 'file-directory-damaged' });
}
