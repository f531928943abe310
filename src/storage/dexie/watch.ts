/** Live rows: read now and after every committed change, by this tab or another. */

import { liveQuery } from 'dexie';
import type { Connection } from './connection';

const pauseBeforeRetry = 1000;

/** `read` may await nothing but Dexie. A lost connection is opened again; a lasting trouble is told by the connection. */
export function watchQuery<Row>(
  connection: Connection,
  read: () => Promise<readonly Row[]>,
  onRows: (rows: readonly Row[]) => void,
): () => void {
  let isStopped = false;
  let unsubscribe = (): void => undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;

  async function subscribe(): Promise<void> {
    const opened = await connection.attempt(() => Promise.resolve());
    if (isStopped || (!opened.ok && opened.refusal.code === 'storage-outdated')) return;
    if (!opened.ok) return later();
    const subscription = liveQuery(read).subscribe({ next: onRows, error: later });
    unsubscribe = () => subscription.unsubscribe();
  }

  function later(): void {
    if (!isStopped) timer = setTimeout(subscribe, pauseBeforeRetry);
  }

  void subscribe();
  return () => {
    isStopped = true;
    clearTimeout(timer);
    unsubscribe();
  };
}
