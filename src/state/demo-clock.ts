/** A clock that is told what time it is: the demo's past working days. It never goes back. */

import { daysAfter } from './calendar-days';
import type { Clock } from './ports';

export interface DemoClock extends Clock {
  /** Goes on to this time of a past day; stays where it is when that has gone by. */
  goTo(daysAgo: number, time: string): void;
  spend(minutes: number): void;
}

/** Days count back from the real clock's today; offset and zone are the real clock's. */
export function createDemoClock(real: Clock): DemoClock {
  const { claimed, zone } = real.now();
  const offset = claimed.slice(19);
  const today = real.today();
  let now = 0;

  const text = () => new Date(now).toISOString().slice(0, 19);
  return {
    goTo(daysAgo, time) {
      now = Math.max(now, Date.parse(`${daysAfter(today, -daysAgo)}T${time}:00Z`));
    },
    spend(minutes) {
      now += minutes * 60_000;
    },
    now: () => ({ claimed: `${text()}${offset}`, zone }),
    today: () => text().slice(0, 10),
  };
}
