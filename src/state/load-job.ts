/** One job as it is on the disk: its log in order, its heads, and what they add up to. */

import { type Entry, headsOf, orderLog } from '../engine/integrity';
import { type JobState, replay } from '../engine/job';
import type { Storage } from '../storage/contract';

export interface LoadedJob {
  readonly entries: readonly Entry[];
  readonly heads: readonly string[];
  readonly state: JobState;
}

/** Nothing when no such job was ever received. */
export async function loadJob(
  storage: Pick<Storage, 'log'>,
  job: string,
): Promise<LoadedJob | undefined> {
  const { entries, plan } = await storage.log(job);
  if (entries.length === 0) return undefined;
  return { entries: orderLog(entries), heads: headsOf(entries), state: replay(entries, plan) };
}
