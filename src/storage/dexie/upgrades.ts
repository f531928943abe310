/** What a newer app works out anew from the entries of an older one's database, before anybody reads it. */

import type { Transaction } from 'dexie';
import type { Entry } from '../../engine/integrity';
import { type JobPlan, wrenchDays } from '../../engine/job';
import type { JobRow } from '../contract';
import { planDigestIn } from '../plan-of-log';

/** From version 1 to 2: rows say how often each wrench was used on each day. Nothing else of a row changes. */
export async function countWrenchDays(transaction: Transaction): Promise<void> {
  const entries = transaction.table<Entry, string>('entries');
  const plans = transaction.table<{ readonly plan: JobPlan }, string>('plans');
  const jobs = transaction.table<JobRow, string>('jobs');
  for (const job of await jobs.toCollection().primaryKeys()) {
    const log = await entries.where('job').equals(job).toArray();
    const digest = planDigestIn(log);
    const kept = digest === undefined ? undefined : await plans.get(digest);
    await jobs.update(job, { wrenchDays: wrenchDays(log, kept?.plan) });
  }
}
