/** Those who watch rows in memory: told now, and once after each change. */

export interface Watchers<Row> {
  watch(onRows: (rows: readonly Row[]) => void): () => void;
  tell(): void;
}

export function createWatchers<Row>(read: () => readonly Row[]): Watchers<Row> {
  const listeners = new Set<(rows: readonly Row[]) => void>();
  let isTold = true;
  return {
    watch(onRows) {
      listeners.add(onRows);
      queueMicrotask(() => {
        if (listeners.has(onRows)) onRows(read());
      });
      return () => listeners.delete(onRows);
    },
    tell() {
      if (!isTold) return;
      isTold = false;
      queueMicrotask(() => {
        isTold = true;
        for (const listener of listeners) listener(read());
      });
    },
  };
}
