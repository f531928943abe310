/** The tables on the disk. A later version only adds: an older app may still open what a newer one has made. */

import { Dexie, type Table } from 'dexie';
import type { Entry } from '../../engine/integrity';
import type { JobPlan } from '../../engine/job';
import type { CatalogueVersion } from '../../engine/plan';
import type { Customer, JobRow, KeptKey, KnownFigure, Person, Setting, Tool } from '../contract';
import { countWrenchDays } from './upgrades';

/** Counts up with every change of the tables; code of a lower epoch refuses to work on a higher one. */
export const schemaEpoch = 3;

/** Bytes as an ArrayBuffer: some browsers fail to keep Blobs. */
export interface BlobRow {
  readonly digest: string;
  readonly type: string;
  readonly bytes: ArrayBuffer;
}

export interface PlanRow {
  readonly digest: string;
  readonly plan: JobPlan;
}

export interface Tables {
  readonly entries: Table<Entry, string>;
  readonly jobs: Table<JobRow, string>;
  readonly plans: Table<PlanRow, string>;
  readonly blobs: Table<BlobRow, string>;
  readonly people: Table<Person, string>;
  readonly customers: Table<Customer, string>;
  readonly tools: Table<Tool, string>;
  readonly catalogue: Table<KnownFigure, string>;
  readonly settings: Table<Setting, string>;
  readonly keys: Table<KeptKey, string>;
  readonly catalogueVersions: Table<CatalogueVersion, string>;
}

export type Database = Dexie & Tables;

export function createDatabase(name: string): Database {
  const database = new Dexie(name, {
    // Relaxed durability, the default, loses seconds of work in a power cut.
    chromeTransactionDurability: 'strict',
    // With its cache on, Dexie shows a write before it is committed.
    cache: 'disabled',
    // Opening is ours to do, so that an outdated tab cannot open again behind our back.
    autoOpen: false,
  });
  database.version(1).stores({
    entries: 'id, job',
    jobs: 'job, frameNumber',
    plans: 'digest',
    blobs: 'digest',
    people: 'id',
    customers: 'digest',
    tools: 'id',
    catalogue: 'id',
    settings: 'id',
    keys: 'id',
  });
  database.version(2).stores({ jobs: 'job, frameNumber, *wrenchDays' }).upgrade(countWrenchDays);
  database.version(schemaEpoch).stores({ catalogueVersions: 'id' });
  return database as Database; // Dexie adds a member for each table that stores() names
}
