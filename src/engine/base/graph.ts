/** Directed graphs over ids: order, cycles, descendants. Serves plan order, rework and the queue. */

import { compareNumbers } from './order';
import { ok, type Refused, type Result, refuse } from './result';

/** For each node, the nodes it points from: `after.get('b')` = `['a']` says a comes before b. */
export type Predecessors = ReadonlyMap<string, readonly string[]>;

export type CycleFound = { readonly code: 'cycle-found'; readonly cycle: readonly string[] };

/**
 * Orders nodes so that every node stands after its predecessors; among nodes that are free, the one with the
 * lowest rank comes first (ties by insertion order), so the answer is the same on every machine.
 * Predecessors that are not nodes of the graph are ignored. Refuses with one cycle when there is no order.
 */
export function topologicalOrder(
  after: Predecessors,
  rank: (node: string) => number = () => 0,
): Result<readonly string[], CycleFound> {
  const waiting = new Map<string, Set<string>>();
  for (const [node, before] of after) {
    waiting.set(node, new Set(before.filter((other) => after.has(other))));
  }
  const position = new Map([...after.keys()].map((node, index) => [node, index]));
  const order: string[] = [];
  while (waiting.size > 0) {
    const free = [...waiting].filter(([, before]) => before.size === 0).map(([node]) => node);
    if (free.length === 0) return cycleIn(waiting);
    const next = free.reduce((best, node) => (isEarlier(node, best, rank, position) ? node : best));
    order.push(next);
    waiting.delete(next);
    for (const before of waiting.values()) before.delete(next);
  }
  return ok(order);
}

function isEarlier(
  node: string,
  best: string,
  rank: (node: string) => number,
  position: ReadonlyMap<string, number>,
): boolean {
  const byRank = compareNumbers(rank(node), rank(best));
  if (byRank !== 0) return byRank < 0;
  return compareNumbers(position.get(node) ?? 0, position.get(best) ?? 0) < 0;
}

function cycleIn(waiting: ReadonlyMap<string, ReadonlySet<string>>): Refused<CycleFound> {
  const seen: string[] = [];
  let node = waiting.keys().next().value as string;
  while (!seen.includes(node)) {
    seen.push(node);
    node = waiting.get(node)?.values().next().value as string;
  }
  return refuse({ code: 'cycle-found', cycle: [...seen.slice(seen.indexOf(node)), node] });
}

/**
 * Everything that transitively stands on `from` by the given edges, `from` itself not included,
 * in the graph's own insertion order.
 */
export function descendants(after: Predecessors, from: readonly string[]): readonly string[] {
  const reached = new Set(from);
  let grew = true;
  while (grew) {
    grew = false;
    for (const [node, before] of after) {
      if (!reached.has(node) && before.some((other) => reached.has(other))) {
        reached.add(node);
        grew = true;
      }
    }
  }
  for (const start of from) reached.delete(start);
  return [...after.keys()].filter((node) => reached.has(node));
}
