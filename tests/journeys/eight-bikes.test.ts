/** Eight bikes of different kinds from their boxes to their riders, each by its own plan: built, walked, checked by somebody else, handed over. */

import { beforeAll, describe, expect, test } from 'vitest';
import type { Bike } from '../../src/engine/bike';
import { verifyLog } from '../../src/engine/integrity';
import { pointsOf, statusOf, stepById, stepsOf, topicsToTell } from '../../src/engine/job';
import { workThrough } from '../../src/state';
import { bikeFrom, mountainBike, townBike } from '../support/bikes';
import { seedCatalogue } from '../support/seed-catalogue';
import { must } from '../support/test-app';
import { openWorkshop, type Workshop } from './workshop';

const pressure = { tyrePressure: '35-65 psi' };
const disc = { ...pressure, brake: 'hydraulic-disc', axle: 'thru-axle', hose: 'fitted' };
const small = { tyre: '47-305', tyrePressure: 'max 40 psi' };

/** Steps that such a bike must have, and steps that it must not have. Common practice, no source. */
const journeys: readonly (readonly [string, Bike, readonly string[], readonly string[]])[] = [
  [
    'a road bike with electronic gears',
    bikeFrom(mountainBike, {
      kind: 'road',
      frameNumber: 'RD-1001',
      fork: { kind: 'rigid' },
      front: { ...disc, tyre: '28-622', tyrePressure: '60-90 psi', discMount: 'flat' },
      rear: { ...disc, tyre: '28-622', tyrePressure: '60-90 psi', discMount: 'flat' },
      steering: { bar: 'drop', grip: 'tape' },
      gears: {
        kind: 'electronic-derailleur',
        chainrings: 2,
        speeds: 12,
        shifter: 'in-brake-lever',
      },
      pedals: { style: 'clip-in' },
    }),
    ['steerer-clamp', 'left-pedal'],
    ['quill-wedge', 'coaster-arm', 'chain-slack'],
  ],
  [
    'a full-suspension mountain bike with a dropper post',
    bikeFrom(mountainBike, {
      kind: 'mountain-full-suspension',
      frameNumber: 'FS-1002',
      frame: { shock: 'air' },
      fork: { kind: 'suspension', spring: 'air' },
      front: disc,
      rear: disc,
      seat: { post: 'dropper-cable' },
    }),
    ['steerer-clamp', 'left-pedal'],
    ['quill-wedge', 'rack', 'chain-slack'],
  ],
  [
    'a folding bike',
    bikeFrom(townBike, {
      kind: 'folding',
      frameNumber: 'FD-1003',
      front: small,
      rear: small,
      pedals: { style: 'folding' },
      extras: ['mudguards'],
    }),
    ['front-axle-nuts', 'left-pedal'],
    ['steerer-clamp', 'rack', 'front-disc-rub'],
  ],
  [
    'a child’s bike with a coaster brake',
    bikeFrom(townBike, {
      kind: 'child',
      frameNumber: 'CH-1004',
      front: small,
      rear: { ...small, brake: 'coaster' },
      gears: { kind: 'single-speed', speeds: 1, chainrings: 1 },
      cranks: { fixing: 'one-piece' },
      pedals: { thread: '1/2 in' },
      extras: ['stabilisers', 'chainguard', 'bell'],
    }),
    ['chain-slack', 'left-pedal', 'bell'],
    ['indexing', 'steerer-clamp', 'rear-brake-centre'],
  ],
  [
    'a balance bike',
    bikeFrom(townBike, {
      kind: 'balance',
      frameNumber: 'BL-1005',
      front: { tyre: '50-203', tyrePressure: 'max 30 psi', brake: 'none' },
      rear: { tyre: '50-203', tyrePressure: 'max 30 psi', brake: 'none' },
      gears: { kind: 'single-speed', drive: 'none', speeds: 1, chainrings: 0 },
      extras: [],
    }),
    ['front-axle-nuts'],
    ['left-pedal', 'right-pedal', 'chain-slack', 'indexing'],
  ],
  [
    'an electric trekking bike with a motor at the cranks',
    bikeFrom(townBike, {
      kind: 'trekking',
      frameNumber: 'EL-1006',
      assist: 'mid-motor',
      battery: 'removable',
      front: disc,
      rear: { ...pressure, brake: 'hydraulic-disc' },
      extras: ['mudguards', 'rack', 'stand', 'motor-lights', 'lock'],
    }),
    ['rack', 'stand', 'left-pedal'],
    ['steerer-clamp', 'front-brake-centre'],
  ],
  [
    'a BMX',
    bikeFrom(mountainBike, {
      kind: 'bmx',
      frameNumber: 'BM-1007',
      fork: { kind: 'rigid' },
      front: { axle: 'nutted', brake: 'linear-pull', tyre: '57-406', ...pressure },
      rear: { axle: 'nutted', brake: 'linear-pull', tyre: '57-406', ...pressure },
      gears: { kind: 'single-speed', speeds: 1, chainrings: 1 },
      extras: ['pegs', 'cable-detangler'],
    }),
    ['steerer-clamp', 'chain-slack', 'front-axle-nuts'],
    ['indexing', 'quill-wedge'],
  ],
  [
    'a tandem',
    bikeFrom(mountainBike, {
      kind: 'tandem',
      frameNumber: 'TD-1008',
      fork: { kind: 'rigid' },
      front: { ...disc, tyre: '40-622' },
      rear: { ...disc, tyre: '40-622' },
    }),
    ['steerer-clamp', 'left-pedal', 'indexing'],
    ['quill-wedge', 'coaster-arm'],
  ],
];

let shop: Workshop;
const known = seedCatalogue().steps.map(({ id }) => id);

beforeAll(async () => {
  shop = await openWorkshop();
}, 30_000);

describe.each(journeys)('given %s in its box', (_, bike, has, lacks) => {
  let job: string;

  test('when its job is opened, then the plan is its own', async () => {
    job = must(await shop.at('builder').receiveBox({ bike }));
    const state = must(await shop.at('builder').startJob(job));
    const ids = stepsOf(state).map(({ id }) => id);
    expect(ids).toEqual(expect.arrayContaining([...has]));
    for (const step of lacks) {
      expect(known).toContain(step);
      expect(stepById(state, step), step).toBeUndefined();
    }
    expect(ids.length).toBeGreaterThan(15);
    expect(pointsOf(state).length).toBeGreaterThan(10);
  });

  test('when it is built, checked and handed over, then its record is whole and its sheet complete', async () => {
    await workThrough(shop.bench('builder'), job);
    must(await shop.sign('builder', job, 'built'));
    must(await shop.sign('checker', job, 'checked'));
    const told = topicsToTell(await shop.state(job));
    const handing = {
      ...{ customer: { name: 'Bram Hollis' }, firstCheck: '2027-01-06', told },
      strokes: '<svg xmlns="http://www.w3.org/2000/svg"><path d="M0 9L9 0"/></svg>',
    };
    const state = must(await shop.handOver('checker', job, handing));
    expect(statusOf(state)).toBe('handed-over');

    const { entries } = await shop.storage.log(job);
    const row = await shop.storage.row(job);
    expect(verifyLog(entries, { job, heads: row?.heads ?? [] })).toMatchObject({ ok: true });
    const sheet = await shop.sheet(job, 'Bram Hollis');
    const classA = stepsOf(state).flatMap(({ joint }) => (joint?.risk === 'A' ? joint.name : []));
    expect(sheet.joints.map(({ name }) => name)).toEqual(expect.arrayContaining(classA));
    expect(sheet).toMatchObject({ isSealed: true, bike: { frameNumber: bike.frameNumber } });
  }, 60_000); // a whole build, perhaps beside other tests
});
