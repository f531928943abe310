/** The digest of a text as it stands in a file: SHA-256 of its UTF-8 bytes. */

import { digestOfBytes } from '../engine/integrity';

export function textDigest(content: string): string {
  return digestOfBytes(new TextEncoder().encode(content));
}
