/** The longest chain of activities: the least time in which all can be done, however many hands there are. */

import { assert, topologicalOrder } from '../base';
import { type Minutes, minutes } from '../units';

export type Activity = {
  readonly id: string;
  readonly minutes: number;
  readonly after: readonly string[];
};

export type CriticalPath = {
  /** From the first start to the last end. */
  readonly minutes: Minutes;
  /** One longest chain, first to last; of equal chains the one named first in the list. */
  readonly path: readonly string[];
  /** By activity, how many minutes it may slip without moving the end. */
  readonly slack: Readonly<Record<string, Minutes>>;
};

/**
 * Forward and backward pass over activities in minutes. `after` ids that are not in the list are passed over.
 * Activities come from a plan, which has no circle and no id twice; either is a bug here, and is thrown.
 * Source: critical path method (Kelley and Walker, 1959).
 */
export function criticalPath(activities: readonly Activity[]): CriticalPath {
  const byId = new Map(activities.map((activity) => [activity.id, activity]));
  assert(byId.size === activities.length, 'each activity has an id of its own');
  const order = topologicalOrder(new Map(activities.map(({ id, after }) => [id, after])));
  assert(order.ok, 'activities do not wait for each other in a circle');

  const inOrder = order.value.flatMap((id) => byId.get(id) ?? []);
  const { end, longestBefore } = forward(inOrder);
  const last = latest(
    activities.map(({ id }) => id),
    end,
  );
  const total = last === undefined ? 0 : (end.get(last) ?? 0);
  const latestEnd = backward(inOrder, total);
  const slack = Object.fromEntries(
    activities.map(({ id }) => [
      id,
      minutes(unnoise((latestEnd.get(id) ?? 0) - (end.get(id) ?? 0))),
    ]),
  );
  return { minutes: minutes(total), path: chainTo(last, longestBefore), slack };
}

function forward(inOrder: readonly Activity[]) {
  const end = new Map<string, number>();
  const longestBefore = new Map<string, string | undefined>();
  for (const activity of inOrder) {
    const longest = latest(activity.after, end);
    const start = longest === undefined ? 0 : (end.get(longest) ?? 0);
    longestBefore.set(activity.id, longest);
    end.set(activity.id, start + activity.minutes);
  }
  return { end, longestBefore };
}

function backward(inOrder: readonly Activity[], total: number): ReadonlyMap<string, number> {
  const latestEnd = new Map(inOrder.map(({ id }) => [id, total]));
  for (const { id, minutes: length, after } of [...inOrder].reverse()) {
    const latestStart = (latestEnd.get(id) ?? total) - length;
    for (const before of after) {
      const known = latestEnd.get(before);
      if (known !== undefined) latestEnd.set(before, Math.min(known, latestStart));
    }
  }
  return latestEnd;
}

/** The id that ends last, the first of equals; none when none of the ids is known. */
function latest(ids: readonly string[], end: ReadonlyMap<string, number>): string | undefined {
  const known = ids.filter((id) => end.has(id));
  return known.reduce<string | undefined>(
    (best, id) => (best === undefined || (end.get(id) ?? 0) > (end.get(best) ?? 0) ? id : best),
    undefined,
  );
}

function chainTo(
  last: string | undefined,
  longestBefore: ReadonlyMap<string, string | undefined>,
): readonly string[] {
  const chain: string[] = [];
  for (let id = last; id !== undefined; id = longestBefore.get(id)) chain.unshift(id);
  return chain;
}

/** Sums of fractions leave dust; a billionth of a minute is none. */
function unnoise(value: number): number {
  return Math.abs(value) < 1e-9 ? 0 : value;
}
