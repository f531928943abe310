/** Logs of one job beside each other: what both hold together, and which of them has seen the other's end. */

import type { Entry, LoggedEvent } from './entry';
import { orderLog } from './log-order';

/** The union of two logs in its one order, and what the first did not hold yet. */
export interface MergedLog<E extends LoggedEvent = LoggedEvent> {
  readonly entries: readonly Entry<E>[];
  readonly added: readonly Entry<E>[];
}

/** Entries are named by their content, so merging is no more than the union of two sets. */
export function mergeLogs<E extends LoggedEvent>(
  held: readonly Entry<E>[],
  come: readonly Entry<E>[],
): MergedLog<E> {
  const ids = new Set(held.map(({ id }) => id));
  return {
    entries: orderLog([...held, ...come]),
    added: orderLog(come.filter(({ id }) => !ids.has(id))),
  };
}

/** The entries that these heads had behind them, themselves included, in order; undefined when one of them is not there. */
export function pastOf<E extends LoggedEvent>(
  entries: readonly Entry<E>[],
  heads: readonly string[],
): readonly Entry<E>[] | undefined {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const seen = new Map<string, Entry<E>>();
  const open = [...heads];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    const entry = byId.get(id);
    if (entry === undefined) return undefined;
    if (seen.has(id)) continue;
    seen.set(id, entry);
    open.push(...entry.parents);
  }
  return orderLog([...seen.values()]);
}

/** How one log stands to another of the same job. */
export const logStandings = ['same', 'behind', 'ahead', 'apart'] as const;
export type LogStanding = (typeof logStandings)[number];

/** `behind`: the other holds all of this one and more; `apart`: each holds something that the other does not. */
export function standingOfLog(
  one: readonly Pick<Entry, 'id'>[],
  other: readonly Pick<Entry, 'id'>[],
): LogStanding {
  const [own, others] = [one, other].map((log) => new Set(log.map(({ id }) => id)));
  const isInOther = [...(own ?? [])].every((id) => others?.has(id));
  const isInOne = [...(others ?? [])].every((id) => own?.has(id));
  if (isInOther) return isInOne ? 'same' : 'behind';
  return isInOne ? 'ahead' : 'apart';
}

/** Entries that whoever sealed the record had not seen, though they did not come after it: another tablet's, for example. */
export function besideHeads<E extends LoggedEvent>(
  entries: readonly Entry<E>[],
  heads: readonly string[],
): readonly Entry<E>[] {
  const past = new Set(pastOf(entries, heads)?.map(({ id }) => id));
  const after = new Set<string>(heads);
  return orderLog(entries).filter(({ id, parents }) => {
    if (parents.some((parent) => after.has(parent))) after.add(id);
    return !past.has(id) && !after.has(id);
  });
}
