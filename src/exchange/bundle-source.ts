/** What a record file is written from: read piece by piece, so that a shop of any size fits through. */

import type { Entry, RecordEnd } from '../engine/integrity';
import type { JobPlan } from '../engine/job';
import type { Manifest } from './bundle.schema';
import type { Holdings } from './holdings';

export interface ReadRecord {
  readonly entries: readonly Entry[];
  readonly plan?: JobPlan;
}

export interface BundleSource {
  readonly scope: Manifest['scope'];
  readonly at: string;
  readonly device: string;
  readonly shop: Manifest['shop'];
  /** The records to write. */
  readonly jobs: readonly string[];
  /** Where every record of the shop ends: what the shop's digest stands over. */
  readonly ends: readonly RecordEnd[];
  readonly people: {
    readonly people: Holdings['people'];
    readonly publicKeys: readonly {
      readonly id: string;
      readonly keys: readonly Readonly<Record<string, unknown>>[];
    }[];
  };
  /** Left out where the file goes to somebody who need not know them. */
  readonly customers?: {
    readonly customers: Holdings['customers'];
    readonly erased: readonly string[];
  };
  /** Only in a backup. */
  readonly shopParts?: Pick<Holdings, 'tools' | 'figures' | 'catalogueVersions'>;
  /** What the file says to somebody who has no app. */
  readonly readme: string;
  readRecord(job: string): Promise<ReadRecord>;
  readPicture(digest: string): Promise<Holdings['blobs'][number] | undefined>;
}

export interface BundleWritten {
  readonly records: number;
  /** Bytes. */
  readonly size: number;
  readonly digest: Manifest['digest'];
}

export type ToldProgress = (done: number, of: number) => void;
