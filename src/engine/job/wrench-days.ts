/** How often each wrench was used on each day: what its calibration is counted by, and what finds its jobs again. */

import { compareText } from '../base';
import { type Entry, orderLog } from '../integrity';
import type { JobEvent } from './event.schema';
import type { JobPlan } from './job-plan.schema';

/** The wrench, the day (`YYYY-MM-DD` at the stand) and how many operations; in this order, so that it can be an index key. */
export type WrenchDay = readonly [wrench: string, day: string, operations: number];

/**
 * Each bolt brought up in a pass is one operation of the wrench (ISO 6789-1 counts clicks); one that was read again was
 * brought up again. Adds the entries to what was counted before; of the same entry twice, one counts. A joint that the
 * plan does not know counts as one bolt.
 */
export function wrenchDays(
  entries: readonly Entry[],
  plan: JobPlan | undefined,
  before: readonly WrenchDay[] = [],
): readonly WrenchDay[] {
  const counted = new Map(before.map((row) => [keyOf(row), row]));
  for (const { event, at } of orderLog(entries)) {
    const made = event as JobEvent; // unknown kinds are no pass
    if (made.kind !== 'pass-made' && made.kind !== 'joint-tightened') continue;
    const times = Math.max(boltsOf(plan, made.joint), made.readings?.length ?? 0);
    const row = [made.wrench.id, at.claimed.slice(0, 10), times] as const;
    const [wrench, day, operations] = row;
    counted.set(keyOf(row), [wrench, day, operations + (counted.get(keyOf(row))?.[2] ?? 0)]);
  }
  return [...counted.values()].sort((a, b) => compareText(a[0], b[0]) || compareText(a[1], b[1]));
}

function keyOf([wrench, day]: WrenchDay): string {
  return `${day} ${wrench}`;
}

function boltsOf(plan: JobPlan | undefined, joint: string): number {
  return plan?.steps.find((step) => step.joint?.id === joint)?.joint?.bolts ?? 1;
}
