/** A number as people type it. */

/** With a comma or a point, and any minus sign; not a number where there is none. */
export function numberIn(text: string): number {
  const plain = text.trim().replace(',', '.').replace(/^[−–]/, '-').replace(/^\+/, '');
  return plain === '' ? Number.NaN : Number(plain);
}
