/** Logs beside each other: their union, what an end had behind it, and how one stands to another. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  besideHeads,
  headsOf,
  mergeLogs,
  orderLog,
  pastOf,
  standingOfLog,
  verifyLog,
} from '../../../src/engine/integrity';
import { anyLog, chain, forkAndJoin } from '../../support/written-log';

const ids = (entries: readonly { readonly id: string }[] | undefined) =>
  entries?.map(({ id }) => id);

describe('mergeLogs', () => {
  test('[I18] any two parts of a log merge to the same, whichever comes first, and again to nothing new', () => {
    fc.assert(
      fc.property(
        anyLog.chain((log) =>
          fc.tuple(fc.constant(log), fc.subarray(log), fc.subarray(log), fc.subarray(log)),
        ),
        ([log, a, b, c]) => {
          const one = mergeLogs(a, b);
          const other = mergeLogs(b, a);
          expect(ids(one.entries)).toEqual(ids(other.entries));
          expect(one.entries.length).toBe(new Set([...a, ...b]).size);
          expect(new Set([...a, ...one.added])).toEqual(new Set([...a, ...b]));
          expect(mergeLogs(one.entries, b).added).toEqual([]);
          const left = mergeLogs(mergeLogs(a, b).entries, c).entries;
          const right = mergeLogs(a, mergeLogs(b, c).entries).entries;
          expect(ids(left)).toEqual(ids(right));
          expect(verifyLog(mergeLogs(a, log).entries).ok).toBe(true);
        },
      ),
    );
  });
});

describe('pastOf', () => {
  test('[I19] the heads of a log have all of it behind them', () => {
    fc.assert(
      fc.property(anyLog, (log) => {
        expect(ids(pastOf(log, headsOf(log)))).toEqual(ids(orderLog(log)));
      }),
    );
  });

  test('[I19] an earlier end has only what it had seen, and an unknown end has nothing', () => {
    const { root, a, b, join, log } = forkAndJoin();
    expect(ids(pastOf(log, [a.id]))).toEqual([root.id, a.id]);
    expect(ids(pastOf(log, [a.id, b.id]))).toEqual(ids(orderLog([root, a, b])));
    expect(pastOf(log, ['f'.repeat(64)])).toBeUndefined();
    expect(pastOf([a, join], [join.id])).toBeUndefined();
    expect(pastOf(log, [])).toEqual([]);
  });
});

describe('standingOfLog', () => {
  const [one, two, three] = chain(3);
  const rows: [string, unknown[], unknown[], string][] = [
    ['the same entries', [one, two], [two, one], 'same'],
    ['an older copy', [one], [one, two], 'behind'],
    ['a newer one', [one, two, three], [one, two], 'ahead'],
    ['each with its own', [one, two], [one, three], 'apart'],
    ['nothing at all', [], [], 'same'],
  ];
  test.each(rows)('[I19] %s', (_, a, b, expected) => {
    expect(standingOfLog(a as { id: string }[], b as { id: string }[])).toBe(expected);
  });
});

describe('besideHeads', () => {
  test('[I19] what another tablet wrote unseen stands beside; what came after does not', () => {
    const { root, a, b, join, log } = forkAndJoin();
    expect(ids(besideHeads([root, a, b], [a.id]))).toEqual([b.id]);
    // The entry that joins both came after the head, and has seen the other branch too.
    expect(ids(besideHeads(log, [a.id]))).toEqual([b.id]);
    expect(besideHeads(log, [join.id])).toEqual([]);
    expect(besideHeads(chain(4), [chain(4)[1]?.id ?? ''])).toEqual([]);
  });
});
