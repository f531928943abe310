/** What this device's clock claims: never trusted for order, never a reason to refuse. */

import type { ClaimedTime } from '../engine/integrity';

export interface Clock {
  now(): ClaimedTime;
  /** The ISO date at the stand. */
  today(): string;
}

/** `read` gives the time; the offset and the zone are the device's own. */
export function createClock(read: () => Date = () => new Date()): Clock {
  return {
    now: () => ({ claimed: withOffset(read()), zone: zoneName() }),
    today: () => withOffset(read()).slice(0, 10),
  };
}

/** ISO 8601 with the local offset, to the second, for example `2026-11-25T10:00:00+01:00`. */
function withOffset(time: Date): string {
  const ahead = -time.getTimezoneOffset();
  const local = new Date(time.getTime() + ahead * 60_000).toISOString().slice(0, 19);
  const size = Math.abs(ahead);
  return `${local}${ahead < 0 ? '-' : '+'}${two(size / 60)}:${two(size % 60)}`;
}

function two(number: number): string {
  return String(Math.floor(number)).padStart(2, '0');
}

function zoneName(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC';
}
