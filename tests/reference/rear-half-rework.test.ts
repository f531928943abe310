/** What is shown good again when something in the rear half has been undone. */

import { describe, expect, test } from 'vitest';
import { staleAfter } from '../../src/engine/plan';
import { type RearHalfKind, rearHalfPlan } from '../support/rear-half-bikes';

const idsOf = (kind: RearHalfKind) => rearHalfPlan(kind).steps.map(({ id }) => id);

// Source of all rows: common practice, no source.
describe('rework', () => {
  test.each<[loosened: string, kind: RearHalfKind, stale: string[], untouched: string[]]>([
    ['crank-cap', 'suspended', ['left-crank', 'bottom-bracket-play'], ['right-pedal', 'indexing']],
    ['main-pivot', 'suspended', ['shock-travel'], ['rear-disc-rub', 'seat-post-insertion']],
    [
      'shock-pressure',
      'suspended',
      ['shock-sag', 'shock-travel'],
      ['indexing', 'rear-tyre-pressure'],
    ],
    [
      'rear-thru-axle',
      'suspended',
      ['rear-disc-rub', 'indexing', 'rear-hub-play'],
      ['front-disc-rub', 'pivot-bolts'],
    ],
    [
      'fit-dropper-carbon',
      'suspended',
      ['seat-post-clamp', 'seat-post-insertion', 'dropper-travel'],
      ['saddle-rails', 'indexing'],
    ],
    ['rear-bead-seat', 'suspended', ['rear-sealant', 'rear-tubeless-hold'], ['rear-disc-rub']],
    [
      'rear-hose-connect',
      'racing',
      ['rear-bleed', 'rear-hose-leak', 'brake-hold'],
      ['front-disc-rub', 'electronic-trim'],
    ],
    [
      'rear-thru-axle-lever',
      'racing',
      ['electronic-trim', 'rear-disc-rub'],
      ['seat-post-wedge', 'right-crank'],
    ],
    [
      'hanger',
      'racing',
      ['hanger-straight', 'electronic-trim', 'electronic-limit-screws'],
      ['rear-disc-rub'],
    ],
    [
      'rear-disc-cable',
      'cable',
      ['rear-disc-pad-gap', 'rear-disc-rub', 'brake-hold'],
      ['indexing', 'rear-hub-play'],
    ],
    ['frame-hanger', 'cable', ['hanger-straight', 'limit-screws', 'indexing'], ['rear-disc-rub']],
    ['rear-straddle-wire', 'cantilever', ['rear-brake-centre', 'brake-hold'], ['chain-slack']],
    [
      'rear-wheel-position-lever',
      'cantilever',
      ['close-rear-quick-release', 'chain-slack', 'rear-brake-centre'],
      ['front-brake-centre'],
    ],
    [
      'rear-reaction-arm',
      'roller',
      ['rear-hub-brake-run', 'brake-hold'],
      ['belt-tension', 'hub-gear-marks'],
    ],
    [
      'rear-axle-nuts',
      'roller',
      ['belt-tension', 'belt-line', 'rear-hub-brake-run', 'hub-gear-marks'],
      ['front-brake-centre'],
    ],
    [
      'fit-battery',
      'roller',
      ['motor-first-start', 'motor-stops'],
      ['hub-gear-marks', 'belt-tension'],
    ],
    ['speed-magnet', 'roller', ['motor-stops'], ['belt-tension']],
    [
      'rear-axle-nuts',
      'coaster',
      ['stabiliser-height', 'coaster-arm', 'chain-slack', 'coaster-hold'],
      ['one-piece-bearing'],
    ],
    ['one-piece-bearing', 'coaster', ['bottom-bracket-play'], ['chain-slack', 'left-pedal']],
    [
      'sliding-dropouts',
      'cargo',
      ['chain-slack', 'rear-hub-brake-run'],
      ['right-crank', 'motor-first-start'],
    ],
    [
      'motor-hub-washers',
      'cargo',
      ['rear-axle-nuts', 'motor-first-start'],
      ['right-crank', 'long-tail-deck'],
    ],
    [
      'unfold-frame',
      'folding',
      ['frame-hinge', 'fold-once'],
      ['rear-brake-centre', 'saddle-rails'],
    ],
    ['right-pedal', 'folding', ['folding-pedals', 'fold-once'], ['left-crank']],
    ['timing-eccentric', 'tandem', ['timing-chain-slack'], ['indexing', 'captain-left-pedal']],
    [
      'fit-stoker-post',
      'tandem',
      ['stoker-seat-clamp', 'stoker-post-insertion'],
      ['seat-post-clamp', 'saddle-rails'],
    ],
    ['chain-tugs', 'stunt', ['rear-axle-nuts', 'chain-slack', 'rear-brake-centre'], ['left-crank']],
    ['rear-pegs', 'stunt', ['rear-axle-nuts', 'chain-slack'], ['front-axle-nuts']],
  ])('[P11] undoing %s (%s bike)', (loosened, kind, stale, untouched) => {
    const inPlan = idsOf(kind);
    for (const id of [loosened, ...stale, ...untouched]) expect(inPlan).toContain(id);
    const found = staleAfter(rearHalfPlan(kind), [loosened]);
    expect(found).toEqual(expect.arrayContaining(stale));
    expect(found.filter((id) => untouched.includes(id))).toEqual([]);
  });
});
