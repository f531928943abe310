/** Whether a log ends where someone last saw it end. */

/** Heads are sorted, so the same set is the same list. */
export function isSameHeads(held: readonly string[], seen: readonly string[] | undefined): boolean {
  return seen !== undefined && held.length === seen.length && held.every((id, n) => id === seen[n]);
}
