/** Cranks, chainrings, sprockets, derailleurs and the chain or belt between them. */

import type { Bike } from '../../engine/bike';
import { chainLoop, type Wheel } from './chain-loop';
import type { Skeleton } from './skeleton';
import { between, moved, type Point, shifted, upwards } from './vector';

export interface DriveGeometry {
  readonly crankCentre: Point;
  readonly crankRight: Point;
  readonly crankLeft: Point;
  /** Pitch radii, the largest first. */
  readonly chainrings: readonly number[];
  readonly sprockets: readonly number[];
  readonly chainringUsed: number;
  readonly sprocketUsed: number;
  readonly loop: string;
  /** The same loop as circles, for what follows it. */
  readonly belt: boolean;
  readonly derailleur:
    | {
        readonly mount: Point;
        readonly guide: Point;
        readonly tension: Point;
        readonly pulley: number;
      }
    | undefined;
  readonly frontDerailleur: Point | undefined;
  readonly motor: boolean;
  /** The front rider's cranks of a tandem, and the chain on the far side that keeps both in step. */
  readonly inStep:
    | { readonly centre: Point; readonly right: Point; readonly left: Point; readonly loop: string }
    | undefined;
}

/** Pitch radius of a sprocket for half-inch chain: p / (2 sin(180°/teeth)). Source: ISO 9633 chain geometry, from memory. */
export function pitchRadius(teeth: number): number {
  return 12.7 / (2 * Math.sin(Math.PI / teeth));
}

const crankBelowLevel = 28;

export function driveOf(bike: Bike, bones: Skeleton): DriveGeometry | undefined {
  if (bike.gears.drive === 'none') return undefined;
  const crankCentre = bones.rearBottomBracket ?? bones.bottomBracket;
  const axle = bones.rear.centre;
  const hasDerailleur = bike.gears.kind.endsWith('derailleur');
  const chainrings = teethOfChainrings(bike).map(pitchRadius);
  const sprockets = teethOfSprockets(bike, hasDerailleur).map(pitchRadius);
  const chainringUsed = chainrings[0] ?? pitchRadius(38);
  const sprocketUsed = sprockets[Math.floor(sprockets.length * 0.6)] ?? pitchRadius(18);
  const rear: Wheel = { centre: axle, radius: sprocketUsed, turns: 1 };
  const front: Wheel = { centre: crankCentre, radius: chainringUsed, turns: 1 };
  const derailleur = hasDerailleur ? derailleurOf(bike, axle, sprockets[0] ?? 60) : undefined;
  const idlers: Wheel[] = derailleur
    ? [
        { centre: derailleur.tension, radius: derailleur.pulley, turns: 1 },
        { centre: derailleur.guide, radius: derailleur.pulley, turns: -1 },
      ]
    : [];
  const arm = upwards(-crankBelowLevel);
  return {
    crankCentre,
    crankRight: moved(crankCentre, arm, bones.usual.crank),
    crankLeft: moved(crankCentre, arm, -bones.usual.crank),
    chainrings,
    sprockets,
    chainringUsed,
    sprocketUsed,
    loop: chainLoop([rear, front, ...idlers]),
    belt: bike.gears.drive === 'belt',
    derailleur,
    frontDerailleur:
      hasDerailleur && bike.gears.chainrings > 1
        ? shifted(crankCentre, -6, -chainringUsed - 14)
        : undefined,
    motor: bike.assist === 'mid-motor',
    inStep: bones.rearBottomBracket && inStepOf(bones, crankCentre),
  };
}

function inStepOf(bones: Skeleton, rear: Point) {
  const centre = bones.bottomBracket;
  const arm = upwards(-crankBelowLevel);
  const radius = pitchRadius(38);
  const loop = chainLoop([
    { centre: rear, radius, turns: 1 },
    { centre, radius, turns: 1 },
  ]);
  const { crank } = bones.usual;
  return { centre, right: moved(centre, arm, crank), left: moved(centre, arm, -crank), loop };
}

function derailleurOf(bike: Bike, axle: Point, largest: number) {
  const small = bike.kind === 'child' || bike.kind === 'folding';
  const cage = small ? 50 : bike.kind === 'road' ? 58 : 54 + largest * 0.3;
  const mount = shifted(axle, -9, 28);
  const guide = shifted(axle, 12, Math.max(62, largest * 0.42 + 46));
  const tension = moved(guide, upwards(-68), cage);
  return { mount, guide, tension, pulley: 20 };
}

/** Usual tooth counts by kind, the largest ring first (common practice, no source). */
function teethOfChainrings(bike: Bike): readonly number[] {
  const count = bike.gears.chainrings;
  if (bike.kind === 'road') return [50, 34, 30].slice(0, Math.max(1, count));
  if (count >= 3) return [48, 36, 26];
  if (count === 2) return bike.kind.startsWith('mountain') ? [36, 26] : [46, 30];
  if (bike.kind.startsWith('mountain')) return [32];
  const single = { gravel: 40, child: 30, bmx: 25, folding: 50, tandem: 50, balance: 20 };
  return [(single as Readonly<Record<string, number>>)[bike.kind] ?? 38]; // kinds not named take the usual ring
}

function teethOfSprockets(bike: Bike, hasDerailleur: boolean): readonly number[] {
  if (!hasDerailleur) return [bike.kind === 'bmx' ? 9 : bike.kind === 'child' ? 16 : 19];
  const { speeds, chainrings } = bike.gears;
  const wide = chainrings === 1;
  const largest =
    bike.kind === 'road'
      ? 30
      : speeds >= 12
        ? wide
          ? 51
          : 36
        : speeds >= 9
          ? wide
            ? 42
            : 34
          : 28;
  const smallest = speeds >= 12 && wide ? 10 : 12;
  return Array.from({ length: speeds }, (_, index) =>
    Math.round(largest * (smallest / largest) ** (speeds === 1 ? 0 : index / (speeds - 1))),
  );
}

/** A point on the upper run of the chain. */
export function upperRun(drive: DriveGeometry, axle: Point, share: number): Point {
  return between(
    shifted(axle, 0, -drive.sprocketUsed),
    shifted(drive.crankCentre, 0, -drive.chainringUsed),
    share,
  );
}
