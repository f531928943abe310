/** Random ids, and the one that this device goes by. */

import type { KeyShelf } from './key-shelf';

/** 128 random bits in hex. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/**
 * The id under which this device writes, made once. It is kept beside the keys and never copied: a restored or cloned
 * shop must write under another. Where nothing can be read or kept, the app still opens to say so, and nothing can be
 * written under the id it then has.
 */
export async function deviceId(shelf: Pick<KeyShelf, 'get' | 'put'>): Promise<string> {
  const made = newId();
  try {
    const kept = await shelf.get('device-id');
    if (typeof kept?.value === 'string') return kept.value;
    await shelf.put({ id: 'device-id', value: made });
  } catch {
    // Whoever watches the storage is told why.
  }
  return made;
}
