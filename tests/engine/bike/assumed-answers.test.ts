import { describe, expect, test } from 'vitest';
import { factsOf } from '../../../src/engine/bike';
import { bikeFrom, mountainBike, townBike } from '../../support/bikes';

type Changes = Record<string, unknown>;

// Source of all rows: common practice, no source.
describe('what is left open', () => {
  test.each<[situation: string, changes: Changes, question: string, answer: unknown]>([
    ['a disc caliper on a mountain bike', {}, 'front.discMount', 'post'],
    ['a disc caliper on a road bike', { kind: 'road' }, 'front.discMount', 'flat'],
    ['a hydraulic hose', {}, 'rear.hose', 'fitted'],
    ['a thru-axle', { front: { axle: 'thru-axle' } }, 'front.axleHead', 'hex'],
    ['a mountain fork', {}, 'fork.spring', 'air'],
    ['a trekking fork', { kind: 'trekking' }, 'fork.spring', 'coil'],
    ['a shock', { kind: 'mountain-full-suspension' }, 'frame.shock', 'air'],
    ['a hub motor', { assist: 'hub-motor' }, 'rear.hub', 'motor'],
    [
      'a hub motor whose wheel is known',
      { assist: 'hub-motor', front: { hub: 'motor' } },
      'rear.hub',
      'plain',
    ],
    ['dynamo lights', { extras: ['dynamo-lights'] }, 'front.hub', 'dynamo'],
    ['a battery', { assist: 'mid-motor' }, 'battery', 'removable'],
    ['a cargo bike', { kind: 'cargo' }, 'frame.load', 'front-load'],
    ['a threadless stem', {}, 'steering.headset', 'cups'],
    ['a quill stem', { steering: { stem: 'quill' } }, 'steering.headset', 'threaded'],
    ['an aluminium steerer', {}, 'steering.plug', 'star-nut'],
    [
      'a carbon steerer takes no star nut',
      { fork: { steerer: 'carbon' } },
      'steering.plug',
      'expander',
    ],
    ['a drop bar', { steering: { bar: 'drop' } }, 'steering.grip', 'tape'],
    [
      'a drop bar holds its shifters',
      { steering: { bar: 'drop' } },
      'gears.shifter',
      'in-brake-lever',
    ],
    ['a hub gear', { gears: { kind: 'hub' } }, 'gears.shifter', 'twist'],
    ['a derailleur', {}, 'gears.hanger', 'bolted'],
    [
      'a single speed',
      { gears: { kind: 'single-speed', speeds: 1 } },
      'gears.tension',
      'slotted-dropouts',
    ],
    [
      'a single speed on a thru-axle',
      { gears: { kind: 'single-speed', speeds: 1 }, rear: { axle: 'thru-axle' } },
      'gears.tension',
      'sliding-dropouts',
    ],
    [
      'rings of two sizes before a hub gear',
      { gears: { kind: 'hub', chainrings: 2 } },
      'gears.tension',
      'sprung-tensioner',
    ],
    ['a bottom bracket', {}, 'cranks.bottomBracket', 'english'],
    ['one-piece cranks', { cranks: { fixing: 'one-piece' } }, 'cranks.bottomBracket', 'one-piece'],
    ['a seat post', {}, 'seat.postShape', 'round'],
  ])('[K6] %s: %j', (_, changes, question, answer) => {
    expect(factsOf(bikeFrom(mountainBike, changes))[question]).toBe(answer);
  });

  test('[K6] what the description says goes before what is commonest', () => {
    const facts = factsOf(
      bikeFrom(mountainBike, {
        front: { discMount: 'flat', rotor: 'centre-lock', hose: 'to-fit' },
        fork: { spring: 'coil' },
        seat: { postShape: 'not-round' },
        gears: { hanger: 'part-of-frame', join: 'pin', shifter: 'twist' },
      }),
    );
    expect(facts).toMatchObject({
      'front.discMount': 'flat',
      'front.rotor': 'centre-lock',
      'front.hose': 'to-fit',
      'fork.spring': 'coil',
      'seat.postShape': 'not-round',
      'gears.hanger': 'part-of-frame',
      'gears.join': 'pin',
      'gears.shifter': 'twist',
    });
  });
});

describe('what the bike lacks', () => {
  test.each<[situation: string, changes: Changes, questions: string[]]>([
    [
      'no disc brake',
      { front: { brake: 'drum', rotor: 'six-bolt' } },
      ['front.rotor', 'front.discMount', 'front.hose'],
    ],
    ['a cable disc has no hose', { rear: { brake: 'cable-disc', hose: 'to-fit' } }, ['rear.hose']],
    ['no thru-axle', { front: { axleHead: 'lever' } }, ['front.axleHead']],
    ['a rigid fork', { fork: { kind: 'rigid', spring: 'air' } }, ['fork.spring']],
    [
      'a quill stem has no plug',
      { steering: { stem: 'quill', plug: 'star-nut' } },
      ['steering.plug'],
    ],
    [
      'a bar and stem in one have no faceplate',
      { steering: { stem: 'integrated' } },
      ['steering.faceplateBolts'],
    ],
    ['no motor', { battery: 'built-in' }, ['battery']],
    ['no pedals in the box', { pedals: { supplied: false } }, ['pedals.thread', 'pedals.style']],
    [
      'a motor at the cranks is its own bottom bracket',
      { assist: 'mid-motor' },
      ['cranks.bottomBracket'],
    ],
    [
      'one sprocket needs no shifter',
      { gears: { kind: 'single-speed', speeds: 1 } },
      ['gears.shifter', 'gears.hanger'],
    ],
    [
      'a belt is not joined',
      { gears: { kind: 'hub', drive: 'belt', join: 'pin' } },
      ['gears.join'],
    ],
  ])('[K7] %s', (_, changes, lacking) => {
    const facts = factsOf(bikeFrom(mountainBike, changes));
    for (const question of lacking) expect(Object.hasOwn(facts, question), question).toBe(false);
  });

  test('[K7] a balance bike has no drive, so nothing that belongs to one', () => {
    const facts = factsOf(bikeFrom(townBike, { kind: 'balance', extras: [] }));
    const asked = Object.keys(facts).filter((question) =>
      /^(gears|cranks|pedals)\./.test(question),
    );
    expect(asked).toEqual(['gears.drive']);
    expect(facts['gears.drive']).toBe('none');
  });
});
