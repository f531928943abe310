/** Bytes as people say them. */

import { words } from '../words';

export function sizeText(bytes: number): string {
  const mega = bytes / 1_000_000;
  if (mega >= 1000) return `${words.writing.figure(mega / 1000)} GB`;
  return mega >= 1 ? `${words.writing.figure(mega)} MB` : `${Math.ceil(bytes / 1000)} kB`;
}
