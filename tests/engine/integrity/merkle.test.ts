/** The Merkle tree against its recursive definition, and proofs against everything that is not the leaf. */

import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, concatBytes } from '@noble/hashes/utils.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isIncluded, merkleTree } from '../../../src/engine/integrity';

const anyLeaves = fc.array(fc.uint8Array({ maxLength: 12 }), { maxLength: 40 });

/** MTH as RFC 9162, 2.1.1 writes it down: split at the largest power of two smaller than n. */
function rootByDefinition(leaves: readonly Uint8Array[]): Uint8Array {
  const [only] = leaves;
  if (only === undefined) return sha256(new Uint8Array());
  if (leaves.length === 1) return sha256(concatBytes(Uint8Array.of(0), only));
  let split = 1;
  while (split * 2 < leaves.length) split *= 2;
  const [left, right] = [leaves.slice(0, split), leaves.slice(split)].map(rootByDefinition);
  if (left === undefined || right === undefined) throw new Error('two halves');
  return sha256(concatBytes(Uint8Array.of(1), left, right));
}

describe('merkleTree', () => {
  test('[I16] has the root that the recursive definition gives, for any leaves', () => {
    fc.assert(
      fc.property(anyLeaves, (leaves) => {
        const { root, size } = merkleTree(leaves);
        expect(root).toBe(bytesToHex(rootByDefinition(leaves)));
        expect(size).toBe(leaves.length);
      }),
    );
  });

  test('[I16] every leaf of any tree has a proof, no longer than the tree is high', () => {
    fc.assert(
      fc.property(anyLeaves, (leaves) => {
        const { root, size, proofOf } = merkleTree(leaves);
        for (const [index, leaf] of leaves.entries()) {
          const proof = proofOf(index);
          expect(isIncluded({ leaf, index, size, proof, root })).toBe(true);
          expect(proof.length).toBeLessThanOrEqual(Math.ceil(Math.log2(Math.max(size, 1))));
        }
      }),
    );
  });

  test.each([-1, 3, 0.5, Number.NaN])('[I16] has no proof for a leaf at %s of three', (index) => {
    const { proofOf } = merkleTree([1, 2, 3].map((byte) => Uint8Array.of(byte)));
    expect(() => proofOf(index)).toThrow('no such leaf');
  });
});

describe('isIncluded', () => {
  const leaves = Array.from({ length: 7 }, (_, n) => Uint8Array.of(n, n));
  const { root, size, proofOf } = merkleTree(leaves);
  const good = { leaf: Uint8Array.of(5, 5), index: 5, size, proof: proofOf(5), root };

  test('[I16] believes no other leaf, place, size, root or proof, for any change of one of them', () => {
    const anyHex = fc.stringMatching(/^[0-9a-f]{64}$/);
    const changes = fc.oneof(
      fc.record({ leaf: fc.uint8Array({ maxLength: 4 }) }),
      fc.record({ index: fc.integer({ min: -3, max: 12 }) }),
      fc.record({ root: anyHex }),
      fc.record({ proof: fc.array(anyHex, { maxLength: 6 }) }),
      fc.record({ proof: fc.shuffledSubarray([...good.proof]) }),
    );
    fc.assert(
      fc.property(changes, (change) => {
        const asked = { ...good, ...change };
        fc.pre(JSON.stringify(asked) !== JSON.stringify(good));
        expect(isIncluded(asked)).toBe(false);
      }),
      { numRuns: 1000 },
    );
  });

  test('[I16] takes no node for a leaf', () => {
    const [one, two] = leaves;
    const pair = merkleTree([one, two] as Uint8Array[]);
    const node = concatBytes(
      ...[one, two].map((leaf) => sha256(concatBytes(Uint8Array.of(0), leaf ?? new Uint8Array()))),
    );
    expect(isIncluded({ leaf: node, index: 0, size: 1, proof: [], root: pair.root })).toBe(false);
  });

  test.each<[situation: string, change: Partial<typeof good>]>([
    ['a proof cut short', { proof: good.proof.slice(0, -1) }],
    ['a proof that goes on', { proof: [...good.proof, root] }],
    ['no tree', { size: 0, index: 0 }],
    ['half a place', { index: 4.5 }],
    ['capital letters', { proof: good.proof.map((digest) => digest.toUpperCase()) }],
    ['a digest that is none', { proof: ['nonsense'] }],
    ['another size', { size: 1_000_000 }],
  ])('[I16] says no to %s', (_, change) => {
    expect(isIncluded(good)).toBe(true);
    expect(isIncluded({ ...good, ...change })).toBe(false);
  });
});
