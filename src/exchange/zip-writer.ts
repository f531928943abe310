/** Writes a ZIP file piece by piece into whatever takes bytes; nothing of it is held longer than one member. */

import { Zip, ZipDeflate, ZipPassThrough } from 'fflate';
import { assert } from '../engine/base';

/** Takes the bytes of a file, one piece after another. Rejects when it cannot. */
export interface ByteSink {
  write(bytes: Uint8Array<ArrayBuffer>): Promise<void>;
}

export interface ZipWriter {
  /** Text is packed, pictures are stored as they are. */
  add(path: string, bytes: Uint8Array, how: 'packed' | 'stored'): Promise<void>;
  end(): Promise<void>;
  /** Bytes written so far. */
  size(): number;
  count(): number;
}

/** The least a ZIP file can tell: every file written at the same claimed time is the same file. */
const earliest = '1980-01-01T00:00:00';

export function createZipWriter(sink: ByteSink): ZipWriter {
  const ready: Uint8Array[] = [];
  let size = 0;
  let count = 0;
  const zip = new Zip((error, chunk) => {
    assert(error === null, 'a member of a file can always be packed');
    ready.push(chunk);
  });

  async function flush(): Promise<void> {
    for (let chunk = ready.shift(); chunk !== undefined; chunk = ready.shift()) {
      size += chunk.length;
      await sink.write(new Uint8Array(chunk));
    }
  }

  return {
    async add(path, bytes, how) {
      const member =
        how === 'packed' ? new ZipDeflate(path, { level: 6 }) : new ZipPassThrough(path);
      member.mtime = earliest;
      zip.add(member);
      member.push(bytes, true);
      count += 1;
      await flush();
    },
    async end() {
      zip.end();
      await flush();
    },
    size: () => size,
    count: () => count,
  };
}
