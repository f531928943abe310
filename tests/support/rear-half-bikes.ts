/** Invented bikes whose rear halves are built in every way that the two common ones are not. */

import type { Bike } from '../../src/engine/bike';
import type { Plan } from '../../src/engine/plan';
import { bikeFrom, mountainBike, townBike } from './bikes';
import { planOf } from './plan-of';

export const rearHalfBikes = {
  suspended: bikeFrom(mountainBike, {
    kind: 'mountain-full-suspension',
    frame: { material: 'carbon', shock: 'air' },
    rear: { axle: 'thru-axle', tyreFit: 'tubeless', discMount: 'flat' },
    seat: { post: 'dropper-cable' },
    cranks: { fixing: 'pinch-bolts', fitted: false, bottomBracket: 'english' },
  }),
  racing: bikeFrom(mountainBike, {
    kind: 'road',
    fork: { kind: 'rigid' },
    rear: {
      axle: 'thru-axle',
      axleHead: 'lever',
      tyre: '28-622',
      hookless: true,
      hose: 'to-fit',
      fitted: false,
    },
    seat: { clamp: 'wedge', postMaterial: 'carbon', postShape: 'not-round' },
    gears: { kind: 'electronic-derailleur', chainrings: 2, speeds: 12, join: 'quick-link' },
    cranks: { fixing: 'splined', fitted: false, bottomBracket: 'italian' },
    pedals: { style: 'clip-in' },
  }),
  cable: bikeFrom(mountainBike, {
    kind: 'gravel',
    fork: { kind: 'rigid' },
    rear: { brake: 'cable-disc', tyre: '40-622' },
    gears: { hanger: 'part-of-frame' },
  }),
  cantilever: bikeFrom(townBike, {
    kind: 'trekking',
    rear: { brake: 'cantilever', axle: 'quick-release' },
    gears: { kind: 'single-speed', speeds: 1 },
  }),
  roller: bikeFrom(townBike, {
    assist: 'mid-motor',
    rear: { brake: 'roller' },
    gears: { drive: 'belt', speeds: 8 },
    extras: ['motor-lights', 'rack', 'lock', 'child-seat-mount'],
  }),
  coaster: bikeFrom(townBike, {
    kind: 'child',
    front: { tyre: '47-305' },
    rear: { brake: 'coaster', tyre: '47-305' },
    gears: { kind: 'single-speed', speeds: 1 },
    cranks: { fixing: 'one-piece' },
    pedals: { thread: '1/2 in' },
    extras: ['stabilisers', 'chainguard'],
  }),
  cargo: bikeFrom(townBike, {
    kind: 'cargo',
    assist: 'hub-motor',
    frame: { load: 'long-tail' },
    rear: { brake: 'drum' },
    gears: { kind: 'single-speed', speeds: 1, tension: 'sliding-dropouts' },
  }),
  folding: bikeFrom(townBike, {
    kind: 'folding',
    seat: { clamp: 'quick-lever', post: 'suspension', saddleClamp: 'clip' },
    gears: { tension: 'sprung-tensioner', speeds: 3 },
    pedals: { style: 'folding' },
  }),
  tandem: bikeFrom(mountainBike, { kind: 'tandem', gears: { chainrings: 3, speeds: 9 } }),
  stunt: bikeFrom(townBike, {
    kind: 'bmx',
    front: { brake: 'none' },
    gears: { kind: 'single-speed', speeds: 1, tension: 'tugs', join: 'pin' },
    extras: ['pegs'],
  }),
  balance: bikeFrom(townBike, {
    kind: 'balance',
    front: { brake: 'none' },
    rear: { brake: 'none' },
    gears: { kind: 'single-speed', drive: 'none', speeds: 1, chainrings: 0 },
    extras: [],
  }),
} as const satisfies Readonly<Record<string, Bike>>;

export type RearHalfKind = keyof typeof rearHalfBikes;

export const rearHalfKinds = Object.keys(rearHalfBikes) as RearHalfKind[]; // the keys of the record above, nothing else

const plans = new Map<RearHalfKind, Plan>();

export function rearHalfPlan(kind: RearHalfKind): Plan {
  const known = plans.get(kind);
  if (known !== undefined) return known;
  const plan = planOf(rearHalfBikes[kind]);
  plans.set(kind, plan);
  return plan;
}
