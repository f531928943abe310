/** What the trade knows of rear wheels, drives, seats and frames beyond the two common bikes, held against their plans. */

import { describe, expect, test } from 'vitest';
import { routeFor } from '../../src/engine/inspection';
import { planFaults } from '../../src/engine/plan';
import {
  type RearHalfKind,
  rearHalfBikes,
  rearHalfKinds,
  rearHalfPlan,
} from '../support/rear-half-bikes';
import { seedCatalogue, seedPoints } from '../support/seed-catalogue';

const catalogue = seedCatalogue();
const points = seedPoints();

const idsOf = (kind: RearHalfKind) => rearHalfPlan(kind).steps.map(({ id }) => id);
const jointOf = (kind: RearHalfKind, joint: string) =>
  rearHalfPlan(kind).steps.find((step) => step.joint?.id === joint)?.joint;

describe('every rear half', () => {
  test.each(rearHalfKinds)(
    '[P2] of the %s bike is planned, looked at and boxed without a gap',
    (kind) => {
      expect(planFaults(rearHalfBikes[kind], rearHalfPlan(kind), catalogue, points)).toEqual([]);
    },
  );

  test.each(rearHalfKinds)(
    '[P14] of the %s bike starts at the box and ends with a clean bike',
    (kind) => {
      expect(idsOf(kind)[0]).toBe('unpack');
      expect(idsOf(kind).at(-1)).toBe('wipe-down');
    },
  );
});

// Source: English and Italian shells, pedals: common practice, no source.
describe('the hand of a thread', () => {
  test.each<[joint: string, kind: RearHalfKind, hand: string]>([
    ['drive-side-cup-english', 'suspended', 'left'],
    ['left-cup', 'suspended', 'right'],
    ['drive-side-cup', 'racing', 'right'],
    ['left-cup', 'racing', 'right'],
    ['captain-left-pedal', 'tandem', 'left'],
    ['captain-right-pedal', 'tandem', 'right'],
    ['left-pedal', 'coaster', 'left'],
    ['right-pedal', 'coaster', 'right'],
  ])('[P14] %s (%s bike) is %s', (joint, kind, hand) => {
    expect(jointOf(kind, joint)?.hand).toBe(hand);
  });

  test('[P14] no joint but left pedals and the English right cup is left-handed', () => {
    const left = rearHalfKinds.flatMap((kind) =>
      rearHalfPlan(kind).steps.flatMap(({ joint }) => (joint?.hand === 'left' ? [joint.id] : [])),
    );
    expect(new Set(left)).toEqual(
      new Set(['left-pedal', 'captain-left-pedal', 'drive-side-cup-english']),
    );
  });

  test('[P14] whoever meets a left-hand thread is told which way it tightens', () => {
    const told = rearHalfKinds
      .flatMap((kind) => rearHalfPlan(kind).steps)
      .filter(({ joint, id }) => joint?.hand === 'left' || id === 'one-piece-bearing');
    expect(told.length).toBeGreaterThan(5);
    for (const { id, wayRound } of told) expect(wayRound, id).toMatch(/left-hand.*anticlockwise/);
  });
});

// N·m and threads. Source: common practice, no source; 1.37 in × 24 and 36 mm × 24: shell standards, from memory.
describe('joints of the rear half', () => {
  test.each<[joint: string, kind: RearHalfKind, min: number, max: number, thread: string]>([
    ['coaster-arm-clip', 'coaster', 2, 3, 'M6'],
    ['drive-side-cup-english', 'suspended', 35, 50, '1.37 in × 24'],
    ['left-cup', 'racing', 35, 50, '36 mm × 24'],
    ['left-crank', 'suspended', 12, 14, 'M5'],
    ['rear-caliper-mount', 'suspended', 6, 8, 'M5'],
    ['rear-thru-axle', 'suspended', 9, 20, 'M12'],
    ['left-pedal', 'coaster', 35, 40, '1/2 in × 20'],
    ['chainring-bolts', 'tandem', 5, 14, 'M8×0.75'],
  ])('[P14] %s (%s bike): %i–%i N·m, %s', (joint, kind, min, max, thread) => {
    const found = jointOf(kind, joint);
    expect(found?.thread).toBe(thread);
    expect(found?.usual.min).toBeGreaterThanOrEqual(min);
    expect(found?.usual.max).toBeLessThanOrEqual(max);
  });
});

describe('nothing for what the bike lacks', () => {
  test.each<[kind: RearHalfKind, never: RegExp]>([
    ['balance', /crank|pedal|chain|belt|gear|derailleur|hanger|brake|coaster/],
    ['coaster', /derailleur|index|hanger|belt|shock|motor|rear-brake-arms/],
    ['roller', /chain-(slack|clip|link)|rotor|caliper|index|derailleur/],
    ['folding', /chain-slack|seat-post-clamp$|dropper|motor|disc/],
    ['tandem', /clamp-in-stand|belt|sliding|stabiliser/],
    ['racing', /clamp-in-stand|gear-cable|^indexing|^limit-screws|dropper|shock/],
  ])('[P2] %s', (kind, never) => {
    expect(idsOf(kind).filter((id) => never.test(id))).toEqual([]);
    expect(catalogue.steps.some(({ id }) => never.test(id))).toBe(true);
  });

  test('[P14] only frames and posts that are of carbon, or may be, are treated as carbon', () => {
    for (const kind of rearHalfKinds) {
      const { frame, seat } = rearHalfBikes[kind];
      const says = rearHalfPlan(kind).steps.some(
        ({ zone, cautions }) =>
          (zone === 'seat' || zone === 'frame') && /carbon/i.test(cautions.join()),
      );
      expect([kind, says]).toEqual([
        kind,
        frame.material === 'carbon' || seat.postMaterial === 'carbon',
      ]);
    }
  });
});

describe('the walk', () => {
  // A stronger hold than the law of one look: a brake, an axle or a child's seat is looked at by itself.
  test.each<[kind: RearHalfKind, joint: string, point: string]>([
    ['suspended', 'main-pivot', 'shock-linkage'],
    ['racing', 'rear-hose-connect', 'hose-joints'],
    ['roller', 'rear-reaction-arm', 'rear-brake-hub'],
    ['roller', 'child-seat-bracket', 'child-seat-mount'],
    ['coaster', 'stabiliser-height', 'stabilisers'],
    ['cargo', 'rear-axle-nuts', 'motor-in-rear-hub'],
    ['cargo', 'long-tail-deck', 'long-tail-firm'],
    ['folding', 'frame-hinge', 'hinge-of-the-frame'],
    ['tandem', 'captain-left-pedal', 'walk-captain-left-pedal'],
    ['stunt', 'rear-pegs', 'pegs-rear'],
  ])('[P14] of the %s bike looks at %s', (kind, step, point) => {
    const looked = routeFor(rearHalfBikes[kind], points).find(({ id }) => id === point);
    expect(looked?.reliesOn).toContain(step);
    expect(looked?.severity).toBe('stop-ride');
  });

  test('[P14] discs that are ridden are bedded in before the bike is handed over', () => {
    // Source: common practice, no source; the number of stops from memory.
    const beds = rearHalfKinds.filter((kind) =>
      routeFor(rearHalfBikes[kind], points).some(({ id }) => id === 'bedding-in'),
    );
    expect(beds).toEqual(['suspended', 'racing', 'cable', 'tandem']);
  });
});
