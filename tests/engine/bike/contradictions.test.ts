import { describe, expect, test } from 'vitest';
import { contradictionsIn } from '../../../src/engine/bike';
import { bikeFrom, mountainBike, townBike } from '../../support/bikes';

type Changes = Record<string, unknown>;

// Source of all rows: common practice, no source.
describe('what no bike has together', () => {
  test.each<[situation: string, changes: Changes, pair: [string, string]]>([
    ['a belt over derailleurs', { gears: { drive: 'belt' } }, ['gears.drive', 'gears.kind']],
    [
      'a coaster brake behind a derailleur',
      { rear: { brake: 'coaster', axle: 'nutted' } },
      ['rear.brake', 'gears.kind'],
    ],
    [
      'a coaster brake on a thru-axle',
      { rear: { brake: 'coaster', axle: 'thru-axle' }, gears: { kind: 'single-speed', speeds: 1 } },
      ['rear.brake', 'rear.axle'],
    ],
    [
      'a coaster brake that no chain works',
      { front: { brake: 'coaster' } },
      ['front.brake', 'front.axle'],
    ],
    ['pedals without a drive', { gears: { drive: 'none' } }, ['gears.drive', 'kind']],
    [
      'many speeds on one sprocket',
      { gears: { kind: 'single-speed', speeds: 7 } },
      ['gears.kind', 'gears.speeds'],
    ],
    [
      'a motor in a hub of a bike without one',
      { front: { hub: 'motor' } },
      ['assist', 'front.hub'],
    ],
    [
      'a hub motor with two plain hubs',
      { assist: 'hub-motor', rear: { hub: 'plain' } },
      ['assist', 'rear.hub'],
    ],
    ['lights on a battery that is not there', { extras: ['motor-lights'] }, ['assist', 'extras']],
    [
      'rings of two sizes and nothing that takes up the chain',
      { gears: { kind: 'hub', chainrings: 2, tension: 'tugs' } },
      ['gears.chainrings', 'gears.tension'],
    ],
    [
      'stabilisers without axle nuts to hold them',
      { extras: ['stabilisers'] },
      ['extras', 'rear.axle'],
    ],
    [
      'a quill in a headset without threads',
      { steering: { stem: 'quill', headset: 'cups' } },
      ['steering.stem', 'steering.headset'],
    ],
    [
      'a quill wedged in carbon',
      { steering: { stem: 'quill' }, fork: { steerer: 'carbon' } },
      ['steering.stem', 'fork.steerer'],
    ],
    [
      'a star nut driven into carbon',
      { steering: { plug: 'star-nut' }, fork: { steerer: 'carbon' } },
      ['steering.plug', 'fork.steerer'],
    ],
    [
      'a nut’s thread on a thru-axle',
      { front: { axle: 'thru-axle', axleThread: '3/8 in × 26' } },
      ['front.axle', 'front.axleThread'],
    ],
    [
      'a shaped post that drops',
      { seat: { postShape: 'not-round', post: 'dropper-cable' } },
      ['seat.postShape', 'seat.post'],
    ],
    ['a load bed on a mountain bike', { frame: { load: 'long-tail' } }, ['frame.load', 'kind']],
    [
      'a bracket of threads under one-piece cranks',
      { cranks: { fixing: 'one-piece', bottomBracket: 'english' } },
      ['cranks.fixing', 'cranks.bottomBracket'],
    ],
  ])('[K8] %s', (_, changes, [one, other]) => {
    const found = contradictionsIn(bikeFrom(mountainBike, changes));
    expect(found.map((pair) => [pair.one.question, pair.other.question])).toContainEqual([
      one,
      other,
    ]);
  });

  test.each<[name: string, bike: ReturnType<typeof bikeFrom>]>([
    ['mountain bike', bikeFrom(mountainBike)],
    ['town bike', bikeFrom(townBike)],
    ['belt on a hub gear', bikeFrom(townBike, { gears: { drive: 'belt' } })],
    [
      'motor in the front hub',
      bikeFrom(townBike, { assist: 'hub-motor', front: { hub: 'motor' } }),
    ],
    ['balance bike', bikeFrom(townBike, { kind: 'balance', extras: [] })],
    [
      'coaster on a child’s bike',
      bikeFrom(townBike, {
        kind: 'child',
        rear: { brake: 'coaster' },
        gears: { kind: 'single-speed', speeds: 1 },
      }),
    ],
  ])('[K8] a %s can be', (_, bike) => {
    expect(contradictionsIn(bike)).toEqual([]);
  });
});
