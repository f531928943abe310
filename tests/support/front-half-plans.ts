/** Plans of bikes whose front wheels, front brakes and bars differ from the two common bikes. */

import type { Plan } from '../../src/engine/plan';
import { bikeFrom, mountainBike, townBike } from './bikes';
import { planOf } from './plan-of';
import { seedCatalogue } from './seed-catalogue';

export const catalogue = seedCatalogue();

const bikes = {
  racing: bikeFrom(mountainBike, {
    kind: 'road',
    fork: { kind: 'rigid', steerer: 'carbon' },
    front: {
      axle: 'thru-axle',
      tyre: '28-622',
      tyreFit: 'tubeless',
      hookless: true,
      hose: 'to-fit',
    },
    steering: {
      stem: 'integrated',
      bar: 'drop',
      controlsFitted: false,
      routing: 'through-headset',
    },
    gears: { kind: 'electronic-derailleur', speeds: 12 },
  }),
  cable: bikeFrom(mountainBike, {
    fork: { spring: 'air' },
    front: { brake: 'cable-disc', discMount: 'flat', axle: 'thru-axle', axleHead: 'lever' },
  }),
  cantilever: bikeFrom(townBike, {
    front: { brake: 'cantilever', axle: 'quick-release' },
    extras: ['mudguards', 'front-rack', 'basket', 'dynamo-lights'],
  }),
  roller: bikeFrom(townBike, { front: { brake: 'roller' }, steering: { stemAngle: 'adjustable' } }),
  motor: bikeFrom(townBike, {
    kind: 'folding',
    assist: 'hub-motor',
    front: { hub: 'motor' },
    steering: { stem: 'threadless', bar: 'flat', grip: 'lock-on' },
    extras: ['bell'],
  }),
  cargo: bikeFrom(townBike, { kind: 'cargo', frame: { load: 'front-load' } }),
  stunt: bikeFrom(townBike, {
    kind: 'bmx',
    front: { brake: 'none' },
    steering: { stem: 'threadless', bar: 'riser' },
    gears: { kind: 'single-speed', speeds: 1 },
    extras: ['pegs', 'cable-detangler'],
  }),
  balance: bikeFrom(townBike, {
    kind: 'balance',
    front: { brake: 'none' },
    rear: { brake: 'none' },
    gears: { kind: 'single-speed', drive: 'none', speeds: 1, chainrings: 0 },
    pedals: { supplied: false },
    extras: [],
  }),
};
export type Kind = keyof typeof bikes;

export const plans = Object.fromEntries(
  Object.entries(bikes).map(([kind, bike]) => [kind, planOf(bike)]),
) as Record<Kind, Plan>; // built from the keys of `bikes`

export const idsOf = (kind: Kind) => plans[kind].steps.map(({ id }) => id);
