/** A broken invariant is a bug: it is thrown, never answered. */

export class BrokenInvariant extends Error {
  override readonly name = 'BrokenInvariant';
}

export function assert(condition: unknown, what: string): asserts condition {
  if (!condition) throw new BrokenInvariant(what);
}

export function assertNever(value: never): never {
  throw new BrokenInvariant(`unexpected value ${JSON.stringify(value)}`);
}
