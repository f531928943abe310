/** Files in and out, through the browser's own picker and download. */

import { ok, type Result, refuse } from '../engine/base';

export interface FileToSave {
  readonly name: string;
  readonly type: string;
  readonly content: string | Uint8Array<ArrayBuffer> | Blob;
}

export function saveFile({ name, type, content }: FileToSave, page: Document = document): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = page.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The download reads the address after the click; a minute is long enough for any device.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** The text of a picked file: UTF-8, or UTF-16 where the file says so in its first bytes. */
export async function readTextFile(file: Blob): Promise<Result<string, FileNotText>> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const encoding = bytes[0] === 0xff && bytes[1] === 0xfe ? 'utf-16le' : 'utf-8';
  try {
    return ok(new TextDecoder(encoding, { fatal: true }).decode(bytes));
  } catch {
    return refuse({ code: 'file-not-text' });
  }
}
export type FileNotText = { readonly code: 'file-not-text' };
