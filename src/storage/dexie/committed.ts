/** One durable read-write transaction, over when the browser says it is. */

import type { Dexie, Table } from 'dexie';

/**
 * Resolves after the commit, not after the last put, so that what is shown as kept is on the disk. Rejects as soon as
 * the transaction is aborted: in a transaction that the disk had no room for, the promise of a put may never settle.
 */
export function committed<T>(
  database: Dexie,
  tables: readonly Table[],
  work: () => PromiseLike<T>,
): Promise<T> {
  return new Promise((resolve, reject) => {
    database
      .transaction('rw', [...tables], async (transaction) => {
        transaction.on('abort', () => {
          // Dexie's own reason comes first where it has one; this is for when it never comes.
          setTimeout(() => reject(transaction.idbtrans.error ?? abortedWithoutReason()));
        });
        return await work();
      })
      .then(resolve, reject);
  });
}

function abortedWithoutReason(): Error {
  return Object.assign(new Error('The transaction was aborted.'), { name: 'AbortError' });
}
