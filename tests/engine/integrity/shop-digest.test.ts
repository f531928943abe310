/** The shop's one digest, and the proof of each record under it. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isUnderDigest, type RecordEnd, shopDigest } from '../../../src/engine/integrity';

const hex = fc.stringMatching(/^[0-9a-f]{64}$/);
const anyRecords: fc.Arbitrary<RecordEnd[]> = fc.uniqueArray(
  fc.record({ job: fc.string({ minLength: 1 }), heads: fc.uniqueArray(hex, { minLength: 1 }) }),
  { selector: ({ job }) => job, maxLength: 25 },
);

describe('shopDigest', () => {
  test('[I17] is the same in any order of records and heads, and proves each of them', () => {
    fc.assert(
      fc.property(
        anyRecords.chain((records) =>
          fc.tuple(
            fc.constant(records),
            fc.shuffledSubarray(records, { minLength: records.length }),
          ),
        ),
        ([records, shuffled]) => {
          const digest = shopDigest(records);
          const again = shopDigest(
            shuffled.map(({ job, heads }) => ({ job, heads: [...heads].reverse() })),
          );
          expect(again.root).toBe(digest.root);
          for (const record of records) {
            const proof = digest.proofOf(record.job);
            expect(proof).toEqual(again.proofOf(record.job));
            expect(proof && isUnderDigest(record, proof, digest.root)).toBe(true);
          }
        },
      ),
    );
  });

  test('[I17] another head, another job or a record left out gives another digest, and no proof holds', () => {
    const records = ['a', 'b', 'c'].map((job) => ({ job, heads: [job.repeat(64)] }));
    const digest = shopDigest(records);
    const proof = digest.proofOf('b');
    if (proof === undefined) throw new Error('b is among them');
    const moved = { job: 'b', heads: ['d'.repeat(64)] };
    const renamed = { job: 'x', heads: ['b'.repeat(64)] };
    for (const other of [moved, renamed]) {
      expect(isUnderDigest(other, proof, digest.root)).toBe(false);
      const changed = records.map((record) => (record.job === 'b' ? other : record));
      expect(shopDigest(changed).root).not.toBe(digest.root);
    }
    expect(shopDigest(records.slice(1)).root).not.toBe(digest.root);
    expect(digest.proofOf('nobody')).toBeUndefined();
    expect(() => shopDigest([...records, moved])).toThrow('one record');
  });

  test('[I17] of an empty shop is the digest of nothing (RFC 9162, 2.1.1)', () => {
    expect(shopDigest([])).toMatchObject({
      count: 0,
      root: 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
    });
  });
});
