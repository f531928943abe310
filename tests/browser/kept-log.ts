/** A job's log as it lies in the browser's own database, read past the app. */

import type { Page } from '@playwright/test';
import { type Entry, verifyLog } from '../../src/engine/integrity';

export async function keptLog(page: Page, job: string): Promise<readonly Entry[]> {
  const text = await page.evaluate(async (wanted) => {
    const done = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await done(indexedDB.open('standbook'));
    const entries = database.transaction('entries').objectStore('entries').index('job');
    const all = await done(entries.getAll(wanted));
    database.close();
    return JSON.stringify(all);
  }, job);
  return JSON.parse(text);
}

/** The number of entries; throws where the log is damaged in any way. */
export function countOfWhole(job: string, entries: readonly Entry[]): number {
  const verified = verifyLog(entries, { job });
  if (!verified.ok) throw new Error(`the log is damaged: ${JSON.stringify(verified.refusal)}`);
  return verified.value.count;
}
