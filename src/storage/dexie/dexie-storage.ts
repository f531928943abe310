/** Storage on the device's disk, through IndexedDB: what a tap has shown as done is there after a power cut. */

import { ok } from '../../engine/base';
import type { Storage } from '../contract';
import { lastOfDays } from '../days';
import { changeJob } from './change-job';
import { committed } from './committed';
import { createConnection } from './connection';
import { createDatabase } from './database';
import { createDexieShelf } from './dexie-shelf';
import { readHoldings, takeInHoldings } from './holdings';
import { blobRow, heldLog, jobTables, keptBlob, putJob } from './job-writes';
import { watchQuery } from './watch';

export function createDexieStorage(name = 'standbook'): Storage {
  const database = createDatabase(name);
  const connection = createConnection(database);
  const { attempt, demand } = connection;

  return {
    changeJob: (job, seen, work) => changeJob(connection, job, seen, work),
    async addJobs(writes) {
      const kept = await attempt(() =>
        committed(database, jobTables(database), () =>
          Promise.all(writes.map((write) => putJob(database, write, true))),
        ),
      );
      return kept.ok ? ok(writes.length) : kept;
    },
    row: (job) => demand(() => database.jobs.get(job)),
    rows: () => demand(() => database.jobs.toArray()),
    log: (job) =>
      demand(() =>
        database.transaction('r', jobTables(database), async () => await heldLog(database, job)),
      ),
    watchRows: (onRows) => watchQuery(connection, () => database.jobs.toArray(), onRows),
    findByFrameNumber: (frameNumber) =>
      demand(() => database.jobs.where('frameNumber').equals(frameNumber).toArray()),
    findByWrench: (wrench, { since, until = lastOfDays }) =>
      demand(() =>
        database.jobs
          .where('wrenchDays')
          .between([wrench, since], [wrench, until, Number.POSITIVE_INFINITY], true, true)
          .distinct()
          .toArray(),
      ),
    async blob(digest) {
      const row = await demand(() => database.blobs.get(digest));
      return row && keptBlob(row);
    },
    async keepBlob(blob) {
      const kept = await attempt(() =>
        committed(database, [database.blobs], () => database.blobs.put(blobRow(blob))),
      );
      return kept.ok ? ok(true) : kept;
    },
    people: createDexieShelf(connection, database.people),
    customers: createDexieShelf(connection, database.customers),
    tools: createDexieShelf(connection, database.tools),
    figures: createDexieShelf(connection, database.catalogue),
    settings: createDexieShelf(connection, database.settings),
    catalogueVersions: createDexieShelf(connection, database.catalogueVersions),
    keys: createDexieShelf(connection, database.keys),
    holdings: () => readHoldings(connection),
    takeIn: (holdings) => takeInHoldings(connection, holdings),
    async eraseEverything({ settings = [], keys = [], people = [] } = {}) {
      await demand(() =>
        committed(database, database.tables, () =>
          Promise.all([
            ...database.tables.map((table) => table.clear()),
            database.settings.bulkPut(settings),
            database.keys.bulkPut(keys),
            database.people.bulkPut(people),
          ]),
        ),
      );
    },
    onTrouble: connection.onTrouble,
    close: connection.close,
  };
}
