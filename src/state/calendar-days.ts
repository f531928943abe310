/** Days on the calendar, as ISO dates. */

const day = 24 * 60 * 60 * 1000;

/** The date so many days later; earlier when negative. */
export function daysAfter(date: string, days: number): string {
  return new Date(Date.parse(`${date}T00:00:00Z`) + days * day).toISOString().slice(0, 10);
}

/** Whole days from one date to a later one; negative when it is earlier. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / day);
}

/** The same day a year later; the 28th for the 29th of February. */
export function yearAfter(date: string): string {
  const next = `${Number(date.slice(0, 4)) + 1}${date.slice(4)}`;
  return Number.isNaN(Date.parse(`${next}T00:00:00Z`)) || next.endsWith('02-29')
    ? `${next.slice(0, 8)}28`
    : next;
}
