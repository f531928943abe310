/** A handed-over record is sealed: what comes after it may only add to it, and says so. */

import type { Entry } from './entry';

export const sealingKind = 'handed-over';
export const amendingKind = 'record-amended';

export type SealBroken = { readonly code: 'entry-after-seal'; readonly seal: string } & Pick<
  Entry,
  'id' | 'device' | 'seq'
>;

/**
 * The first entry of a whole, ordered log that was written in sight of the seal and is no amendment. What another
 * tablet wrote without having seen the seal stands beside it, not after it.
 */
export function sealFault(log: readonly Entry[]): SealBroken | undefined {
  const sealById = new Map<string, string>();
  for (const { id, device, seq, parents, event } of log) {
    const seal = parents.map((parent) => sealById.get(parent)).find((found) => found !== undefined);
    if (seal !== undefined) {
      if (event.kind !== amendingKind) return { code: 'entry-after-seal', id, device, seq, seal };
      sealById.set(id, seal);
    } else if (event.kind === sealingKind) {
      sealById.set(id, id);
    }
  }
  return undefined;
}
