/** Records into a file: some of them, or the whole shop, read one by one and written as they come. */

import { type Result, refuse } from '../engine/base';
import type { Customer, JobRow, StorageRefusal } from '../storage/contract';
import type {
  FileRefusal,
  FileSink,
  FileSource,
  FileWritten,
  ToldProgress,
  WithRecordFiles,
} from './file-ports';
import { erasedCustomers } from './forget-customer';
import { publicKeysIn } from './known-keys';
import type { AppPorts } from './ports';
import { refusalIn } from './storage-refusals';

export type WritePorts = Pick<AppPorts, 'storage' | 'clock' | 'device'> & WithRecordFiles;

export type NotWritten = StorageRefusal | FileRefusal | { readonly code: 'file-not-written' };

export interface WhatToWrite {
  /** Absent: everything the shop has. */
  readonly jobs?: readonly string[];
  /** Whether the customers of these records come along: between the shop's own tablets, not to strangers. */
  readonly withCustomers: boolean;
}

export async function writeRecords(
  ports: WritePorts,
  what: WhatToWrite,
  sink: FileSink,
  onProgress?: ToldProgress,
): Promise<Result<FileWritten, NotWritten>> {
  try {
    const source = await sourceOf(ports, what);
    const written = await ports.recordFiles.write(source, told(sink), onProgress);
    if (written.ok) await told(sink).close();
    else await sink.abandon();
    return written;
  } catch (error) {
    await sink.abandon().catch(() => undefined);
    return refuse(error instanceof SinkFailed ? { code: 'file-not-written' } : refusalIn(error));
  }
}

async function sourceOf(
  { storage, clock, device }: WritePorts,
  { jobs, withCustomers }: WhatToWrite,
): Promise<FileSource> {
  const rows = await storage.rows();
  const chosen = jobs ?? rows.map(({ job }) => job);
  const shop = (await storage.settings.get('shop'))?.value;
  const kept: Readonly<Record<string, unknown>> =
    typeof shop === 'object' && shop !== null ? { ...shop } : {};
  const people = await storage.people.all();
  return {
    scope: jobs === undefined ? 'shop' : 'records',
    at: clock.now().claimed,
    device,
    shop: {
      name: typeof kept.name === 'string' ? kept.name : '',
      market: typeof kept.market === 'string' ? kept.market : '',
      demo: kept.demo === true,
    },
    jobs: chosen,
    ends: rows.map(({ job, heads }: JobRow) => ({ job, heads })),
    people: {
      people: people.map(({ demoPin: _, ...person }) => person),
      publicKeys: publicKeysIn(await storage.keys.all()),
    },
    ...(withCustomers && {
      customers: {
        customers: await customersOf(storage, jobs === undefined ? undefined : chosen),
        erased: await erasedCustomers(storage.settings),
      },
    }),
    ...(jobs === undefined && {
      shopParts: {
        tools: await storage.tools.all(),
        figures: await storage.figures.all(),
        catalogueVersions: await storage.catalogueVersions.all(),
      },
    }),
    readRecord: (job) => storage.log(job),
    readPicture: (digest) => storage.blob(digest),
  };
}

/** Everybody, or those whom these records name by their digests. */
async function customersOf(
  storage: WritePorts['storage'],
  jobs: readonly string[] | undefined,
): Promise<readonly Customer[]> {
  const all = await storage.customers.all();
  if (jobs === undefined) return all;
  const named = new Set<unknown>();
  for (const job of jobs) {
    for (const { event } of (await storage.log(job)).entries)
      if ('customer' in event) named.add(event.customer);
  }
  return all.filter(({ digest }) => named.has(digest));
}

class SinkFailed extends Error {}

/** A sink whose failures can be told from the storage's. */
function told(sink: FileSink): FileSink {
  const marked = async (work: () => Promise<void>) => {
    try {
      await work();
    } catch (error) {
      throw new SinkFailed(error instanceof Error ? error.message : String(error));
    }
  };
  return {
    write: (bytes) => marked(() => sink.write(bytes)),
    close: () => marked(() => sink.close()),
    abandon: sink.abandon,
  };
}

export function fileName(day: string, what: string): string {
  return `standbook-${what.replaceAll(/[^A-Za-z0-9-]+/g, '-')}-${day}.zip`;
}
