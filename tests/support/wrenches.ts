/** Invented wrenches for tests; each says only what it has of its own. */

import { type Wrench, wrenchSchema } from '../../src/engine/torque';

export const TODAY = '2026-03-02';

type WrenchInput = Partial<Wrench>;

/** A click wrench 2–25 N·m, type II class A (±4 %), in steps of 0.5 N·m, calibrated. */
export function wrench(own: WrenchInput = {}): Wrench {
  return wrenchSchema.parse({
    id: 'wrench',
    name: 'Small click wrench',
    type: 'II',
    class: 'A',
    lowest: 2,
    highest: 25,
    increment: 0.5,
    unit: 'N·m',
    calibratedOn: '2025-09-01',
    dueOn: '2026-09-01',
    condition: 'in service',
    ...own,
  });
}
