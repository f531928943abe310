/** A shelf on the disk: one Dexie table of plain rows. */

import type { Table } from 'dexie';
import type { Shelf } from '../contract';
import { committed } from './committed';
import type { Connection } from './connection';
import { watchQuery } from './watch';

export function createDexieShelf<Row>(
  connection: Connection,
  table: Table<Row, string>,
): Shelf<Row> {
  const { database, demand } = connection;

  async function write(work: () => PromiseLike<unknown>): Promise<void> {
    await demand(() => committed(database, [table], work));
  }

  return {
    get: (id) => demand(() => table.get(id)),
    all: () => demand(() => table.toArray()),
    put: (row) => write(() => table.put(row)),
    putAll: (rows) => write(() => table.bulkPut(rows)),
    change: (id, work) =>
      write(async () => {
        const row = work(await table.get(id));
        if (row !== undefined) await table.put(row);
      }),
    remove: (id) => write(() => table.delete(id)),
    watch: (onRows) => watchQuery(connection, () => table.toArray(), onRows),
  };
}
