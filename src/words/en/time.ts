/** Days and times in English, from the text a clock claimed; no host locale, so every machine says the same. */

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];
const days = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];

/** `28 November 2026` from `2026-11-28…`. */
export function dateText(iso: string): string {
  const [year = '', month = '', day = ''] = iso.slice(0, 10).split('-');
  return `${Number(day)} ${months[Number(month) - 1] ?? month} ${year}`;
}

/** `Saturday 28 November`. */
export function dayText(iso: string): string {
  const [year = 0, month = 1, day = 1] = iso.slice(0, 10).split('-').map(Number);
  return `${days[weekday(year, month, day)]} ${day} ${months[month - 1]}`;
}

/** `11:05` as it was at the place that claimed it; empty for a day without a time. */
export function timeText(iso: string): string {
  return iso.slice(11, 16);
}

/** Sakamoto's rule: 0 is Sunday. */
function weekday(year: number, month: number, day: number): number {
  const shift = [0, 3, 2, 5, 0, 3, 5, 1, 4, 6, 2, 4][month - 1] ?? 0;
  const y = month < 3 ? year - 1 : year;
  return (y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400) + shift + day) % 7;
}
