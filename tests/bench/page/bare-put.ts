/** The least that a durable write can cost: one put into one store, strict, with nothing around it. */

const store = 'entries';

export async function openBareStore(name: string): Promise<IDBDatabase> {
  const opening = indexedDB.open(name, 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore(store, { keyPath: 'id' });
  return new Promise((done, fail) => {
    opening.onsuccess = () => done(opening.result);
    opening.onerror = () => fail(opening.error);
  });
}

/** Resolves when the transaction, not only the put, is complete. */
export function putBare(database: IDBDatabase, row: { readonly id: string }): Promise<void> {
  return new Promise((done, fail) => {
    const transaction = database.transaction(store, 'readwrite', { durability: 'strict' });
    transaction.oncomplete = () => done();
    transaction.onabort = () => fail(transaction.error);
    transaction.objectStore(store).put(row);
  });
}
