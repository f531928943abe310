/** A clock that stands still until a test moves it. */

import type { Clock } from '../../src/state';

export interface FixedClock extends Clock {
  /** Minutes go by. */
  pass(minutes: number): void;
}

/** London time in winter, where the offset is nought. */
export function createFixedClock(start = '2026-11-25T10:00:00'): FixedClock {
  let now = Date.parse(`${start}Z`);
  const text = () => new Date(now).toISOString().slice(0, 19);
  return {
    pass(minutes) {
      now += minutes * 60_000;
    },
    now: () => ({ claimed: `${text()}+00:00`, zone: 'Europe/London' }),
    today: () => text().slice(0, 10),
  };
}
