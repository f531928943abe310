/** The demo shop's tool board as it stands on the day of the first start. */

import type { Wrench } from '../engine/torque';
import type { DemoTools } from './demo.schema';

const MILLISECONDS_PER_DAY = 86_400_000;

/** The wrenches with their calibration dates counted from `firstStart` (`YYYY-MM-DD`). */
export function wrenchesOn(firstStart: string, wrenches: DemoTools['wrenches']): readonly Wrench[] {
  return wrenches.map(({ calibratedDaysAgo, dueInDays, ...wrench }) => ({
    ...wrench,
    calibratedOn: dayFrom(firstStart, -calibratedDaysAgo),
    dueOn: dayFrom(firstStart, dueInDays),
  }));
}

/** The day so many days after another, both `YYYY-MM-DD`; days before it are negative. */
export function dayFrom(day: string, days: number): string {
  const at = Date.parse(`${day}T00:00:00Z`) + days * MILLISECONDS_PER_DAY;
  return new Date(at).toISOString().slice(0, 10);
}
