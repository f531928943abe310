/** Members of a record file by their paths, and the JSON in them. */

import { type Result, refuse } from '../engine/base';
import type { FileBytes, ZipMember } from './zip-directory';
import { type MemberDamaged, readZipMember } from './zip-member';

export type MemberReader = (
  path: string,
  limit: number,
) => Promise<Result<Uint8Array<ArrayBuffer>, MemberDamaged | MemberMissing>>;

export type MemberMissing = { readonly code: 'file-member-missing'; readonly path: string };

export function memberReader(
  file: FileBytes,
  members: ReadonlyMap<string, ZipMember>,
): MemberReader {
  return async (path, limit) => {
    const member = members.get(path);
    if (member === undefined) return refuse({ code: 'file-member-missing', path });
    return readZipMember(file, member, limit);
  };
}

/** Undefined when the bytes are no UTF-8 or no JSON. */
export function jsonIn(bytes: Uint8Array): unknown {
  const content = textIn(bytes);
  return content === undefined ? undefined : parsed(content);
}

export function textIn(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

export function parsed(content: string): unknown {
  try {
    return JSON.parse(content);
  } catch {
    return undefined;
  }
}
