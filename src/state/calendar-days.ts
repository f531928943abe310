/** Days on the calendar, as ISO dates. */

const day = 24 * 60 * 60 * 1000;

/** The date so many days later; earlier when negative. */
export function daysAfter(date: string, days: number): string {
  return new Date(Date.parse(`${date}T00:00:00Z`) + days * day).toISOString().slice(0, 10);
}

/** Whole days from one date to another; negative when the other is earlier. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / day);
}
