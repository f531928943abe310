/** Rows that follow the storage: what a list shows, live. */

import { createStore, type StoreApi } from 'zustand/vanilla';

export interface Rows<Row> {
  /** Whether the first reading has come. */
  readonly loaded: boolean;
  readonly rows: readonly Row[];
}

export type RowsStore<Row> = StoreApi<Rows<Row>>;

/** Lives as long as the app; `inOrder` puts the rows as a person expects them. */
export function createRowsStore<Row>(
  watch: (onRows: (rows: readonly Row[]) => void) => () => void,
  inOrder: (rows: readonly Row[]) => readonly Row[] = (rows) => rows,
): RowsStore<Row> {
  const store = createStore<Rows<Row>>(() => ({ loaded: false, rows: [] }));
  watch((rows) => store.setState({ loaded: true, rows: inOrder(rows) }));
  return store;
}
