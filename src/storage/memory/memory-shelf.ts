/** A shelf in memory: rows by id, and those who watch them. */

import type { Shelf } from '../contract';
import { createWatchers } from './watchers';

export interface MemoryShelf<Row> extends Shelf<Row> {
  readonly rowsById: Map<string, Row>;
  /** For changes made to `rowsById` directly. */
  tell(): void;
}

export function createMemoryShelf<Row>(idOf: (row: Row) => string): MemoryShelf<Row> {
  const rowsById = new Map<string, Row>();
  const watchers = createWatchers(() => [...rowsById.values()]);
  return {
    rowsById,
    tell: watchers.tell,
    watch: watchers.watch,
    async get(id) {
      return rowsById.get(id);
    },
    async all() {
      return [...rowsById.values()];
    },
    async put(row) {
      rowsById.set(idOf(row), row);
      watchers.tell();
    },
    async putAll(rows) {
      for (const row of rows) rowsById.set(idOf(row), row);
      watchers.tell();
    },
    async change(id, work) {
      const row = work(rowsById.get(id));
      if (row === undefined) return;
      rowsById.set(idOf(row), row);
      watchers.tell();
    },
    async remove(id) {
      rowsById.delete(id);
      watchers.tell();
    },
  };
}
