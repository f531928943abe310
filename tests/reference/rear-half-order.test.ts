/** In which order the trade builds rear wheels, drives, seats and frames beyond the two common bikes. */

import { describe, expect, test } from 'vitest';
import { mustComeFirst } from '../support/plan-of';
import { type RearHalfKind, rearHalfPlan } from '../support/rear-half-bikes';

const idsOf = (kind: RearHalfKind) => rearHalfPlan(kind).steps.map(({ id }) => id);

// Source of all rows: common practice, no source.
describe('what a good mechanic does first', () => {
  test.each<[fact: string, kind: RearHalfKind, earlier: string, later: string]>([
    [
      'cups are tight before an axle goes through them',
      'suspended',
      'drive-side-cup-english',
      'fit-crank-axle',
    ],
    [
      'the cap sets the bearing before the pinch bolts hold it',
      'suspended',
      'crank-cap',
      'left-crank',
    ],
    ['beads are seated before sealant goes in', 'suspended', 'rear-bead-seat', 'rear-sealant'],
    ['sealant is in before the pressure is set', 'suspended', 'rear-sealant', 'rear-tyre-pressure'],
    ['the main pivot comes before the linkage', 'suspended', 'main-pivot', 'pivot-bolts'],
    [
      'bolts through the stay are measured before the caliper is lined up',
      'suspended',
      'rear-flat-bolts',
      'rear-caliper-align',
    ],
    [
      'the shock has its pressure before anybody sits on it',
      'suspended',
      'shock-pressure',
      'shock-sag',
    ],
    ['the saddle is clamped before anybody sits on it', 'suspended', 'saddle-rails', 'shock-sag'],
    ['the hose is joined before the brake is bled', 'racing', 'rear-hose-connect', 'rear-bleed'],
    ['fluid is closed in before pads come near', 'racing', 'rear-hose-leak', 'rear-disc-pads'],
    ['pads are in before the wheel is', 'racing', 'rear-disc-pads', 'rear-wheel-in-derailleur'],
    [
      'the lock ring is reached with the wheel in the hand',
      'racing',
      'cassette-lockring',
      'rear-wheel-in-derailleur',
    ],
    ['a chain is measured before it is closed', 'racing', 'chain-length', 'quick-link'],
    ['a chain is closed before the gears are trimmed', 'racing', 'quick-link', 'electronic-trim'],
    [
      'tyre and hookless rim are matched before air goes in',
      'racing',
      'rear-hookless',
      'rear-tyre-pressure',
    ],
    [
      'the cable is held before the pads’ gap is set',
      'cable',
      'rear-disc-cable',
      'rear-disc-pad-gap',
    ],
    [
      'cantilever pads are set before their wire is',
      'cantilever',
      'rear-pads-cantilever',
      'rear-straddle-wire',
    ],
    [
      'the chain has its tension before the lever is closed',
      'cantilever',
      'rear-wheel-position-lever',
      'close-rear-quick-release',
    ],
    [
      'the reaction arm is held before the cable is',
      'roller',
      'rear-reaction-arm',
      'rear-hub-brake-cable',
    ],
    ['the belt has its tension before its line is judged', 'roller', 'belt-tension', 'belt-line'],
    [
      'hands are off chain and gear before the battery goes in',
      'roller',
      'hub-gear-marks',
      'fit-battery',
    ],
    ['the battery is charged before it is locked in', 'roller', 'charge-battery', 'fit-battery'],
    ['the motor starts before its cut-out is tried', 'roller', 'motor-first-start', 'motor-stops'],
    [
      'stabilisers hang before the nuts that hold them are tight',
      'coaster',
      'hang-stabilisers',
      'rear-axle-nuts',
    ],
    [
      'the tyre stands at its pressure before stabilisers are set',
      'coaster',
      'rear-tyre-pressure',
      'stabiliser-height',
    ],
    [
      'the arm is clipped before the coaster brake is tried',
      'coaster',
      'coaster-arm',
      'coaster-hold',
    ],
    [
      'torque washers lie right before the nuts are tight',
      'cargo',
      'motor-hub-washers',
      'rear-axle-nuts',
    ],
    [
      'the motor’s plug is joined before it is switched on',
      'cargo',
      'motor-hub-lead',
      'motor-first-start',
    ],
    ['the wheel is held before the dropouts slide', 'cargo', 'rear-axle-nuts', 'sliding-dropouts'],
    [
      'the frame’s hinge is closed before the bike hangs on it',
      'folding',
      'frame-hinge',
      'clamp-in-stand',
    ],
    [
      'a post’s spring is set before the post goes in',
      'folding',
      'suspension-post',
      'fit-seat-post',
    ],
    [
      'cranks are in phase before the timing chain is tensioned',
      'tandem',
      'timing-chain-phase',
      'timing-eccentric',
    ],
    ['tugs are set after the wheel is placed', 'stunt', 'rear-wheel-position', 'chain-tugs'],
    ['pegs hang before the nuts inside them are tight', 'stunt', 'rear-pegs', 'rear-axle-nuts'],
    [
      'small feet reach the floor before the post is clamped',
      'balance',
      'balance-saddle',
      'seat-post-clamp',
    ],
  ])('[P14] %s (%s bike)', (_, kind, earlier, later) => {
    const order = idsOf(kind);
    expect(order).toContain(earlier);
    expect(order).toContain(later);
    expect(order.indexOf(earlier)).toBeLessThan(order.indexOf(later));
    expect(mustComeFirst(rearHalfPlan(kind), earlier, later)).toBe(true);
  });
});
