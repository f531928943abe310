/** Where keys are kept; the app gives the storage's own shelf. */

export interface KeyShelf {
  get(id: string): Promise<{ readonly value: unknown } | undefined>;
  put(row: { readonly id: string; readonly value: unknown }): Promise<void>;
  /** Reads, lets `work` answer and keeps the answer, with nobody else in between. */
  change(id: string, work: (held: KeptRow | undefined) => KeptRow): Promise<void>;
}

interface KeptRow {
  readonly id: string;
  readonly value: unknown;
}

export type KeysUnavailable = { readonly code: 'keys-unavailable'; readonly cause: string };

/** Browsers in private or locked-down modes may refuse to make or keep keys: that is an answer, not a crash. */
export function keysUnavailable(error: unknown): KeysUnavailable {
  return {
    code: 'keys-unavailable',
    cause: error instanceof Error ? error.message : String(error),
  };
}

/** Puts a row and reads it back: some browsers take a key and give back nothing. */
export async function putAndReadBack<T>(
  shelf: KeyShelf,
  row: { readonly id: string; readonly value: T },
  isWhole: (value: unknown) => value is T,
): Promise<T> {
  await shelf.put(row);
  const kept = (await shelf.get(row.id))?.value;
  if (!isWhole(kept)) throw new Error('the browser did not keep the key');
  return kept;
}
