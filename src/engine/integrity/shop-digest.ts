/** One digest over every record of a shop as it stands, and the proof that a record is under it. */

import { utf8ToBytes } from '@noble/hashes/utils.js';
import { assert, compareText } from '../base';
import { canonicalJson } from './canonical-json';
import { isIncluded, merkleTree } from './merkle';

/** A record as the digest sees it: which job, and where its log ends. */
export interface RecordEnd {
  readonly job: string;
  /** Sorted. */
  readonly heads: readonly string[];
}

export interface RecordProof {
  /** From 0, among the shop's records in order of their job ids. */
  readonly index: number;
  readonly size: number;
  /** Lower-case hex, from the leaf upwards. */
  readonly proof: readonly string[];
}

export interface ShopDigest {
  /** Lower-case hex root (RFC 9162) over the canonical JSON of each `{ heads, job }`, in order of job ids. */
  readonly root: string;
  readonly count: number;
  /** Undefined for a job that is not among them. */
  proofOf(job: string): RecordProof | undefined;
}

/** The same records give the same digest, in whatever order they come. Throws when a job is given twice. */
export function shopDigest(records: readonly RecordEnd[]): ShopDigest {
  const ordered = [...records].sort((a, b) => compareText(a.job, b.job));
  const indexByJob = new Map(ordered.map(({ job }, index) => [job, index]));
  assert(indexByJob.size === ordered.length, 'a job has one record');
  const { root, size, proofOf } = merkleTree(ordered.map(leafOf));
  return {
    root,
    count: size,
    proofOf(job) {
      const index = indexByJob.get(job);
      return index === undefined ? undefined : { index, size, proof: proofOf(index) };
    },
  };
}

/** Whether this record stood under this digest with exactly these heads. */
export function isUnderDigest(record: RecordEnd, proof: RecordProof, root: string): boolean {
  return isIncluded({ leaf: leafOf(record), ...proof, root });
}

function leafOf({ job, heads }: RecordEnd): Uint8Array {
  return utf8ToBytes(canonicalJson({ job, heads: [...heads].sort(compareText) }));
}
