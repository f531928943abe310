/** What the state needs of files: record files written and opened, and places where bytes can go. */

import type { Result } from '../engine/base';
import type { Entry, RecordEnd, RecordProof } from '../engine/integrity';
import type { JobPlan } from '../engine/job';
import type { CatalogueVersion } from '../engine/plan';
import type {
  Customer,
  JobRow,
  JobWrite,
  KeptBlob,
  KnownFigure,
  Person,
  Tool,
} from '../storage/contract';

/** Takes the bytes of one file; it is there whole after `close`, and not at all after `abandon`. */
export interface FileSink {
  write(bytes: Uint8Array<ArrayBuffer>): Promise<void>;
  close(): Promise<void>;
  abandon(): Promise<void>;
}

export type FolderUnavailable = { readonly code: 'folder-unavailable' };

/** A folder that a person has chosen; `handle` is the browser's, and can be kept. */
export interface ChosenFolder {
  readonly name: string;
  readonly handle: unknown;
}

export interface FilePlaces {
  /** Into the downloads, once it is closed. */
  download(name: string, type: string): FileSink;
  /** Only where the browser lets a page write into a folder; asks the person. */
  readonly chooseFolder?: (() => Promise<Result<ChosenFolder, FolderUnavailable>>) | undefined;
  inFolder(folder: ChosenFolder, name: string): Promise<Result<FileSink, FolderUnavailable>>;
}

export interface PublicKeysOf {
  /** `person:…` or `device`. */
  readonly id: string;
  readonly keys: readonly Readonly<Record<string, unknown>>[];
}

export type FilePerson = Omit<Person, 'demoPin'>;

export interface FilePeople {
  readonly people: readonly FilePerson[];
  readonly publicKeys: readonly PublicKeysOf[];
}

export interface FileCustomers {
  readonly customers: readonly Customer[];
  readonly erased: readonly string[];
}

export interface FileHead {
  readonly scope: 'records' | 'shop';
  readonly at: string;
  readonly device: string;
  readonly shop: { readonly name: string; readonly market: string; readonly demo: boolean };
  readonly digest: { readonly root: string; readonly count: number };
}

/** What a file is written from. */
export interface FileSource extends Omit<FileHead, 'digest'> {
  readonly jobs: readonly string[];
  readonly ends: readonly RecordEnd[];
  readonly people: FilePeople;
  readonly customers?: FileCustomers;
  readonly shopParts?: {
    readonly tools: readonly Tool[];
    readonly figures: readonly KnownFigure[];
    readonly catalogueVersions?: readonly CatalogueVersion[];
  };
  readRecord(job: string): Promise<{ readonly entries: readonly Entry[]; readonly plan?: JobPlan }>;
  readPicture(digest: string): Promise<KeptBlob | undefined>;
}

export interface FileWritten {
  readonly records: number;
  /** Bytes. */
  readonly size: number;
  readonly digest: FileHead['digest'];
}

/** What is wrong with a file or one record of it; the words know each code. */
export interface FileRefusal {
  readonly code: string;
  readonly job?: string;
  readonly path?: string;
  readonly damage?: unknown;
}

/** One record out of a file, verified through and through. */
export interface FileRecord {
  readonly job: string;
  readonly entries: readonly Entry[];
  readonly heads: readonly string[];
  readonly plan?: { readonly digest: string; readonly plan: JobPlan };
  readonly pictures: readonly KeptBlob[];
  readonly picturesMissing: number;
  readonly row: JobRow;
}

export interface OpenedFile {
  readonly manifest: FileHead & {
    readonly records: readonly (RecordEnd & {
      readonly entries: number;
      readonly proof: RecordProof;
    })[];
  };
  readonly people: FilePeople;
  readonly customers: FileCustomers;
  readonly shopParts: FileSource['shopParts'] | undefined;
  readRecord(job: string): Promise<Result<FileRecord, FileRefusal>>;
}

export type ToldProgress = (done: number, of: number) => void;

export interface RecordFiles {
  write(
    source: FileSource,
    sink: FileSink,
    onProgress?: ToldProgress,
  ): Promise<Result<FileWritten, FileRefusal>>;
  /** Any file at all may be given; nothing is believed of it. */
  open(file: Blob): Promise<Result<OpenedFile, FileRefusal>>;
  /** What is to be kept when a record meets the one that is held: pure, for inside a transaction. */
  merge(
    held: { readonly entries: readonly Entry[]; readonly plan?: JobPlan },
    come: FileRecord,
  ): Result<JobWrite, FileRefusal>;
}

/** For what works with record files once their code is there. */
export interface WithRecordFiles {
  readonly recordFiles: RecordFiles;
}
