/** Invented bikes of each kind, as their descriptions would be typed in. */

import { type Bike, bikeKinds, bikeSchema } from '../../src/engine/bike';

type Described = Record<string, unknown>;

const wheel = { axle: 'quick-release', brake: 'hydraulic-disc', tyre: '57-622' };

const plain: Described = {
  make: 'Larkfell',
  model: 'Trial',
  kind: 'mountain-hardtail',
  frameNumber: 'FR7K20418',
  frame: {},
  fork: { kind: 'suspension' },
  front: wheel,
  rear: wheel,
  steering: { stem: 'threadless', bar: 'riser' },
  seat: { clamp: 'quick-lever', postDiameter: 30.9 },
  gears: { kind: 'derailleur', chainrings: 1, speeds: 12 },
  cranks: {},
  pedals: {},
};

export function bikeOf(changes: Described = {}): Bike {
  return bikeSchema.parse({ ...plain, ...changes });
}

export const hardtail = bikeOf();

export const town = bikeOf({
  kind: 'town',
  frame: { shape: 'low-step' },
  fork: { kind: 'rigid' },
  front: { axle: 'nutted', brake: 'linear-pull', tyre: '40-622' },
  rear: { axle: 'nutted', brake: 'roller', tyre: '40-622' },
  steering: { stem: 'quill', bar: 'swept' },
  seat: { clamp: 'bolt', postDiameter: 27.2 },
  gears: { kind: 'hub', speeds: 7 },
  extras: [
    'mudguards',
    'rack',
    'stand',
    'bell',
    'reflectors',
    'dynamo-lights',
    'chainguard',
    'basket',
    'lock',
  ],
});

export const road = bikeOf({
  kind: 'road',
  fork: { kind: 'rigid' },
  front: { ...wheel, brake: 'dual-pivot', tyre: '28-622' },
  rear: { ...wheel, brake: 'dual-pivot', tyre: '28-622' },
  steering: { stem: 'threadless', bar: 'drop' },
  gears: { kind: 'derailleur', chainrings: 2, speeds: 11 },
});

const usualTyre: Readonly<Partial<Record<Bike['kind'], string>>> = {
  folding: '47-406',
  bmx: '53-406',
  child: '47-406',
  balance: '57-203',
  cargo: '55-507',
  road: '28-622',
};

/** One bike of every kind, on the wheels such bikes usually have. */
export const oneOfEach: readonly Bike[] = bikeKinds.map((kind) => {
  const tyre = usualTyre[kind] ?? '42-622';
  const drive = kind === 'balance' ? { drive: 'none', chainrings: 0 } : {};
  return bikeOf({
    kind,
    front: { ...wheel, tyre },
    rear: { ...wheel, tyre },
    gears: { kind: kind === 'balance' ? 'single-speed' : 'derailleur', speeds: 8, ...drive },
  });
});
