/** The clock claims the local time with its offset, as ISO 8601 writes it. */

import { afterEach, expect, test, vi } from 'vitest';
import { entrySchema } from '../../src/engine/integrity';
import { createClock } from '../../src/platform/clock';

afterEach(() => {
  vi.unstubAllEnvs();
});

// IANA time zone database: Berlin is at +01:00 in winter and +02:00 in summer; St John's at −03:30 in winter.
test.each([
  ['Europe/Berlin', '2026-11-25T09:00:00Z', '2026-11-25T10:00:00+01:00'],
  ['Europe/Berlin', '2026-07-01T22:30:00Z', '2026-07-02T00:30:00+02:00'],
  ['America/St_Johns', '2026-12-01T02:00:00Z', '2026-11-30T22:30:00-03:30'],
  ['UTC', '2026-11-25T09:00:00Z', '2026-11-25T09:00:00+00:00'],
])('in %s at %s', (zone, instant, claimed) => {
  vi.stubEnv('TZ', zone);
  const clock = createClock(() => new Date(instant));
  expect(clock.now()).toEqual({ claimed, zone });
  expect(clock.today()).toBe(claimed.slice(0, 10));
  expect(entrySchema.shape.at.safeParse(clock.now()).success).toBe(true);
});
