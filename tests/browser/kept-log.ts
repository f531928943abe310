/** A job's log as it lies in the browser's own database, read past the app. */

import type { Page } from '@playwright/test';
import { type Entry, verifyLog } from '../../src/engine/integrity';

/** As text, so that whatever runs the test adds nothing to it that the page does not know. */
const readLog = `async (job) => {
  const done = (request) =>
    new Promise((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  const database = await done(indexedDB.open('standbook'));
  const entries = database.transaction('entries').objectStore('entries').index('job');
  const all = await done(entries.getAll(job));
  database.close();
  return JSON.stringify(all);
}`;

export async function keptLog(page: Page, job: string): Promise<readonly Entry[]> {
  return JSON.parse(await page.evaluate<string>(`(${readLog})(${JSON.stringify(job)})`));
}

/** The number of entries; throws where the log is damaged in any way. */
export function countOfWhole(job: string, entries: readonly Entry[]): number {
  const verified = verifyLog(entries, { job });
  if (!verified.ok) throw new Error(`the log is damaged: ${JSON.stringify(verified.refusal)}`);
  return verified.value.count;
}
