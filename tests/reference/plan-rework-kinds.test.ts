/** What has to be shown good again after something is loosened, on bikes of every kind: facts of the trade. */

import { expect, test } from 'vitest';
import { staleAfter } from '../../src/engine/plan';
import { bikeFrom, mountainBike, townBike } from '../support/bikes';
import { planOf } from '../support/plan-of';

const thru = { axle: 'thru-axle' };
const plans = {
  mountain: planOf(bikeFrom(mountainBike)),
  town: planOf(bikeFrom(townBike)),
  road: planOf(
    bikeFrom(mountainBike, {
      kind: 'road',
      fork: { kind: 'rigid', steerer: 'carbon' },
      front: { ...thru, tyre: '28-622', hose: 'to-fit' },
      rear: { ...thru, tyre: '28-622' },
      steering: { bar: 'drop' },
      gears: { chainrings: 2, speeds: 12 },
      cranks: { fixing: 'pinch-bolts' },
    }),
  ),
  'full suspension': planOf(
    bikeFrom(mountainBike, {
      kind: 'mountain-full-suspension',
      front: thru,
      rear: thru,
      seat: { post: 'dropper-cable' },
      cranks: { fixing: 'splined' },
    }),
  ),
  child: planOf(
    bikeFrom(townBike, {
      kind: 'child',
      front: { tyre: '47-305' },
      rear: { brake: 'coaster', tyre: '47-305' },
      gears: { kind: 'single-speed', speeds: 1 },
      extras: ['bell', 'reflectors', 'chainguard', 'stabilisers'],
    }),
  ),
  'motor and belt': planOf(
    bikeFrom(townBike, {
      kind: 'trekking',
      assist: 'mid-motor',
      gears: { drive: 'belt', tension: 'eccentric' },
      front: { brake: 'hydraulic-disc' },
      rear: { brake: 'hydraulic-disc' },
      steering: { stem: 'threadless', faceplateBolts: 4, stemAngle: 'adjustable' },
    }),
  ),
  tandem: planOf(
    bikeFrom(mountainBike, {
      kind: 'tandem',
      front: { brake: 'cantilever' },
      rear: { brake: 'cantilever' },
    }),
  ),
  cargo: planOf(
    bikeFrom(townBike, {
      kind: 'cargo',
      front: { brake: 'roller' },
      rear: { brake: 'roller' },
      steering: { stem: 'threadless', faceplateBolts: 4 },
    }),
  ),
} as const;

// Source of all rows: common practice, no source.
test.each<[loosened: string, kind: keyof typeof plans, stale: string[], untouched: string[]]>([
  [
    'faceplate',
    'mountain',
    ['bar-alignment', 'steering-swing'],
    ['headset-play', 'indexing', 'front-disc-rub'],
  ],
  [
    'brake-levers',
    'mountain',
    ['lever-reach', 'brake-hold'],
    ['headset-play', 'front-caliper-mount'],
  ],
  [
    'front-rotor',
    'mountain',
    ['front-disc-rub', 'brake-hold'],
    ['rear-disc-rub', 'front-runout', 'headset-play'],
  ],
  ['rear-rotor', 'mountain', ['rear-disc-rub', 'brake-hold'], ['front-disc-rub', 'indexing']],
  [
    'rear-caliper-mount',
    'mountain',
    ['rear-disc-rub', 'brake-hold'],
    ['front-disc-rub', 'indexing'],
  ],
  [
    'hanger',
    'mountain',
    ['hanger-straight', 'limit-screws', 'indexing'],
    ['rear-disc-rub', 'brake-hold'],
  ],
  ['rear-derailleur', 'mountain', ['limit-screws', 'indexing'], ['rear-disc-rub', 'left-pedal']],
  [
    'gear-cable-anchor',
    'mountain',
    ['indexing'],
    ['limit-screws', 'hanger-straight', 'brake-hold'],
  ],
  ['right-crank', 'mountain', ['bottom-bracket-play'], ['indexing', 'brake-hold', 'bar-alignment']],
  [
    'seat-post-clamp',
    'mountain',
    ['seat-post-insertion'],
    ['headset-play', 'indexing', 'brake-hold'],
  ],
  [
    'spokes',
    'mountain',
    ['front-runout', 'rear-runout'],
    ['faceplate', 'seat-post-clamp', 'left-crank'],
  ],
  ['line-up-bar', 'mountain', ['steerer-clamp', 'bar-alignment'], ['indexing', 'rear-disc-rub']],
  [
    'headset-preload',
    'mountain',
    ['steerer-clamp', 'headset-play'],
    ['front-caliper-mount', 'indexing'],
  ],
  [
    'front-pads',
    'town',
    ['front-brake-centre', 'brake-hold'],
    ['rear-brake-centre', 'front-axle-nuts'],
  ],
  [
    'front-brake-cable',
    'town',
    ['front-brake-centre', 'brake-hold'],
    ['rear-brake-centre', 'bar-alignment'],
  ],
  [
    'front-brake-arms',
    'town',
    ['front-brake-centre', 'brake-hold'],
    ['rear-brake-centre', 'front-runout-rim-brake'],
  ],
  ['rear-pads', 'town', ['rear-brake-centre', 'brake-hold'], ['front-brake-centre', 'chain-slack']],
  ['quill-bar-clamp', 'town', ['bar-alignment'], ['quill-wedge', 'hub-gear-marks']],
  [
    'front-mudguard',
    'town',
    ['toe-clearance'],
    ['front-brake-centre', 'front-axle-nuts', 'brake-hold'],
  ],
  [
    'front-axle-nuts',
    'town',
    ['dynamo-lead', 'lights', 'brake-hold'],
    ['hub-gear-marks', 'quill-wedge'],
  ],
  ['right-pedal', 'town', ['toe-clearance'], ['left-pedal', 'right-crank', 'brake-hold']],
  [
    'expander',
    'road',
    ['headset-preload', 'steerer-clamp', 'headset-play'],
    ['rear-disc-rub', 'indexing'],
  ],
  [
    'front-hose-join',
    'road',
    ['front-brake-bleed', 'front-hose-leak', 'brake-hold'],
    ['rear-disc-rub', 'bar-alignment'],
  ],
  [
    'front-caliper-plate',
    'road',
    ['front-caliper-align', 'front-caliper-mount', 'front-disc-rub'],
    ['rear-disc-rub'],
  ],
  ['front-derailleur', 'road', ['front-limit-screws'], ['indexing', 'left-crank']],
  [
    'rear-thru-axle',
    'road',
    ['rear-disc-rub', 'limit-screws', 'indexing', 'brake-hold'],
    ['front-disc-rub', 'headset-play'],
  ],
  [
    'front-thru-axle',
    'road',
    ['front-disc-rub', 'bar-alignment', 'brake-hold'],
    ['rear-disc-rub', 'indexing', 'faceplate'],
  ],
  ['brake-levers-drop', 'road', ['lever-reach-drop', 'brake-hold'], ['headset-play', 'indexing']],
  [
    'shock-mounts',
    'full suspension',
    ['shock-travel'],
    ['rear-disc-rub', 'fork-travel', 'indexing'],
  ],
  ['main-pivot', 'full suspension', ['shock-travel'], ['headset-play', 'seat-post-insertion']],
  [
    'seat-post-clamp',
    'full suspension',
    ['seat-post-insertion', 'dropper-travel'],
    ['indexing', 'brake-hold'],
  ],
  [
    'rear-axle-nuts',
    'child',
    ['chain-slack', 'coaster-arm', 'stabiliser-height', 'coaster-hold'],
    ['front-brake-centre', 'bar-alignment'],
  ],
  ['coaster-arm', 'child', ['coaster-hold'], ['chain-slack', 'front-brake-centre']],
  [
    'eccentric',
    'motor and belt',
    ['belt-tension', 'belt-line'],
    ['rear-disc-rub', 'hub-gear-marks', 'brake-hold'],
  ],
  [
    'rear-axle-nuts',
    'motor and belt',
    ['belt-tension', 'belt-line', 'speed-magnet', 'hub-gear-marks', 'brake-hold'],
    ['front-disc-rub', 'headset-play'],
  ],
  ['stem-angle', 'motor and belt', ['bar-alignment'], ['headset-play', 'front-disc-rub']],
  ['timing-eccentric', 'tandem', ['timing-chain-slack'], ['indexing', 'brake-hold']],
  [
    'front-straddle-wire',
    'tandem',
    ['front-brake-centre', 'brake-hold'],
    ['rear-brake-centre', 'indexing'],
  ],
  ['stoker-seat-clamp', 'tandem', ['stoker-post-insertion'], ['seat-post-insertion', 'brake-hold']],
  [
    'steering-rod',
    'cargo',
    ['steering-rod-length', 'bar-alignment'],
    ['rear-hub-brake-run', 'chain-slack'],
  ],
  [
    'front-reaction-arm',
    'cargo',
    ['front-hub-brake-set', 'brake-hold'],
    ['rear-hub-brake-run', 'bar-alignment'],
  ],
  [
    'front-axle-nuts',
    'cargo',
    ['front-reaction-arm', 'front-hub-brake-set', 'brake-hold'],
    ['rear-hub-brake-run', 'chain-slack'],
  ],
])('[P11] loosening %s (%s)', (loosened, kind, stale, untouched) => {
  const inPlan = plans[kind].steps.map((step) => step.id);
  for (const id of [loosened, ...stale, ...untouched]) expect(inPlan).toContain(id);
  const found = staleAfter(plans[kind], [loosened]);
  expect(found).toEqual(expect.arrayContaining(stale));
  expect(found.filter((id) => untouched.includes(id))).toEqual([]);
});

test('[P11] what is never loosened makes nothing stale', () => {
  for (const plan of Object.values(plans)) expect(staleAfter(plan, [])).toEqual([]);
});
