/** The order of a log, its heads and the next place. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { headsOf, logEnd, nextPlace, orderLog, seal } from '../../../src/engine/integrity';
import { anyLog, chain, forkAndJoin, unsealed, written } from '../../support/written-log';

describe('headsOf', () => {
  test('[I6] a chain has one head, a fork two (sorted), a joined fork one, an empty log none', () => {
    const { root, a, b, join, log } = forkAndJoin();
    expect(headsOf([])).toEqual([]);
    expect(headsOf([root])).toEqual([root.id]);
    expect(headsOf([root, a, b])).toEqual([a.id, b.id].sort());
    expect(headsOf(log)).toEqual([join.id]);
  });
});

describe('orderLog', () => {
  test('[I7] shuffles, duplicates and splits change neither order nor heads', () => {
    fc.assert(
      fc.property(
        anyLog.chain((log) =>
          fc.tuple(
            fc.constant(log),
            fc.shuffledSubarray(log, { minLength: log.length }),
            fc.shuffledSubarray(log),
          ),
        ),
        ([log, shuffled, again]) => {
          // The oracle: text keys that sort by code unit, instead of number comparisons.
          const key = (entry: (typeof log)[number]) =>
            `${String(entry.lamport).padStart(4, '0')} ${entry.device} ${String(entry.seq).padStart(4, '0')}`;
          const expected = log.map((entry) => [key(entry), entry.id].join(' ')).sort();
          const ordered = orderLog([...shuffled, ...again]);
          expect(ordered.map((entry) => [key(entry), entry.id].join(' '))).toEqual(expected);
          expect(headsOf([...shuffled, ...again])).toEqual(headsOf(log));
        },
      ),
    );
  });

  test('[I7] every entry stands after its parents', () => {
    fc.assert(
      fc.property(anyLog, (log) => {
        const ids = orderLog(log).map((entry) => entry.id);
        for (const entry of log) {
          for (const parent of entry.parents) {
            expect(ids.indexOf(parent)).toBeLessThan(ids.indexOf(entry.id));
          }
        }
      }),
    );
  });

  test('[I13] two entries with the same device and seq both stay, in an order that does not depend on arrival', () => {
    const one = seal(unsealed({ by: 'person-1' }));
    const two = seal(unsealed({ by: 'person-2' }));
    expect(orderLog([one, two])).toHaveLength(2);
    expect(orderLog([one, two])).toEqual(orderLog([two, one]));
  });
});

describe('nextPlace', () => {
  test('[I8] the first entry has no parents, lamport 1 and seq 1', () => {
    expect(nextPlace(logEnd([], 'tablet-a'))).toEqual({ parents: [], lamport: 1, seq: 1 });
  });

  test('[I8] the next entry joins all heads, one above the greatest, one after its own device', () => {
    const { root, a, b } = forkAndJoin();
    const later = written([root, a, b], 'tablet-b');
    const c = written([root], 'tablet-c');
    const log = [root, a, b, later, c];
    expect(nextPlace(logEnd(log, 'tablet-a'))).toEqual({
      parents: [later.id, c.id].sort(),
      lamport: 4,
      seq: 3,
    });
    expect(nextPlace(logEnd(log, 'tablet-d')).seq).toBe(1);
  });

  test('[I8] a clock that goes backwards or is a century off changes no place', () => {
    const log = chain(2);
    const at = { claimed: '1926-01-01T00:00:00Z', zone: 'UTC' };
    const early = seal(unsealed({ ...nextPlace(logEnd(log, 'tablet-a')), at }));
    expect(orderLog([early, ...log]).at(-1)).toBe(early);
  });

  test('[I8] what storage kept of a log end is enough, in any order of heads', () => {
    const heads = ['b'.repeat(64), 'a'.repeat(64)];
    expect(nextPlace({ heads, lamport: 7, lastSeq: 3 })).toEqual({
      parents: [...heads].reverse(),
      lamport: 8,
      seq: 4,
    });
  });
});
