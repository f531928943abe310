/** How English writes numbers, lists and plurals. */

import { kilopascals, kilopascalsTo } from '../../engine/units';

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

/** A limit in words, each end as `measured` writes it; empty where there is none. */
export function measuredLimit(
  { min, max }: { readonly min?: number | undefined; readonly max?: number | undefined },
  unit: string,
): string {
  const least = min === undefined ? [] : [`at least ${measured(min, unit)}`];
  const most = max === undefined ? [] : [`at most ${measured(max, unit)}`];
  return [...least, ...most].join(', ');
}

/** A number and its unit, which no line may part. */
export function quantity(value: number | string, unit: string): string {
  return `${value}${noBreak}${unit}`;
}

/** A measured value as it is read aloud: pressures in bar and psi, everything else in its own unit. */
export function measured(value: number, unit: string): string {
  if (unit !== 'kPa') return quantity(figure(value), unit);
  const [bar, psi] = [
    kilopascalsTo(kilopascals(value), 'bar').toFixed(1),
    kilopascalsTo(kilopascals(value), 'psi').toFixed(0),
  ];
  return `${quantity(bar, 'bar')} (${quantity(psi, 'psi')})`;
}

const noBreak = '\u00a0';
const units = '(?:N·m|lbf·(?:in|ft)|in·lb|ft·lb|kgf·c?m|mm|bar|psi|kPa|kg|km|N|°|%|in(?=[,;)]|$))';
const beforeUnit = new RegExp(String.raw`(\d) (?=${units}(?![\p{L}\d]))`, 'gu');
const times = /(\d) × (?=[A-Z]?\d)/g;

/** The same sentence with every number held to its unit, and to what it multiplies. */
export function heldTogether(text: string): string {
  return text.replace(beforeUnit, `$1${noBreak}`).replace(times, `$1${noBreak}×${noBreak}`);
}

/** How a value misses its limit; absent while it is inside. */
export function missedLimit(
  value: number,
  { min, max }: { readonly min?: number | undefined; readonly max?: number | undefined },
  written: (value: number) => string,
): string | undefined {
  if (min !== undefined && value < min)
    return `${written(value)} is less than the least, ${written(min)}`;
  if (max !== undefined && value > max)
    return `${written(value)} is more than the most, ${written(max)}`;
  return undefined;
}
