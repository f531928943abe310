/** The order in which a good mechanic works, held against the plans of a mountain bike and a town bike. */

import { describe, expect, test } from 'vitest';
import { bikeFrom, mountainBike, townBike } from '../support/bikes';
import { mustComeFirst, planOf } from '../support/plan-of';
import { seedCatalogue } from '../support/seed-catalogue';

const seedSteps = seedCatalogue().steps.map(({ id }) => id);
const plans = { mountain: planOf(bikeFrom(mountainBike)), town: planOf(bikeFrom(townBike)) };

// Source of all rows: common practice, no source.
describe('what a good mechanic does first', () => {
  test.each<[fact: string, kind: keyof typeof plans, earlier: string, later: string]>([
    ['damage is looked for before anything is fitted', 'mountain', 'frame-damage', 'fork-forwards'],
    [
      'the fork is turned forwards before the wheel goes in',
      'mountain',
      'fork-forwards',
      'front-wheel-in-disc',
    ],
    [
      'the pad spacer is out before the front wheel goes in',
      'mountain',
      'front-brake-spacer',
      'front-wheel-in-disc',
    ],
    [
      'the rotor is tight before it runs in the caliper',
      'mountain',
      'front-rotor',
      'front-caliper-align',
    ],
    [
      'the wheel is closed in the fork before the caliper is lined up',
      'mountain',
      'close-front-quick-release',
      'front-caliper-align',
    ],
    [
      'the caliper is lined up before its bolts are tightened',
      'mountain',
      'front-caliper-align',
      'front-caliper-mount',
    ],
    [
      'rubbing is listened for after the caliper bolts are tight',
      'mountain',
      'front-caliper-mount',
      'front-disc-rub',
    ],
    [
      'the fork points forwards before the bar is lined up',
      'mountain',
      'fork-forwards',
      'line-up-bar',
    ],
    ['the bar is in before the faceplate is tightened', 'mountain', 'fit-bar', 'faceplate'],
    [
      'the headset is set before the steerer clamp is tightened',
      'mountain',
      'headset-preload',
      'steerer-clamp',
    ],
    [
      'the front wheel is in before the bar is lined up with it',
      'mountain',
      'front-wheel-in-disc',
      'line-up-bar',
    ],
    [
      'the bar is lined up before the steerer clamp is tightened',
      'mountain',
      'line-up-bar',
      'steerer-clamp',
    ],
    ['alignment is sighted again after the clamp', 'mountain', 'steerer-clamp', 'bar-alignment'],
    ['play is felt for after the clamp', 'mountain', 'steerer-clamp', 'headset-play'],
    [
      'the hanger is straight before the gears are set',
      'mountain',
      'hanger-straight',
      'limit-screws',
    ],
    ['limits are set before indexing', 'mountain', 'limit-screws', 'indexing'],
    [
      'the rear wheel is closed in the frame before the gears are set',
      'mountain',
      'close-rear-quick-release',
      'limit-screws',
    ],
    [
      'the post is in before its clamp is tightened',
      'mountain',
      'fit-seat-post',
      'seat-post-clamp',
    ],
    [
      'the bar is lined up before the quill wedge is tightened',
      'town',
      'line-up-bar',
      'quill-wedge',
    ],
    [
      'the front wheel is tight before its rim brake is set',
      'town',
      'front-axle-nuts',
      'front-pads',
    ],
    ['pads are placed before the brake is centred', 'town', 'front-pads', 'front-brake-centre'],
    [
      'the rear wheel stands straight before its nuts are tightened',
      'town',
      'rear-wheel-position',
      'rear-axle-nuts',
    ],
    ['the rear wheel is tight before its rim brake is set', 'town', 'rear-axle-nuts', 'rear-pads'],
    [
      'the rear wheel is in its place before the hub gear is set',
      'town',
      'rear-axle-nuts',
      'hub-gear-marks',
    ],
    [
      'both brakes are tried hard after the front one is set',
      'town',
      'front-brake-centre',
      'brake-hold',
    ],
    ['and after the rear one is set', 'town', 'rear-brake-centre', 'brake-hold'],
  ])('[P14] %s (%s bike)', (_, kind, earlier, later) => {
    const order = plans[kind].steps.map((step) => step.id);
    expect(order).toContain(earlier);
    expect(order).toContain(later);
    expect(order.indexOf(earlier)).toBeLessThan(order.indexOf(later));
    expect(mustComeFirst(plans[kind], earlier, later)).toBe(true);
  });

  test.each(['mountain', 'town'] as const)(
    '[P14] the %s bike is unpacked first and wiped down last',
    (kind) => {
      const order = plans[kind].steps.map((step) => step.id);
      expect(order[0]).toBe('unpack');
      expect(order.at(-1)).toBe('wipe-down');
    },
  );

  test('[P14] of all that sets and holds the bar, the steerer clamp is tightened last', () => {
    const order = plans.mountain.steps.map((step) => step.id);
    for (const earlier of ['fit-bar', 'headset-preload', 'line-up-bar'])
      expect(mustComeFirst(plans.mountain, earlier, 'steerer-clamp')).toBe(true);
    expect(order.indexOf('faceplate')).toBeLessThan(order.indexOf('steerer-clamp'));
  });
});

describe('nothing for what the bike lacks', () => {
  test.each<[kind: keyof typeof plans, never: string[]]>([
    [
      'mountain',
      [
        'quill-wedge',
        'front-axle-nuts',
        'front-pads',
        'rack',
        'hub-gear-marks',
        'front-mudguard',
        'stand',
      ],
    ],
    [
      'town',
      [
        'steerer-clamp',
        'headset-preload',
        'front-brake-spacer',
        'front-caliper-mount',
        'hanger',
        'indexing',
        'close-front-quick-release',
      ],
    ],
  ])('[P2] %s', (kind, never) => {
    const order = plans[kind].steps.map((step) => step.id);
    expect(order.filter((id) => never.includes(id))).toEqual([]);
    for (const id of never) expect(seedSteps).toContain(id);
  });

  test.each(['mountain', 'town'] as const)(
    '[P2] the %s bike’s parts are needed or told apart from packing',
    (kind) => {
      const contents = new Set(plans[kind].contents.map((part) => part.id));
      for (const step of plans[kind].steps)
        for (const part of step.parts) expect(contents).toContain(part);
    },
  );
});
