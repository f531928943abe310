/** How English writes numbers, lists and plurals. */

/** `a`, `a and b`, `a, b and c`; past five, the rest is counted. */
export function listed(items: readonly string[]): string {
  const shown = items.length > 5 ? [...items.slice(0, 4), `${items.length - 4} more`] : items;
  const last = shown.at(-1);
  if (last === undefined) return '';
  return shown.length === 1 ? last : `${shown.slice(0, -1).join(', ')} and ${last}`;
}

export function plural(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

const small = [
  'none',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

/** Small whole numbers in words. */
export function numbered(count: number): string {
  return small[count] ?? String(count);
}

/** A number as a mechanic would say it: at most `digits` decimals, none that say nothing. */
export function figure(value: number, digits = 1): string {
  return String(Number(value.toFixed(digits)));
}

/** `4–6`, `at most 5`, `at least 4`, `5`. */
export function range(
  {
    min,
    max,
    target,
  }: { min?: number | undefined; max?: number | undefined; target?: number | undefined },
  digits = 1,
): string {
  if (min !== undefined && max !== undefined)
    return `${figure(min, digits)}–${figure(max, digits)}`;
  if (max !== undefined) return `at most ${figure(max, digits)}`;
  if (min !== undefined) return `at least ${figure(min, digits)}`;
  return target === undefined ? '' : figure(target, digits);
}
