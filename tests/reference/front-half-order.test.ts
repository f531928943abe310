/** What a good mechanic does first at front wheels, front brakes and bars, held against the plans of unlike bikes. */

import { describe, expect, test } from 'vitest';
import { idsOf, type Kind, plans } from '../support/front-half-plans';
import { mustComeFirst } from '../support/plan-of';

// Source of all rows: common practice, no source.
describe('what comes first', () => {
  test.each<[fact: string, kind: Kind, earlier: string, later: string]>([
    ['a steerer is looked over before a plug is set in it', 'racing', 'steerer-look', 'expander'],
    ['the plug is set before the cap pulls on it', 'racing', 'expander', 'headset-preload'],
    [
      'lines lie in the headset before the bar closes over them',
      'racing',
      'hoses-through-headset',
      'fit-integrated-bar',
    ],
    [
      'a lever is clamped before its hose is cut to it',
      'racing',
      'brake-levers-drop',
      'front-hose-join',
    ],
    [
      'a brake is bled before it is held for leaks',
      'racing',
      'front-brake-bleed',
      'front-hose-leak',
    ],
    [
      'pads go back only once no fluid can drip on them',
      'racing',
      'front-hose-leak',
      'front-disc-pads',
    ],
    ['pads are in before the rotor', 'racing', 'front-disc-pads', 'front-wheel-in-disc'],
    ['beads are up before sealant goes in', 'racing', 'front-tubeless-bead', 'front-sealant'],
    [
      'the hookless limits are known before air goes in',
      'racing',
      'front-hookless',
      'front-tubeless-bead',
    ],
    [
      'the pitch is compared before the wheel hides the thread',
      'racing',
      'front-axle-thread',
      'front-wheel-in-disc',
    ],
    ['tape goes on after the levers have their torque', 'racing', 'brake-levers-drop', 'bar-tape'],
    [
      'tape goes on after the swing shows that lines are long enough',
      'racing',
      'steering-swing',
      'bar-tape',
    ],
    [
      'the plate is turned before the caliper is lined up',
      'cable',
      'front-caliper-plate',
      'front-cable-disc-align',
    ],
    [
      'the cable is tight before the fixed pad is set',
      'cable',
      'front-disc-cable',
      'front-fixed-pad',
    ],
    ['a fork has its air before it is pressed', 'cable', 'fork-pressure', 'fork-travel'],
    [
      'cantilever pads are placed before the wire is drawn',
      'cantilever',
      'front-pads-cantilever',
      'front-straddle-wire',
    ],
    [
      'a guard’s crown is tight before its stays',
      'cantilever',
      'front-mudguard-crown',
      'front-mudguard',
    ],
    [
      'the bar is in line before a basket hides the wheel',
      'cantilever',
      'bar-alignment',
      'fit-basket',
    ],
    [
      'the axle is tight before the reaction arm',
      'roller',
      'front-axle-nuts',
      'front-reaction-arm',
    ],
    ['the stem’s angle is tight before the bar is lined up', 'roller', 'stem-angle', 'line-up-bar'],
    [
      'torque washers are hooked in before the nuts',
      'motor',
      'front-motor-washers',
      'front-axle-nuts',
    ],
    ['the stem is unfolded before its hinge is closed', 'motor', 'stem-unfold', 'stem-hinge'],
    [
      'grips are clamped before the levers find their place',
      'motor',
      'lock-on-grips',
      'brake-levers',
    ],
    [
      'the rod’s joints are tight before its length is set',
      'cargo',
      'steering-rod',
      'steering-rod-length',
    ],
    ['pegs go under the nuts, not after them', 'stunt', 'front-pegs', 'front-axle-nuts'],
    [
      'the rear brake’s cable is in before the detangler is levelled',
      'stunt',
      'rear-brake-cable',
      'detangler-level',
    ],
  ])('[P14] %s', (_, kind, earlier, later) => {
    expect(idsOf(kind)).toEqual(expect.arrayContaining([earlier, later]));
    expect(mustComeFirst(plans[kind], earlier, later)).toBe(true);
  });
});
