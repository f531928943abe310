/** Which pictures a log names: known members by name, and whatever looks like a digest in events of a newer app. */

import type { Entry } from '../engine/integrity';

const digestShape = /^[0-9a-f]{64}$/;

/** Every digest that stands anywhere in the events; the storage knows which of them are pictures. */
export function digestsIn(entries: readonly Entry[]): readonly string[] {
  const found = new Set<string>();
  const open: unknown[] = entries.map(({ event }) => event);
  while (open.length > 0) {
    const value = open.pop();
    if (typeof value === 'string' && digestShape.test(value)) found.add(value);
    if (typeof value === 'object' && value !== null) open.push(...Object.values(value));
  }
  return [...found];
}

/** The digests that today's events name as photos or drawn signatures. */
export function picturesIn(entries: readonly Entry[]): readonly string[] {
  const named = entries.flatMap(({ event }) => [
    ...('photos' in event && Array.isArray(event.photos) ? event.photos : []),
    ...('strokes' in event ? [event.strokes] : []),
  ]);
  return [...new Set(named.filter((name): name is string => typeof name === 'string'))];
}
