/** What was typed, as numbers and lists. */

import type { Step } from '../../engine/plan';

/** A positive number, with a comma or a point. */
export function numberIn(typed: string): number | undefined {
  const value = Number(typed.trim().replace(',', '.'));
  return typed.trim() !== '' && Number.isFinite(value) && value > 0 ? value : undefined;
}

export function linesOf(typed: string): string[] {
  return typed
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
}

/** Three efforts, or one thrice; nothing when any of them is no number. */
export function minutesOf(typed: readonly string[]): Step['effort'] | undefined {
  const [least, likely = least, most = likely] = typed.map(numberIn);
  if (typed.some((one) => numberIn(one) === undefined)) return undefined;
  return least === undefined || likely === undefined || most === undefined
    ? undefined
    : [least, likely, most];
}
