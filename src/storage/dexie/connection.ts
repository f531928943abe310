/** The one connection to the database: opens it, notices when it is lost, blocked or outdated, and says so. */

import { ok, type Result, refuse } from '../../engine/base';
import type { StorageRefusal } from '../contract';
import { createStorageProblem } from '../storage-problem';
import { type Database, schemaEpoch } from './database';
import { isConnectionLost, refusalOfError } from './refusal-of-error';
import { createTrouble, type Trouble } from './trouble';

export interface Connection {
  readonly database: Database;
  /** Does it, and once more on a fresh connection when the first was lost. */
  attempt<T>(work: () => PromiseLike<T>): Promise<Result<T, StorageRefusal>>;
  /** The same for what has no refusal in its answer: rejects with a `StorageProblem`. */
  demand<T>(work: () => PromiseLike<T>): Promise<T>;
  readonly onTrouble: Trouble['onTrouble'];
  close(): void;
}

/** Milliseconds. */
const momentToUnblock = 300;

export function createConnection(database: Database): Connection {
  const { tell, onTrouble } = createTrouble();
  let standing: 'usable' | 'outdated' | 'closed' = 'usable';

  // Another tab wants to change the tables: let it, and never write with this code again.
  database.on('versionchange', ({ newVersion }) => {
    if (newVersion === null) return;
    standing = 'outdated';
    database.close();
    tell({ code: 'storage-outdated' });
  });

  let isBlocked = false;
  let heardBlocked = (): void => undefined;
  database.on('blocked', () => {
    isBlocked = true;
    heardBlocked();
  });

  /** Refuses instead of waiting without end when another tab holds an older database open. */
  async function ready(): Promise<StorageRefusal | undefined> {
    if (standing === 'outdated') return { code: 'storage-outdated' };
    if (standing === 'closed') return { code: 'storage-failed', cause: 'closed' };
    if (database.isOpen()) return undefined;
    const refusal = await Promise.race([opened(), blocked()]);
    tell(refusal);
    return refusal;
  }

  async function opened(): Promise<StorageRefusal | undefined> {
    try {
      await database.open();
    } catch (error) {
      return refusalOfError(error);
    }
    if (isHalfOpen()) {
      database.close();
      return { code: 'storage-failed', cause: 'opened without its tables' };
    }
    isBlocked = false;
    // Dexie opens a newer database with older code; we do not.
    if (database.backendDB().version < (schemaEpoch + 1) * 10) return undefined;
    standing = 'outdated';
    database.close();
    return { code: 'storage-outdated' };
  }

  /** Dexie swallows a failure in the middle of opening, and would then call itself open for good without knowing a table. */
  function isHalfOpen(): boolean {
    return database.tables.some(({ core }) => core === undefined);
  }

  /** The browser says it once for each opening; whoever asks while it lasts is told after a moment. */
  function blocked(): Promise<StorageRefusal> {
    return new Promise((resolve) => {
      const answer = () => resolve({ code: 'storage-blocked' });
      heardBlocked = answer;
      if (isBlocked) setTimeout(answer, momentToUnblock);
    });
  }

  async function attempt<T>(work: () => PromiseLike<T>): Promise<Result<T, StorageRefusal>> {
    for (let isSecond = false; ; isSecond = true) {
      const unready = await ready();
      if (unready) return refuse(unready);
      try {
        return ok(await work());
      } catch (error) {
        if (hasChanged()) return refuse({ code: 'storage-outdated' });
        if (isSecond || !isConnectionLost(error)) return refuse(refusalOfError(error));
        database.close();
      }
    }
  }

  /** Asked after an await, when an event may have changed what the compiler still believes. */
  function hasChanged(): boolean {
    return standing === 'outdated';
  }

  return {
    database,
    attempt,
    async demand(work) {
      const answer = await attempt(work);
      if (!answer.ok) throw createStorageProblem(answer.refusal);
      return answer.value;
    },
    onTrouble,
    close() {
      standing = 'closed';
      database.close();
    },
  };
}
