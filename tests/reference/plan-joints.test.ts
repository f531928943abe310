/** Joints as the trade knows them: which way the thread turns, how many bolts, what goes on them, how tight as a rule. */

import { describe, expect, test } from 'vitest';
import type { PlanJoint } from '../../src/engine/plan';
import { bikeFrom, mountainBike, townBike } from '../support/bikes';
import { planOf } from '../support/plan-of';
import { seedCatalogue } from '../support/seed-catalogue';

const catalogue = seedCatalogue();

function jointsOf(bike: ReturnType<typeof bikeFrom>): ReadonlyMap<string, PlanJoint> {
  return new Map(planOf(bike).steps.flatMap(({ joint }) => (joint ? [[joint.id, joint]] : [])));
}

const discs = {
  front: { rotor: 'six-bolt', discMount: 'post' },
  rear: { rotor: 'six-bolt', discMount: 'post' },
};
const joints = {
  mountain: jointsOf(bikeFrom(mountainBike, discs)),
  town: jointsOf(bikeFrom(townBike)),
};

describe('the hand of a thread', () => {
  test('[P14] the left pedal is left-handed, the right pedal right-handed', () => {
    // Source: common practice, no source; both pedals tighten towards the front of the bike.
    for (const kind of ['mountain', 'town'] as const) {
      expect(joints[kind].get('left-pedal')?.hand).toBe('left');
      expect(joints[kind].get('right-pedal')?.hand).toBe('right');
    }
  });

  test('[P14] every other joint of a build is right-handed', () => {
    // Source: common practice, no source (bottom bracket cups come fitted).
    for (const kind of ['mountain', 'town'] as const)
      for (const joint of joints[kind].values())
        if (joint.id !== 'left-pedal') expect([joint.id, joint.hand]).toEqual([joint.id, 'right']);
  });

  test('[P14] the pedal steps say so, each on its own side', () => {
    const step = (id: string) => catalogue.steps.find((one) => one.id === id);
    expect(step('left-pedal')?.side).toBe('left');
    expect(step('right-pedal')?.side).toBe('right');
    expect(JSON.stringify(step('left-pedal'))).toMatch(
      /left-hand|anticlockwise|anti-clockwise|towards the front/i,
    );
  });
});

// Usual ranges of bicycle joints, N·m. Source: common practice, no source (owners' manuals and shop lists disagree):
// a seed's range must lie inside the widest that the trade uses.
describe('usual ranges', () => {
  test.each<
    [joint: string, kind: keyof typeof joints, min: number, max: number, preparation: string]
  >([
    ['faceplate', 'mountain', 4, 6, 'grease'],
    ['steerer-clamp', 'mountain', 4, 8, 'grease'],
    ['front-caliper-mount', 'mountain', 6, 8, 'threadlocker'],
    ['rear-caliper-mount', 'mountain', 6, 8, 'threadlocker'],
    ['front-rotor', 'mountain', 4, 6, 'threadlocker'],
    ['rear-derailleur', 'mountain', 8, 10, 'grease'],
    ['left-pedal', 'mountain', 35, 40, 'grease'],
    ['right-pedal', 'town', 35, 40, 'grease'],
    ['left-crank', 'town', 34, 50, 'grease'],
    ['quill-wedge', 'town', 15, 25, 'grease'],
    ['front-axle-nuts', 'town', 20, 30, 'oil'],
    ['rear-axle-nuts', 'town', 27, 40, 'oil'],
    ['front-brake-arms', 'town', 5, 9, 'grease'],
    ['front-brake-cable-anchor', 'town', 6, 8, 'grease'],
    ['saddle-rails', 'town', 18, 25, 'grease'],
  ])('[P14] %s (%s bike): %i–%i N·m', (id, kind, min, max, preparation) => {
    const joint = joints[kind].get(id);
    expect(joint?.preparation).toBe(preparation);
    expect(joint?.usual.min).toBeGreaterThanOrEqual(min);
    expect(joint?.usual.max).toBeLessThanOrEqual(max);
    expect(joint?.risk === 'A' || joint?.risk === 'B').toBe(true);
  });
});

// Source: common practice, no source.
describe('how bolts stand', () => {
  test.each<[joint: string, bolts: number, layout: string]>([
    ['faceplate', 4, 'rectangle'],
    ['front-rotor', 6, 'ring'],
    ['front-caliper-mount', 2, 'pair'],
  ])('[P14] %s: %i as a %s', (id, bolts, layout) => {
    expect(joints.mountain.get(id)).toMatchObject({ bolts, layout });
  });
});

describe('what never meets carbon', () => {
  const carbon = bikeFrom(mountainBike, {
    ...discs,
    fork: { steerer: 'carbon' },
    steering: { barMaterial: 'carbon' },
    seat: { postMaterial: 'carbon' },
  });

  // Source: common practice, no source: carbon is held by assembly compound, and clamped more gently.
  test('[P14] a carbon post is fitted without grease', () => {
    const fitting = planOf(carbon).steps.filter((step) => step.id.startsWith('fit-seat-post'));
    expect(fitting.map((step) => step.preparation?.kind)).toEqual(['assembly-compound']);
  });

  test('[P14] a carbon steerer is clamped with no more than 6 N·m as a rule', () => {
    expect(jointsOf(carbon).get('steerer-clamp')?.usual.max).toBeLessThanOrEqual(6);
  });
});
