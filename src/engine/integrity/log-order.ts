/** The order of a log, its heads, and the place of the next entry. */

import { compareNumbers, compareText } from '../base';
import type { Entry, LoggedEvent } from './entry';

/** The part of an entry that says where it stands in the graph. */
export type Placed = Pick<Entry, 'id' | 'device' | 'seq' | 'lamport' | 'parents'>;

/** The ids that are nobody's parent, sorted. */
export function headsOf(entries: readonly Pick<Entry, 'id' | 'parents'>[]): readonly string[] {
  const parents = new Set(entries.flatMap((entry) => entry.parents));
  const ids = new Set(entries.map((entry) => entry.id));
  return [...ids].filter((id) => !parents.has(id)).sort(compareText);
}

/**
 * The log in its one order: by lamport, then device, then seq; each id once. Two entries that claim the same device and
 * seq both stay, by id.
 */
export function orderLog<E extends LoggedEvent>(entries: readonly Entry<E>[]): readonly Entry<E>[] {
  return [...new Map(entries.map((entry) => [entry.id, entry])).values()].sort(comparePlaces);
}

export function comparePlaces(a: Placed, b: Placed): number {
  return (
    compareNumbers(a.lamport, b.lamport) ||
    compareText(a.device, b.device) ||
    compareNumbers(a.seq, b.seq) ||
    compareText(a.id, b.id)
  );
}

/** Where a log stands for one device: its heads, their greatest lamport, and the device's last seq (0 for none). */
export interface LogEnd {
  readonly heads: readonly string[];
  readonly lamport: number;
  readonly lastSeq: number;
}

export type Place = Pick<Entry, 'parents' | 'lamport' | 'seq'>;

/** Where a log stands for one device, from its entries. */
export function logEnd(entries: readonly Placed[], device: string): LogEnd {
  const own = entries.filter((entry) => entry.device === device);
  return {
    heads: headsOf(entries),
    lamport: greatest(entries.map((entry) => entry.lamport)),
    lastSeq: greatest(own.map((entry) => entry.seq)),
  };
}

/** The place of the next entry: it joins all heads, and counts on from them and from its device's last. */
export function nextPlace(end: LogEnd): Place {
  return {
    parents: [...end.heads].sort(compareText),
    lamport: end.lamport + 1,
    seq: end.lastSeq + 1,
  };
}

function greatest(numbers: readonly number[]): number {
  return numbers.reduce((most, number) => Math.max(most, number), 0);
}
