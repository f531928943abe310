/** Public keys as a file carries them: out of the shelf, and from a file into rows of their own. */

import { canonicalJson } from '../engine/integrity';
import type { KeptKey } from '../storage/contract';
import type { PublicKeysOf } from './file-ports';

/** Rows of keys that came with files: they never touch the rows that hold private halves. */
export const broughtPrefix = 'brought:';

/** Only what may be shown to anybody; the private half cannot be read out anyway. */
export function publicKeysIn(rows: readonly KeptKey[]): readonly PublicKeysOf[] {
  const keysById = new Map<string, PublicKeysOf['keys']>();
  for (const { id, value } of rows) {
    const owner = ownerOf(id);
    keysById.set(owner, union(keysById.get(owner) ?? [], keysIn(value)));
  }
  return [...keysById].flatMap(([id, keys]) => (keys.length === 0 ? [] : [{ id, keys }]));
}

/** Rows to put so that the keys of a file are known here, and whose keys were not known before. */
export function broughtKeys(
  held: readonly KeptKey[],
  come: readonly PublicKeysOf[],
): { readonly rows: readonly KeptKey[]; readonly newFor: readonly string[] } {
  const known = new Map(publicKeysIn(held).map(({ id, keys }) => [id, keys]));
  const added = come.flatMap(({ id, keys }) => {
    const owner = ownerOf(id);
    const before = known.get(owner) ?? [];
    return union(before, keys).length > before.length ? [{ owner, keys }] : [];
  });
  return {
    rows: added.map(({ owner, keys }) => {
      const id = `${broughtPrefix}${owner}`;
      const earlier = keysIn(held.find((row) => row.id === id)?.value);
      return { id, value: { publicKeys: union(earlier, keys) } };
    }),
    newFor: added.map(({ owner }) => owner),
  };
}

/** Any device of the shop signs as `device`; whose it was is told by the key alone. */
function ownerOf(id: string): string {
  const owner = id.startsWith(broughtPrefix) ? id.slice(broughtPrefix.length) : id;
  return owner === 'former-devices' ? 'device' : owner;
}

function keysIn(value: unknown): PublicKeysOf['keys'] {
  if (typeof value !== 'object' || value === null || !('publicKeys' in value)) return [];
  return Array.isArray(value.publicKeys) ? value.publicKeys : [];
}

function union(one: PublicKeysOf['keys'], other: PublicKeysOf['keys']): PublicKeysOf['keys'] {
  return [...new Map([...one, ...other].map((key) => [canonicalJson(key), key])).values()];
}
