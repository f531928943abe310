/** One digest over many leaves, and short proofs that a leaf is among them (RFC 9162, 2.1; SHA-256). */

import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, concatBytes, hexToBytes } from '@noble/hashes/utils.js';
import { assert } from '../base';

/** Leaves and nodes are hashed apart, so that a node can never pass for a leaf (RFC 9162, 2.1.1). */
const leafPrefix = Uint8Array.of(0);
const nodePrefix = Uint8Array.of(1);

export interface MerkleTree {
  /** Lower-case hex. Of no leaves: the SHA-256 of nothing. */
  readonly root: string;
  readonly size: number;
  /** The inclusion proof of the leaf at this index (from 0), lower-case hex, from the leaf upwards. Throws outside the tree. */
  proofOf(index: number): readonly string[];
}

/** Hashes n leaves with 2n − 1 digests; a proof then costs none. */
export function merkleTree(leaves: readonly Uint8Array[]): MerkleTree {
  const levels = levelsOver(leaves.map(leafHash));
  const top = levels.at(-1)?.[0] ?? sha256(new Uint8Array());
  return {
    root: bytesToHex(top),
    size: leaves.length,
    proofOf(index) {
      assert(Number.isInteger(index) && index >= 0 && index < leaves.length, 'no such leaf');
      return proofThrough(levels, index);
    },
  };
}

export interface Inclusion {
  readonly leaf: Uint8Array;
  /** From 0. */
  readonly index: number;
  readonly size: number;
  /** Lower-case hex, from the leaf upwards. */
  readonly proof: readonly string[];
  readonly root: string;
}

/** Whether the proof leads from the leaf to the root (RFC 9162, 2.1.3.2). Any malformed part is a plain no. */
export function isIncluded({ leaf, index, size, proof, root }: Inclusion): boolean {
  const isPlace = Number.isSafeInteger(size) && Number.isSafeInteger(index);
  if (!isPlace || index < 0 || index >= size) return false;
  if (!proof.every((digest) => /^[0-9a-f]{64}$/.test(digest))) return false;
  let node = leafHash(leaf);
  let place = index;
  let last = size - 1;
  for (const digest of proof) {
    if (last === 0) return false;
    const sibling = hexToBytes(digest);
    if (place % 2 === 1 || place === last) {
      node = nodeHash(sibling, node);
      while (place % 2 === 0 && place !== 0) [place, last] = [half(place), half(last)];
    } else {
      node = nodeHash(node, sibling);
    }
    [place, last] = [half(place), half(last)];
  }
  return last === 0 && bytesToHex(node) === root;
}

/**
 * The levels from the leaves up. Pairing neighbours and carrying an odd last one up gives the same tree as splitting at
 * the largest power of two (RFC 9162, 2.1.1), without recursion.
 */
function levelsOver(leaves: readonly Uint8Array[]): readonly (readonly Uint8Array[])[] {
  const levels = [leaves];
  for (let level = leaves; level.length > 1; ) {
    const below = level;
    level = Array.from({ length: Math.ceil(below.length / 2) }, (_, at) => {
      const [left, right] = below.slice(2 * at, 2 * at + 2);
      assert(left !== undefined, 'each pair has a left one');
      return right === undefined ? left : nodeHash(left, right);
    });
    levels.push(level);
  }
  return levels;
}

function proofThrough(levels: readonly (readonly Uint8Array[])[], index: number): string[] {
  return levels.flatMap((level, height) => {
    const place = Math.floor(index / 2 ** height);
    const sibling = level[place % 2 === 0 ? place + 1 : place - 1];
    return sibling === undefined ? [] : [bytesToHex(sibling)];
  });
}

function leafHash(leaf: Uint8Array): Uint8Array {
  return sha256(concatBytes(leafPrefix, leaf));
}

function nodeHash(left: Uint8Array, right: Uint8Array): Uint8Array {
  return sha256(concatBytes(nodePrefix, left, right));
}

function half(count: number): number {
  return Math.floor(count / 2);
}
