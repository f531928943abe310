/** Invented bikes for tests: a mountain bike and a town bike, as they come from outside and as parsed. */

import { type Bike, bikeSchema } from '../../src/engine/bike';

type Description = { readonly [name: string]: unknown };

export const mountainBike = {
  make: 'Harrier Works',
  model: 'Fell 2',
  kind: 'mountain-hardtail',
  frameNumber: 'HW24-00417',
  frame: {},
  fork: { kind: 'suspension' },
  front: { axle: 'quick-release', brake: 'hydraulic-disc', tyre: '57-622' },
  rear: { axle: 'quick-release', brake: 'hydraulic-disc', tyre: '57-622' },
  steering: { stem: 'threadless', bar: 'riser' },
  seat: { clamp: 'bolt', postDiameter: 31.6 },
  gears: { kind: 'derailleur', speeds: 11 },
  cranks: {},
  pedals: {},
} as const satisfies Description;

export const townBike = {
  make: 'Quayside',
  model: 'Ferry 7',
  kind: 'town',
  frameNumber: 'QS-1900382',
  frame: { shape: 'low-step' },
  fork: { kind: 'rigid', steerer: 'steel' },
  front: { axle: 'nutted', brake: 'linear-pull', tyre: '40-622' },
  rear: { axle: 'nutted', brake: 'linear-pull', tyre: '40-622' },
  steering: { stem: 'quill', bar: 'swept', faceplateBolts: 1 },
  seat: { clamp: 'bolt', postDiameter: 27.2 },
  gears: { kind: 'hub', speeds: 7 },
  cranks: {},
  pedals: {},
  extras: ['mudguards', 'rack', 'stand', 'bell', 'reflectors', 'dynamo-lights', 'chainguard'],
} as const satisfies Description;

/** A parsed bike: the description with parts of it replaced, part by part. */
export function bikeFrom(description: Description, changes: Description = {}): Bike {
  return bikeSchema.parse(withChanges(description, changes));
}

/** The description with changes laid over it; a change to `undefined` leaves the answer open. */
export function withChanges(description: Description, changes: Description): Description {
  const changed: Record<string, unknown> = { ...description };
  for (const [name, value] of Object.entries(changes)) {
    const before = changed[name];
    if (value === undefined) delete changed[name];
    else
      changed[name] =
        isDescription(before) && isDescription(value) ? withChanges(before, value) : value;
  }
  return changed;
}

function isDescription(value: unknown): value is Description {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
