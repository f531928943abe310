/** The least that durable writes can cost: strict transactions straight on IndexedDB, with nothing around them. */

export async function openBareStores(name: string): Promise<IDBDatabase> {
  const opening = indexedDB.open(name, 1);
  opening.onupgradeneeded = () => {
    const { result: database } = opening;
    database.createObjectStore('entries', { keyPath: 'id' });
    database.createObjectStore('indexed', { keyPath: 'id' }).createIndex('job', 'job');
    database.createObjectStore('jobs', { keyPath: 'job' }).createIndex('frame', 'frameNumber');
  };
  return new Promise((done, fail) => {
    opening.onsuccess = () => done(opening.result);
    opening.onerror = () => fail(opening.error);
  });
}

/** One put into one store. Resolves when the transaction, not only the put, is complete. */
export function putBare(database: IDBDatabase, entry: object): Promise<void> {
  const transaction = strict(database, ['entries']);
  transaction.objectStore('entries').put(entry);
  return complete(transaction);
}

/** What every tap must do at the least: read the job's row, add an entry, put the row, all in one transaction. */
export function appendBare(
  database: IDBDatabase,
  entries: readonly object[],
  row: { readonly job: string },
): Promise<void> {
  const transaction = strict(database, ['indexed', 'jobs']);
  const jobs = transaction.objectStore('jobs');
  jobs.get(row.job).onsuccess = () => {
    for (const entry of entries) transaction.objectStore('indexed').add(entry);
    jobs.put(row);
  };
  return complete(transaction);
}

function strict(database: IDBDatabase, stores: string[]): IDBTransaction {
  return database.transaction(stores, 'readwrite', { durability: 'strict' });
}

function complete(transaction: IDBTransaction): Promise<void> {
  return new Promise((done, fail) => {
    transaction.oncomplete = () => done();
    transaction.onabort = () => fail(transaction.error);
  });
}
