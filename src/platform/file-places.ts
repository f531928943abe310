/** Where the bytes of a file can go: into the downloads, or into a folder that a person has chosen. */

import { ok, type Result, refuse } from '../engine/base';
import { saveFile } from './files';

export interface FileSink {
  write(bytes: Uint8Array<ArrayBuffer>): Promise<void>;
  close(): Promise<void>;
  abandon(): Promise<void>;
}

export type FolderUnavailable = { readonly code: 'folder-unavailable' };

export interface ChosenFolder {
  readonly name: string;
  readonly handle: unknown;
}

/** Pieces this large go out of the page's memory into a Blob, which the browser keeps where it likes. */
const heldBytes = 8 * 2 ** 20;

/** A download is one click on a link, so the whole file is put together first; on the disk where the browser has one for Blobs. */
export function downloadSink(
  name: string,
  type: string,
  save: (file: { name: string; type: string; content: Blob }) => void = saveFile,
): FileSink {
  let pieces: Uint8Array<ArrayBuffer>[] = [];
  let parts: Blob[] = [];
  let held = 0;
  const setAside = () => {
    parts.push(new Blob(pieces));
    pieces = [];
    held = 0;
  };
  return {
    async write(bytes) {
      pieces.push(bytes);
      held += bytes.length;
      if (held >= heldBytes) setAside();
    },
    async close() {
      setAside();
      save({ name, type, content: new Blob(parts, { type }) });
      parts = [];
    },
    async abandon() {
      pieces = [];
      parts = [];
    },
  };
}

/** Not in the DOM types: only some browsers have it. */
interface FolderPicker {
  showDirectoryPicker?(how: {
    readonly id: string;
    readonly mode: 'readwrite';
  }): Promise<FileSystemDirectoryHandle>;
}

interface AskingHandle extends FileSystemDirectoryHandle {
  requestPermission?(how: { readonly mode: 'readwrite' }): Promise<PermissionState>;
}

/** Undefined where the browser lets no page write into folders. */
export function folderChooser(
  browser: object & FolderPicker = window,
): (() => Promise<Result<ChosenFolder, FolderUnavailable>>) | undefined {
  if (browser.showDirectoryPicker === undefined) return undefined;
  return async () => {
    try {
      const handle = await browser.showDirectoryPicker?.({ id: 'backup', mode: 'readwrite' });
      if (handle === undefined) return refuse({ code: 'folder-unavailable' });
      return ok({ name: handle.name, handle });
    } catch {
      // Closed without choosing, or not allowed.
      return refuse({ code: 'folder-unavailable' });
    }
  };
}

/** The browser asks again for leave after each start; the file appears in the folder once it is whole. */
export async function sinkInFolder(
  { handle }: ChosenFolder,
  name: string,
): Promise<Result<FileSink, FolderUnavailable>> {
  try {
    const folder = handle as AskingHandle; // as the chooser above gave it
    const answer = (await folder.requestPermission?.({ mode: 'readwrite' })) ?? 'granted';
    if (answer !== 'granted') return refuse({ code: 'folder-unavailable' });
    const file = await folder.getFileHandle(name, { create: true });
    const stream = await file.createWritable();
    return ok({
      write: (bytes) => stream.write(bytes),
      close: () => stream.close(),
      abandon: () => stream.abort(),
    });
  } catch {
    return refuse({ code: 'folder-unavailable' });
  }
}
