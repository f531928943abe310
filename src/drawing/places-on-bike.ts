/** Where each named place lies on a drawn bike, and which parts stand for a zone. */

import type { Zone } from '../engine/base';
import type { Place } from '../engine/bike';
import type { BikeGeometry } from './bike-geometry';
import { brakePlace } from './geometry/brake-places';
import { upperRun } from './geometry/drive';
import { between, onCircle, type Point, shifted } from './geometry/vector';
import type { PartName } from './part-names';

/** A circle round a place, mm. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

export interface LitZone {
  readonly parts: readonly PartName[];
  /** None for the whole bike: there nothing stands out. */
  readonly circle: Spot | undefined;
}

/** The circle round a place; a place this bike lacks is where it would be. */
export function placeOnBike(geometry: BikeGeometry, place: Place): Spot {
  const [centre, r] = spots(geometry)[place];
  return { x: centre.x, y: centre.y, r };
}

function spots(g: BikeGeometry): Readonly<Record<Place, readonly [Point, number]>> {
  const { front, rear, cockpit, seat, frame, fittings, drive, bottomBracket: bracket } = g;
  const crank = drive?.crankCentre ?? bracket;
  const grip = middleOf(cockpit.grip.line);
  const lever = middleOf(cockpit.lever.line);
  const ring = drive?.chainringUsed ?? 70;
  return {
    'front-tyre': [onCircle(front.centre, front.radius - front.tyreWidth / 2, 68), 90],
    'front-rim': [onCircle(front.centre, front.rimInner + 6, 112), 70],
    'front-hub': [front.centre, 70],
    'front-brake': [brakePlace(g, 'front').pad, front.rotor ? 84 : 80],
    'front-mudguard': [onCircle(front.centre, front.radius + 18, -52), 80],
    'front-light': [fittings.frontLight, 74],
    fork: [g.fork.middle, 120],
    headset: [between(g.headBottom, g.headTop, 0.5), g.usual.headTube / 2 + 56],
    stem: [between(cockpit.clamp, cockpit.cap, 0.5), 76],
    bar: [cockpit.clamp, 105],
    'left-lever': [shifted(lever, 13, -7), 76],
    'right-lever': [lever, 76],
    grips: [grip, 86],
    bell: [fittings.bell, 56],
    'top-tube': [middleOf(frame.topTube.line), 100],
    'down-tube': [middleOf(frame.downTube.line), 100],
    'bottle-cage': [shifted(middleOf(frame.downTube.line), -40, 20), 110],
    'bottom-bracket': [crank, 70],
    cranks: [between(crank, drive?.crankRight ?? crank, 0.4), 110],
    'left-pedal': [drive?.crankLeft ?? shifted(bracket, -40, 0), 78],
    'right-pedal': [drive?.crankRight ?? shifted(bracket, 40, 0), 78],
    chainrings: [crank, ring + 34],
    'front-derailleur': [shifted(crank, -6, -ring - 20), 78],
    chain: [drive ? upperRun(drive, rear.centre, 0.5) : between(rear.centre, bracket, 0.5), 84],
    chainguard: [drive ? upperRun(drive, rear.centre, 0.72) : bracket, 105],
    stand: [between(fittings.standFoot, fittings.stand.line[0] ?? fittings.standFoot, 0.4), 100],
    'seat-tube': [between(bracket, g.seatTubeTop, 0.55), 100],
    'seat-clamp': [g.seatTubeTop, 58],
    'seat-post': [between(g.seatTubeTop, seat.head, 0.5), 76],
    saddle: [shifted(seat.head, 14, -20), 152 * seat.scale],
    rack: [shifted(fittings.rackTop, -40, 0), 150],
    'rear-light': [fittings.rearLight, 62],
    reflectors: [fittings.rearReflector, 56],
    'rear-mudguard': [onCircle(rear.centre, rear.radius + 18, -20), 80],
    'rear-brake': [brakePlace(g, 'rear').pad, rear.rotor ? 84 : 80],
    'rear-derailleur': [
      drive?.derailleur
        ? between(drive.derailleur.mount, drive.derailleur.tension, 0.55)
        : shifted(rear.centre, 6, 84),
      95,
    ],
    'rear-hub': [rear.centre, 74],
    'rear-rim': [onCircle(rear.centre, rear.rimInner + 6, -112), 70],
    'rear-tyre': [onCircle(rear.centre, rear.radius - rear.tyreWidth / 2, -68), 90],
    'whole-bike': [
      between(between(rear.centre, front.centre, 0.5), seat.head, 0.4),
      g.wheelbase / 2,
    ],
  };
}

function middleOf(line: readonly Point[]): Point {
  const first = line[0] ?? { x: 0, y: 0 };
  const last = line.at(-1) ?? first;
  const [, bend] = line;
  return line.length === 3 && bend
    ? between(between(first, last, 0.5), bend, 0.5)
    : between(first, last, 0.5);
}

const partsByZone: Readonly<Record<Zone, readonly PartName[]>> = {
  'whole-bike': [],
  frame: ['top-tube', 'down-tube', 'seat-tube', 'stays', 'head-tube', 'bottle-cage', 'stand'],
  'fork-and-front-brake': ['fork', 'headset', 'front-brake', 'front-mudguard'],
  cockpit: ['stem', 'bar', 'left-lever', 'right-lever', 'grips', 'bell', 'cables'],
  'front-wheel': ['front-tyre', 'front-rim', 'front-hub'],
  'rear-wheel': ['rear-tyre', 'rear-rim', 'rear-hub', 'rear-brake', 'rear-mudguard'],
  drivetrain: [
    'bottom-bracket',
    'cranks',
    'left-pedal',
    'right-pedal',
    'chainrings',
    'front-derailleur',
    'chain',
    'chainguard',
    'rear-derailleur',
    'sprockets',
  ],
  seat: ['seat-clamp', 'seat-post', 'saddle'],
};

/** The parts that stand for a zone and the circle round them. */
export function zoneOnBike(geometry: BikeGeometry, zone: Zone): LitZone {
  return { parts: partsByZone[zone], circle: circleOf(geometry, zone) };
}

function circleOf(g: BikeGeometry, zone: Zone): Spot | undefined {
  const { front, rear, cockpit, seat, drive, seatTubeTop } = g;
  const round = (centre: Point, r: number): Spot => ({ x: centre.x, y: centre.y, r });
  switch (zone) {
    case 'whole-bike':
      return undefined;
    case 'front-wheel':
      return round(front.centre, front.radius + 34);
    case 'rear-wheel':
      return round(rear.centre, rear.radius + 34);
    case 'fork-and-front-brake':
      return round(
        between(front.centre, g.headTop, 0.55),
        spread(front.centre, g.headTop) / 2 + 60,
      );
    case 'cockpit': {
      const grip = cockpit.grip.line.at(-1) ?? cockpit.clamp;
      const centre = between(cockpit.clamp, grip, 0.42);
      return round(shifted(centre, 14, 8), Math.max(135, spread(cockpit.clamp, grip) / 2 + 82));
    }
    case 'frame': {
      const corners = [g.bottomBracket, seatTubeTop, g.headTop];
      const sum = corners.reduce((a, b) => shifted(a, b.x, b.y));
      const centre = { x: sum.x / 3, y: sum.y / 3 };
      return round(centre, Math.max(...corners.map((corner) => spread(centre, corner))) + 34);
    }
    case 'drivetrain': {
      const crank = drive?.crankCentre ?? g.bottomBracket;
      const centre = between(rear.centre, crank, 0.55);
      return round(centre, Math.min(spread(rear.centre, crank) / 2 + 160, 36 - centre.y));
    }
    case 'seat':
      return round(shifted(between(seat.head, seatTubeTop, 0.4), 8, -10), 185 * seat.scale + 30);
  }
}

function spread(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
