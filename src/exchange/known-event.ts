/** Whether an event is one that this app understands, or one that only a newer app knows. */

import type { Entry } from '../engine/integrity';
import { eventSchema } from '../engine/job';

const knownKinds = new Set<string | undefined>(
  eventSchema.def.options.map(({ def }) => [...def.shape.kind.def.values][0]),
);

/** A kind or version that only a newer app knows is kept and passed on; one that is known must have its shape. */
export function isUnderstoodOrNew(event: Entry['event']): boolean {
  const isKnown = event.v === 1 && knownKinds.has(event.kind);
  return !isKnown || eventSchema.safeParse(event).success;
}
