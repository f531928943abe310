/** What is shown good again after loosening something at the front of unlike bikes, and what only some of them get. */

import { describe, expect, test } from 'vitest';
import { staleAfter } from '../../src/engine/plan';
import { catalogue, idsOf, type Kind, plans } from '../support/front-half-plans';

// Source of all rows: common practice, no source.
describe('what goes stale', () => {
  test.each<[loosened: string, kind: Kind, stale: string[], untouched: string[]]>([
    [
      'front-hose-join',
      'racing',
      ['front-brake-bleed', 'front-hose-leak', 'front-disc-rub', 'brake-hold'],
      ['front-rotor', 'bar-alignment', 'rear-disc-rub'],
    ],
    [
      'expander',
      'racing',
      ['steerer-gap', 'headset-preload', 'steerer-clamp', 'headset-play'],
      ['front-rotor', 'left-pedal'],
    ],
    [
      'drop-lever-clamps',
      'racing',
      ['lever-reach-drop', 'bar-tape', 'brake-hold'],
      ['steerer-clamp', 'headset-play'],
    ],
    [
      'front-thru-axle-lever',
      'cable',
      ['front-hub-play', 'front-disc-rub', 'bar-alignment'],
      ['faceplate', 'rear-disc-rub'],
    ],
    [
      'front-caliper-plate',
      'cable',
      ['front-cable-disc-align', 'front-caliper-mount', 'front-fixed-pad', 'front-disc-rub'],
      ['front-hub-play', 'bar-alignment'],
    ],
    [
      'front-disc-cable-anchor',
      'cable',
      ['front-disc-rub', 'brake-hold'],
      ['front-caliper-mount', 'bar-alignment'],
    ],
    ['fork-pressure', 'cable', ['fork-rebound', 'fork-sag'], ['headset-play', 'front-disc-rub']],
    [
      'front-straddle-anchor',
      'cantilever',
      ['front-straddle-catch', 'front-brake-centre', 'brake-hold'],
      ['front-brake-arms', 'front-hub-play'],
    ],
    ['front-mudguard-crown', 'cantilever', ['front-mudguard'], ['front-hub-play', 'bar-alignment']],
    [
      'front-reaction-arm',
      'roller',
      ['front-hub-brake-set', 'brake-hold'],
      ['front-hub-play', 'quill-wedge'],
    ],
    [
      'stem-angle',
      'roller',
      ['bar-alignment', 'steering-swing'],
      ['quill-wedge', 'front-hub-brake-set'],
    ],
    [
      'stem-hinge',
      'motor',
      ['bar-post-height', 'bar-alignment'],
      ['front-axle-nuts', 'front-brake-centre'],
    ],
    [
      'front-motor-washers',
      'motor',
      ['front-axle-nuts', 'front-motor-plug', 'front-brake-centre'],
      ['stem-hinge', 'headset-preload'],
    ],
    [
      'steering-rod-joints',
      'cargo',
      ['steering-rod-length', 'front-column-play', 'bar-alignment', 'steering-swing-limited'],
      ['quill-bar-clamp', 'front-brake-centre'],
    ],
  ])('[P11] after loosening %s (%s)', (loosened, kind, stale, untouched) => {
    const found = staleAfter(plans[kind], [loosened]);
    expect(idsOf(kind)).toEqual(expect.arrayContaining([...stale, ...untouched]));
    expect(found).toEqual(expect.arrayContaining(stale));
    expect(found.filter((id) => untouched.includes(id))).toEqual([]);
  });
});

describe('what a kind does and does not get', () => {
  // Source of all rows: common practice, no source.
  test.each<[kind: Kind, own: string[], never: string[]]>([
    [
      'racing',
      ['brake-levers-drop', 'front-runout'],
      ['brake-levers', 'shifter-clamp', 'fit-grips', 'faceplate', 'front-brake-spacer'],
    ],
    [
      'cable',
      ['front-disc-cable', 'front-thru-axle-lever'],
      ['front-brake-spacer', 'front-thru-axle', 'front-caliper-align'],
    ],
    [
      'cantilever',
      ['front-straddle-catch', 'front-brake-arms'],
      ['front-pads', 'front-brake-cable'],
    ],
    [
      'roller',
      ['front-reaction-arm', 'front-runout'],
      ['front-brake-arms', 'front-runout-rim-brake'],
    ],
    ['cargo', ['steering-rod', 'steering-swing-limited'], ['steering-swing']],
    ['stunt', ['detangler-level', 'front-pegs'], ['front-brake-centre', 'shifter-clamp']],
    [
      'balance',
      ['grip-ends-small', 'steering-swing-limited'],
      ['brake-levers', 'lever-reach', 'lever-sides'],
    ],
  ])('[P2] %s', (kind, own, never) => {
    expect(idsOf(kind)).toEqual(expect.arrayContaining(own));
    expect(idsOf(kind).filter((id) => never.includes(id))).toEqual([]);
    for (const id of never) expect(catalogue.steps.map((step) => step.id)).toContain(id);
  });

  test('[P14] a caution about carbon stands only where a part may be carbon', () => {
    for (const kind of ['cantilever', 'roller', 'cargo', 'stunt'] as const) {
      const front = plans[kind].steps.filter(({ zone }) =>
        ['front-wheel', 'fork-and-front-brake', 'cockpit'].includes(zone),
      );
      const warned = front.filter(({ cautions }) => /carbon/i.test(cautions.join(' ')));
      expect(warned.map(({ id }) => id)).toEqual([]);
    }
  });

  test('[P14] a carbon steerer is looked over, and its plug never greased', () => {
    const expander = plans.racing.steps.find(({ id }) => id === 'expander');
    expect(idsOf('racing')).toContain('steerer-look');
    expect(expander?.preparation?.kind).toBe('dry');
    expect(expander?.joint?.preparation).toBe('dry');
  });
});
