/** The demo shop's files, read as they are, and its board on a given day. */

import { readFileSync } from 'node:fs';
import type { Wrench } from '../../src/engine/torque';
import type { DemoTools } from '../../src/exchange/demo.schema';

export function readDemo(name: string): unknown {
  return JSON.parse(readFileSync(`seeds/demo/${name}`, 'utf8'));
}

const MILLISECONDS_PER_DAY = 86_400_000;

/** The demo's wrenches with their calibration dates counted from `firstStart` (`YYYY-MM-DD`). */
export function wrenchesOn(firstStart: string, wrenches: DemoTools['wrenches']): readonly Wrench[] {
  return wrenches.map(({ calibratedDaysAgo, dueInDays, notes: _, ...wrench }) => ({
    ...wrench,
    calibratedOn: dayFrom(firstStart, -calibratedDaysAgo),
    dueOn: dayFrom(firstStart, dueInDays),
  }));
}

function dayFrom(day: string, days: number): string {
  const at = Date.parse(`${day}T00:00:00Z`) + days * MILLISECONDS_PER_DAY;
  return new Date(at).toISOString().slice(0, 10);
}
