/** What must be kept, and how: every storage in the house answers to this, and runs the same suite of tests. */

import type { Refusal, Result } from '../engine/base';
import type { ClaimedTime, Entry } from '../engine/integrity';
import type { JobPlan, JobSummary, Role, WrenchDay } from '../engine/job';
import type { CatalogueVersion } from '../engine/plan';
import type { Adapter, Certificate, Figure, Wrench, WrenchCondition } from '../engine/torque';

/** The rack's row for one job: everything a list shows, so that lists never fold logs. Rebuildable from the entries. */
export interface JobRow extends JobSummary {
  readonly job: string;
  readonly heads: readonly string[];
  readonly lamport: number;
  /** Highest seq by device. */
  readonly seqs: Readonly<Record<string, number>>;
  readonly count: number;
  /** How often each wrench was used on each day; jobs are found by it. */
  readonly wrenchDays: readonly WrenchDay[];
}

/** What is held of a job when a change begins. `log` is absent when the heads are those the caller had already seen. */
export interface HeldJob {
  readonly row?: JobRow;
  readonly log?: { readonly entries: readonly Entry[]; readonly plan?: JobPlan };
}

export interface KeptBlob {
  readonly digest: string;
  readonly type: string;
  readonly bytes: Uint8Array;
}

export interface JobWrite {
  readonly entries: readonly Entry[];
  readonly row: JobRow;
  readonly plan?: { readonly digest: string; readonly plan: JobPlan };
  readonly blobs?: readonly KeptBlob[];
  /** A customer's row that this change names by digest. */
  readonly customer?: Customer;
  /** Customers whom a record taken in names by their digests. */
  readonly customers?: readonly Customer[];
}

export type StorageRefusal =
  | { readonly code: 'storage-full' }
  | { readonly code: 'storage-blocked' }
  | { readonly code: 'storage-outdated' }
  | { readonly code: 'storage-failed'; readonly cause: string };

/** What a read that the browser cannot do rejects with. */
export interface StorageProblem extends Error {
  readonly refusal: StorageRefusal;
}

/** What was noted of a person, by whom and when; notes are only ever added. */
export type PersonNote = {
  /** Who did it; empty when nobody was at the stand. */
  readonly by: string;
  readonly at: ClaimedTime;
} & (
  | { readonly kind: 'joined' }
  | { readonly kind: 'left' }
  /** A supervisor gave them a new PIN and key. */
  | { readonly kind: 'new-pin'; readonly reason: string }
  /** They chose a PIN on a device that had no key of theirs, for example after a restore. */
  | { readonly kind: 'pin-here' }
  | { readonly kind: 'wrong-pin' }
);

export interface Person {
  readonly id: string;
  readonly name: string;
  readonly roles: readonly Role[];
  readonly active: boolean;
  /** Shown only in a demo shop. */
  readonly demoPin?: string;
  readonly history?: readonly PersonNote[];
}

export interface Customer {
  /** Digest of salt and details: the only trace in the log. */
  readonly digest: string;
  readonly salt: string;
  readonly name: string;
  readonly contact?: string;
}

/** One test point as it was found or left: the certificate's own shape. */
export type CertificatePoint = NonNullable<Certificate['points']>[number];

/** What was noted of a tool, by whom and when; notes are only ever added. */
export type ToolNote = { readonly by: string; readonly at: ClaimedTime } & (
  | { readonly kind: 'added' }
  | { readonly kind: 'changed' }
  | {
      readonly kind: 'calibrated';
      /** ISO dates: of the calibration, and of the next. */
      readonly on: string;
      readonly dueOn: string;
      /** The calibration before, which everything since has relied on. */
      readonly since: string;
      readonly reference?: string;
      /** As it came, before anything was done to it; empty when nothing was measured. */
      readonly found: readonly CertificatePoint[];
      readonly foundOutside: boolean;
      /** What was done, and the points it left with. */
      readonly adjusted?: { readonly how: string; readonly points: readonly CertificatePoint[] };
      /** Whether it went back into service with this calibration. */
      readonly isGood: boolean;
      /** Operations since the calibration before. */
      readonly operations: number;
    }
  | {
      readonly kind: 'condition';
      readonly from: WrenchCondition;
      readonly to: WrenchCondition;
      /** The ISO date on which it happened. */
      readonly on: string;
      readonly reason: string;
    }
  | {
      readonly kind: 'called-back';
      /** The doubt it answers: see `doubtsOf` in state. */
      readonly doubt: string;
      readonly job: string;
      readonly joints: readonly string[];
      /** The bike's record was added to, or the steps of the open job reopened. */
      readonly how: 'record-amended' | 'steps-reopened';
      /** What the person wrote. */
      readonly text: string;
    }
);

export type Tool =
  | {
      readonly id: string;
      readonly kind: 'wrench';
      /** `operations` as it was entered: what is counted since is added when it is shown. */
      readonly wrench: Wrench;
      /** Counted before the calibration on its own day, which no date tells apart. */
      readonly countedBefore?: number;
      readonly history?: readonly ToolNote[];
    }
  | {
      readonly id: string;
      readonly kind: 'adapter';
      readonly name: string;
      readonly adapter: Adapter;
      /** The wrench on which its grip was measured; on another one the grip is another. */
      readonly wrench?: string;
      readonly retired?: boolean;
      readonly history?: readonly ToolNote[];
    };

/** A figure the shop knows for a make and model, from a document or approved by someone, or last read on the part. */
export interface KnownFigure {
  /** `${make}|${model}|${joint}` */
  readonly id: string;
  readonly make: string;
  readonly model: string;
  readonly joint: string;
  readonly figure: Figure;
}

export interface Setting {
  readonly id: string;
  readonly value: unknown;
}

export interface KeptKey {
  /** `person:<id>`, `device`, … */
  readonly id: string;
  readonly value: unknown;
}

/** Everything a copy can carry. Private keys never leave the device. */
export interface Holdings {
  readonly entries: readonly Entry[];
  readonly rows: readonly JobRow[];
  readonly plans: readonly { readonly digest: string; readonly plan: JobPlan }[];
  readonly blobs: readonly KeptBlob[];
  readonly people: readonly Person[];
  readonly customers: readonly Customer[];
  readonly tools: readonly Tool[];
  readonly figures: readonly KnownFigure[];
  readonly settings: readonly Setting[];
  /** What the shop has changed in the catalogue. */
  readonly catalogueVersions?: readonly CatalogueVersion[];
  /** Public keys that a copy brings along; never read out here, because these rows also hold the private ones. */
  readonly keys?: readonly KeptKey[];
}

export type LeftBehind = Partial<Pick<Required<Holdings>, 'settings' | 'keys' | 'people'>>;

/** Only an empty shop takes in a copy, so that nothing is mixed or overwritten. */
export interface ShopNotEmpty {
  readonly code: 'shop-not-empty';
  readonly jobs: number;
}

/**
 * One table of plain rows. Reads and single writes that the browser cannot do reject with a `StorageProblem`.
 * `watch` calls back with all rows now and after every committed change, until stopped.
 */
export interface Shelf<Row> {
  get(id: string): Promise<Row | undefined>;
  all(): Promise<readonly Row[]>;
  put(row: Row): Promise<void>;
  putAll(rows: readonly Row[]): Promise<void>;
  /** Reads, lets `work` answer synchronously and keeps the answer, in one transaction; nothing answered keeps nothing. */
  change(id: string, work: (held: Row | undefined) => Row | undefined): Promise<void>;
  remove(id: string): Promise<void>;
  watch(onRows: (rows: readonly Row[]) => void): () => void;
}

export interface Storage {
  /**
   * The one way to change a job: opens one durable read-write transaction, reads what is held, lets `work` answer
   * synchronously, and keeps everything it answers or nothing. Resolves only after the commit. When the held heads
   * equal `seen`, the log is not read. A failure to write is a refusal, never an exception; an exception from `work` is thrown on.
   */
  changeJob<W extends JobWrite, R extends Refusal>(
    job: string,
    seen: readonly string[] | undefined,
    work: (held: HeldJob) => Result<W, R>,
  ): Promise<Result<W, R | StorageRefusal>>;
  /** Keeps many new jobs, all or none. */
  addJobs(writes: readonly JobWrite[]): Promise<Result<number, StorageRefusal>>;
  row(job: string): Promise<JobRow | undefined>;
  /** Rows of all jobs, once. */
  rows(): Promise<readonly JobRow[]>;
  log(job: string): Promise<{ readonly entries: readonly Entry[]; readonly plan?: JobPlan }>;
  /** Rows of all jobs, now and after every committed change (also by another tab). */
  watchRows(onRows: (rows: readonly JobRow[]) => void): () => void;
  findByFrameNumber(frameNumber: string): Promise<readonly JobRow[]>;
  /** Jobs on which a wrench was used from the first day to the last, both included; found by their index. */
  findByWrench(
    wrench: string,
    days: { readonly since: string; readonly until?: string | undefined },
  ): Promise<readonly JobRow[]>;
  blob(digest: string): Promise<KeptBlob | undefined>;
  keepBlob(blob: KeptBlob): Promise<Result<true, StorageRefusal>>;
  readonly people: Shelf<Person>;
  readonly customers: Shelf<Customer>;
  readonly tools: Shelf<Tool>;
  readonly figures: Shelf<KnownFigure>;
  readonly settings: Shelf<Setting>;
  readonly catalogueVersions: Shelf<CatalogueVersion>;
  readonly keys: Shelf<KeptKey>;
  /** Everything held, read in one transaction. */
  holdings(): Promise<Holdings>;
  /** Keeps a whole copy in a shop without jobs or people: all of it or nothing. */
  takeIn(holdings: Holdings): Promise<Result<true, ShopNotEmpty | StorageRefusal>>;
  /**
   * Empties every table: the plain way out of the demo shop. What is left there instead comes in the same transaction,
   * so that nobody ever sees a book without a shop.
   */
  eraseEverything(leaving?: LeftBehind): Promise<void>;
  /**
   * Calls back when storage stops working for a reason that the person can do something about, at once when it already
   * has, and with nothing when it works again.
   */
  onTrouble(listener: (refusal: StorageRefusal | undefined) => void): () => void;
  close(): void;
}
