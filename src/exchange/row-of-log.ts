/** What lists show of a job, worked out from its log: a copy's word is not taken for it. */

import { type Entry, logEnd, orderLog } from '../engine/integrity';
import { type JobPlan, replay, summaryOf, wrenchDays } from '../engine/job';
import type { CopiedRow } from './holdings';

/** Nothing for a log in which no box was ever received. */
export function rowOfLog(
  job: string,
  entries: readonly Entry[],
  plan: JobPlan | undefined,
): CopiedRow | undefined {
  const last = orderLog(entries).at(-1);
  const summary = summaryOf(replay(entries, plan), last && { by: last.by, at: last.at.claimed });
  if (summary === undefined) return undefined;
  const devices = [...new Set(entries.map(({ device }) => device))];
  const { heads, lamport } = logEnd(entries, '');
  return {
    ...summary,
    job,
    heads,
    lamport,
    seqs: Object.fromEntries(devices.map((device) => [device, logEnd(entries, device).lastSeq])),
    count: entries.length,
    wrenchDays: wrenchDays(entries, plan),
  };
}
