/** Writes logs for the tests: chains, forks and joins on several devices. */

import fc from 'fast-check';
import {
  type Entry,
  logEnd,
  nextPlace,
  seal,
  type UnsealedEntry,
} from '../../src/engine/integrity';

export function unsealed(changes: Partial<UnsealedEntry> = {}): UnsealedEntry {
  return {
    v: 1,
    job: 'job-1',
    device: 'tablet-a',
    seq: 1,
    lamport: 1,
    parents: [],
    at: { claimed: '2026-11-25T10:00:00+01:00', zone: 'Europe/Berlin' },
    by: 'person-1',
    event: { kind: 'step-done', v: 1 },
    ...changes,
  };
}

/** The next entry that a device writes after having seen the given entries. */
export function written(seen: readonly Entry[], device: string, note = ''): Entry {
  const event = { kind: 'step-done', v: 1, note };
  return seal(unsealed({ ...nextPlace(logEnd(seen, device)), device, event }));
}

export function chain(length: number, device = 'tablet-a'): Entry[] {
  const log: Entry[] = [];
  for (let n = 1; n <= length; n += 1) log.push(written(log, device, `note ${n}`));
  return log;
}

/** One chain, then two tablets apart, then an entry that joins them. */
export function forkAndJoin(): { root: Entry; a: Entry; b: Entry; join: Entry; log: Entry[] } {
  const root = written([], 'tablet-a', 'opened');
  const a = written([root], 'tablet-a', 'on a');
  const b = written([root], 'tablet-b', 'on b');
  const join = written([root, a, b], 'tablet-a', 'joined');
  return { root, a, b, join, log: [root, a, b, join] };
}

/** Any log that up to three tablets could write, exchanging what they have at any time. */
export const anyLog: fc.Arbitrary<Entry[]> = fc
  .array(fc.record({ device: fc.nat(2), meets: fc.option(fc.nat(2)) }), {
    minLength: 1,
    maxLength: 14,
  })
  .map((turns) => {
    const seenByDevice: Entry[][] = [[], [], []];
    const log: Entry[] = [];
    for (const [index, { device, meets }] of turns.entries()) {
      const other = meets === null ? [] : (seenByDevice[meets] ?? []);
      const seen = [...new Set([...(seenByDevice[device] ?? []), ...other])];
      const entry = written(seen, `tablet-${device}`, `turn ${index}`);
      seenByDevice[device] = [...seen, entry];
      log.push(entry);
    }
    return log;
  });
