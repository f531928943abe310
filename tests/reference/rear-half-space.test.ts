/** What comes before what in the rear half, held against plans of bikes thrown together at random. */

import { describe, expect, test } from 'vitest';
import { type Bike, contradictionsIn } from '../../src/engine/bike';
import { type Plan, predecessorsOf, resolvePlan } from '../../src/engine/plan';
import { bikeFor, parameters } from '../support/bike-space';
import { seedCatalogue } from '../support/seed-catalogue';
import { seededRandom } from '../support/seeded-random';

const seed = 1125;
const enough = 250;
const catalogue = seedCatalogue();

const axle = [
  'close-rear-quick-release',
  'rear-axle-nuts',
  'rear-thru-axle',
  'rear-thru-axle-lever',
];
const wheelIn = ['rear-wheel-in', 'rear-wheel-in-derailleur', 'rear-wheel-in-free'];
const underTheNuts = ['hub-gear-washers', 'motor-hub-washers', 'hang-stabilisers', 'rear-pegs'];
const placed = [
  'rear-wheel-position',
  'rear-wheel-position-belt',
  'rear-wheel-position-lever',
  'chain-tugs',
];
const chainClosed = ['quick-link', 'press-chain-pin'];
const cranksOn = [
  'fit-crank-axle',
  'fit-right-crank-taper',
  'fit-right-crank-motor',
  'fit-one-piece-crank',
];
const gearsSet = ['hub-gear-marks', 'indexing', 'electronic-trim'];
const slack = ['chain-slack', 'belt-tension'];
const padsAtTheRim = ['rear-brake-arms', 'rear-brake-fixing', 'rear-pads', 'rear-pads-cantilever'];
const caliper = ['rear-caliper-align', 'rear-caliper-align-cable'];
const held = ['clamp-in-stand', 'clamp-in-stand-dropper', 'hang-by-the-saddle', 'steady-on-wheels'];

// Source of all rows: common practice, no source.
const rows: readonly (readonly [fact: string, earlier: string[], later: string[]])[] = [
  [
    'a wheel is in before anything hangs on its axle',
    wheelIn,
    [...underTheNuts, ...placed, ...axle],
  ],
  ['what lies under the nuts comes before the nuts', [...underTheNuts, ...placed], axle],
  [
    'an axle is closed before its wheel is measured',
    axle,
    [
      'rear-hub-play',
      'rear-runout',
      'rear-runout-rim-brake',
      'rear-runout-racing',
      'wheels-in-line',
    ],
  ],
  [
    'an axle is closed before its brake is set',
    axle,
    [...padsAtTheRim, ...caliper, 'rear-reaction-arm', 'coaster-arm'],
  ],
  [
    'an axle is closed before its gears are set',
    axle,
    [...gearsSet, ...slack, 'limit-screws', 'sprung-tensioner'],
  ],
  [
    'the wheel stays where the chain wants it before brake and guard are set',
    [...slack, 'sliding-dropouts'],
    [...padsAtTheRim, ...caliper, 'rear-reaction-arm', 'rear-mudguard'],
  ],
  [
    'the tyre stands at its pressure before pads and guards come near',
    ['rear-tyre-pressure'],
    ['rear-pads', 'rear-pads-cantilever', 'rear-mudguard', 'stabiliser-height'],
  ],
  [
    'cranks are on before they are tightened or turned',
    cranksOn,
    [
      'right-crank',
      'left-crank',
      'right-pedal',
      'left-pedal',
      'chainring-bolts',
      'bottom-bracket-play',
      ...slack,
      ...gearsSet,
    ],
  ],
  [
    'a chain is closed before it is pulled at',
    chainClosed,
    [
      ...gearsSet,
      ...slack,
      'eccentric',
      'sliding-dropouts',
      'rear-wheel-position',
      'derailleur-gap',
      'shock-travel',
    ],
  ],
  ['the rotor is tight before it runs in the caliper', ['rear-rotor'], caliper],
  [
    'levers are tight before cables and hoses are drawn to them',
    ['brake-levers', 'brake-levers-drop'],
    [
      'rear-brake-cable',
      'rear-straddle-wire',
      'rear-disc-cable',
      'rear-hub-brake-cable',
      'rear-hose-connect',
    ],
  ],
  [
    'the post’s depth is known before the bike hangs on it',
    ['seat-post-insertion'],
    held.slice(0, 3),
  ],
  ['the bike is held before its packing comes off', held, ['strip-packing']],
  [
    'all hands’ work on the drive is done before the motor starts',
    [...gearsSet, 'right-crank', 'left-crank', 'bottom-bracket-play'],
    ['motor-first-start'],
  ],
  [
    'brakes are set before they are tried hard',
    ['rear-disc-rub', 'rear-brake-centre', 'rear-hub-brake-run'],
    ['brake-hold', 'fold-once'],
  ],
  [
    'the mudguard hangs before what is bolted over it',
    ['rear-mudguard'],
    ['rack', 'rear-lamp', 'fit-lock'],
  ],
];

const plans = plansAtRandom();

describe(`in ${enough} plans at random (seed ${seed})`, () => {
  test.each(rows)('[P14] %s', (_, earlier, later) => {
    let met = 0;
    for (const { bike, waitsFor } of plans) {
      for (const first of earlier.filter((id) => waitsFor.has(id))) {
        for (const then of later.filter((id) => id !== first && waitsFor.has(id))) {
          met += 1;
          if (!waitsFor.get(then)?.has(first))
            throw new Error(`${then} does not wait for ${first}: ${JSON.stringify(bike)}`);
        }
      }
    }
    expect(met).toBeGreaterThan(0);
  });
});

interface Planned {
  readonly bike: Bike;
  /** By step, everything that it waits for, directly or through others. */
  readonly waitsFor: ReadonlyMap<string, ReadonlySet<string>>;
}

function plansAtRandom(): readonly Planned[] {
  const random = seededRandom(seed);
  const found: Planned[] = [];
  while (found.length < enough) {
    const bike = bikeFor(
      parameters.map(({ answers }) => (random() < 0.4 ? 0 : Math.floor(random() * answers.length))),
    );
    if (contradictionsIn(bike).length > 0) continue;
    const plan = resolvePlan(bike, catalogue);
    if (plan.ok) found.push({ bike, waitsFor: waitingIn(plan.value) });
  }
  return found;
}

function waitingIn({ steps }: Plan): Planned['waitsFor'] {
  const before = predecessorsOf(steps);
  const waitsFor = new Map<string, ReadonlySet<string>>();
  // The plan's own order puts every step after what it waits for, so that those are known already.
  for (const { id } of steps) {
    const direct = before.get(id) ?? [];
    waitsFor.set(id, new Set(direct.flatMap((one) => [one, ...(waitsFor.get(one) ?? [])])));
  }
  return waitsFor;
}
