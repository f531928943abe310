/** What is wrong with the storage now, for whoever wants to show it. */

import type { StorageRefusal } from '../contract';

type Listener = (refusal: StorageRefusal | undefined) => void;

export interface Trouble {
  /** Nothing when it is over. */
  tell(refusal: StorageRefusal | undefined): void;
  /** Told at once when something is wrong already, then whenever that changes. */
  onTrouble(listener: Listener): () => void;
}

export function createTrouble(): Trouble {
  const listeners = new Set<Listener>();
  let now: StorageRefusal | undefined;
  return {
    tell(refusal) {
      if (now?.code === refusal?.code) return;
      now = refusal;
      for (const listener of listeners) listener(refusal);
    },
    onTrouble(listener) {
      listeners.add(listener);
      if (now !== undefined) listener(now);
      return () => listeners.delete(listener);
    },
  };
}
