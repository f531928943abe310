/** Comparisons that give the same order on every machine (never localeCompare). */

/** Compares two texts by UTF-16 code unit, as RFC 8785 orders property names. */
export function compareText(a: string, b: string): -1 | 0 | 1 {
  if (a < b) return -1;
  return a > b ? 1 : 0;
}

export function compareNumbers(a: number, b: number): number {
  return a - b;
}
