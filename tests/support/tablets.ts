/** Tablets of one shop that are apart: each with a storage of its own, meeting only through record files. */

import { createRecordFiles } from '../../src/exchange/record-files';
import { createKeys } from '../../src/platform/keys';
import { createPerform, type FileLooked, type Perform } from '../../src/state';
import { lookAtFile } from '../../src/state/look-at-file';
import { type TakenIn, takeInRecords } from '../../src/state/take-in-records';
import { type WhatToWrite, writeRecords } from '../../src/state/write-records';
import type { Storage } from '../../src/storage/contract';
import { createMemoryStorage } from '../../src/storage/memory/memory-storage';
import { createFixedClock, type FixedClock } from './fixed-clock';

export interface Tablet {
  readonly device: string;
  readonly storage: Storage;
  readonly clock: FixedClock;
  readonly perform: Perform;
  write(what?: WhatToWrite): Promise<Blob>;
  look(file: Blob): Promise<FileLooked>;
  takeIn(file: Blob): Promise<TakenIn>;
}

export const recordFiles = createRecordFiles('What this is.\n');

export function createTablet(device: string, storage: Storage = createMemoryStorage()): Tablet {
  const clock = createFixedClock();
  const ports = { storage, clock, device, recordFiles, keys: createKeys(storage.keys) };
  const look = async (file: Blob) => must(await lookAtFile(ports, file));
  return {
    device,
    storage,
    clock,
    perform: createPerform({ storage, clock, device }),
    async write(what = { withCustomers: true }) {
      const sink = blobSink();
      must(await writeRecords(ports, what, sink));
      return sink.blob();
    },
    look,
    takeIn: async (file) => must(await takeInRecords(ports, await look(file))),
  };
}

/** Gathers what is written. */
export function blobSink() {
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  return {
    write: async (bytes: Uint8Array<ArrayBuffer>) => void pieces.push(bytes),
    close: async () => undefined,
    abandon: async () => void pieces.splice(0),
    blob: () => new Blob(pieces),
  };
}

/** Everything that two tablets must hold alike, in one order. */
export async function heldBy({ storage }: Pick<Tablet, 'storage'>) {
  const { entries, rows, plans, blobs, customers } = await storage.holdings();
  const by = <T>(rowsOf: readonly T[], key: (row: T) => string) =>
    [...rowsOf].sort((a, b) => (key(a) < key(b) ? -1 : 1));
  return {
    entries: by(entries, ({ id }) => id),
    rows: by(rows, ({ job }) => job),
    plans: by(plans, ({ digest }) => digest),
    blobs: by(blobs, ({ digest }) => digest),
    customers: by(customers, ({ digest }) => digest),
  };
}

function must<T>(result: { ok: true; value: T } | { ok: false; refusal: unknown }): T {
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.refusal)}`);
  return result.value;
}
