/** One member of a ZIP file, unpacked piece by piece and never beyond the size it claimed. */

import { Inflate } from 'fflate';
import { ok, type Result, refuse } from '../engine/base';
import { crc32 } from './crc32';
import { bytesOf, type FileBytes, type ZipMember } from './zip-directory';

/** Packed bytes handed over at a time: what they can swell to stays small. */
const piece = 16 * 1024;

/** Its bytes, when they are as many as it claimed and have its checksum; refused unread when it claims more than `limit`. */
export async function readZipMember(
  file: FileBytes,
  member: ZipMember,
  limit: number,
): Promise<Result<Uint8Array<ArrayBuffer>, MemberDamaged>> {
  const { path, size, packed, crc } = member;
  const damaged = refuse({ code: 'file-member-damaged', path } as const);
  if (size > limit) return refuse({ code: 'file-member-too-large', path, limit });
  const from = await dataFrom(file, member);
  if (from === undefined) return damaged;
  const view = await bytesOf(file, from, from + packed);
  if (view.byteLength !== packed) return damaged;
  const bytes = new Uint8Array(view.buffer as ArrayBuffer); // as it came out of the Blob
  const unpacked = member.isDeflated ? inflated(bytes, size) : bytes;
  return unpacked?.length === size && crc32(unpacked) === crc ? ok(unpacked) : damaged;
}
export type MemberDamaged =
  | { readonly code: 'file-member-damaged'; readonly path: string }
  | { readonly code: 'file-member-too-large'; readonly path: string; readonly limit: number };

/** Where the data begins; the member's own header must tell the same name as the directory. */
async function dataFrom(file: FileBytes, { path, at }: ZipMember): Promise<number | undefined> {
  const head = await bytesOf(file, at, at + 30 + path.length);
  if (head.byteLength !== 30 + path.length || head.getUint32(0, true) !== 0x04034b50) return;
  const [length, extra] = [head.getUint16(26, true), head.getUint16(28, true)];
  const name = new TextDecoder().decode(new Uint8Array(head.buffer, 30));
  return length === path.length && extra === 0 && name === path ? at + 30 + length : undefined;
}

/** Nothing when the bytes are no deflate stream, or hold more than they claimed. */
function inflated(packed: Uint8Array, size: number): Uint8Array<ArrayBuffer> | undefined {
  const unpacked = new Uint8Array(size);
  let filled = 0;
  let isOver = false;
  const stream = new Inflate((chunk) => {
    if (filled + chunk.length > size) isOver = true;
    else unpacked.set(chunk, filled);
    filled += chunk.length;
  });
  try {
    for (let at = 0; at < packed.length && !isOver; at += piece)
      stream.push(packed.subarray(at, at + piece), at + piece >= packed.length);
  } catch {
    return undefined;
  }
  return isOver || filled !== size ? undefined : unpacked;
}
