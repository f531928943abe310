/** What is bolted on: mudguards, rack, stand, lamps, guards, bell, basket, cage, reflectors, and where each one sits. */

import type { Bike } from '../../engine/bike';
import type { CockpitGeometry } from './cockpit';
import type { FrameGeometry } from './frame';
import type { SeatGeometry } from './seat';
import type { Skeleton } from './skeleton';
import { type Tube, tube } from './tube';
import {
  between,
  moved,
  onCircle,
  type Point,
  point,
  quarterTurn,
  shifted,
  towards,
} from './vector';
import type { WheelGeometry } from './wheels';

/** A guard round a wheel: bearings clockwise from straight up, ends included. */
export interface Mudguard {
  readonly wheel: WheelGeometry;
  readonly radius: number;
  readonly from: number;
  readonly to: number;
  readonly stays: readonly number[];
}

export interface FittingsGeometry {
  readonly frontMudguard: Mudguard;
  readonly rearMudguard: Mudguard;
  readonly rack: readonly Tube[];
  readonly rackTop: Point;
  readonly stand: Tube;
  readonly standFoot: Point;
  readonly frontLight: Point;
  readonly rearLight: Point;
  readonly rearReflector: Point;
  readonly bell: Point;
  /** Four corners, rear top first, clockwise. */
  readonly basket: readonly Point[];
  readonly cage: { readonly foot: Point; readonly along: Point; readonly out: Point };
  readonly lock: Point;
  readonly battery: Tube;
}

/** Between tyre and guard, mm: at least 6 is asked of tyre and frame. Source: ISO 4210-2 clearance. */
const guardGap = 14;

export function fittingsOf(
  bike: Bike,
  bones: Skeleton,
  parts: {
    readonly frame: FrameGeometry;
    readonly cockpit: CockpitGeometry;
    readonly seat: SeatGeometry;
  },
): FittingsGeometry {
  const { rear, front, crown, steererForward } = bones;
  const { frame, cockpit, seat } = parts;
  const has = (extra: Bike['extras'][number]) => bike.extras.includes(extra);
  const guard = (
    wheel: WheelGeometry,
    from: number,
    to: number,
    stays: readonly number[],
  ): Mudguard => ({
    wheel,
    radius: wheel.radius + guardGap,
    from,
    to,
    stays,
  });
  const rackHeight = rear.radius + (rear.radius < 280 ? 44 : 56);
  const rackTop = point(rear.centre.x - 20, rear.centre.y - rackHeight);
  const onRear = has('rack')
    ? point(rackTop.x - 196, rackTop.y + 8)
    : has('mudguards')
      ? onCircle(rear.centre, rear.radius + guardGap + 10, -46)
      : shifted(moved(seat.head, bones.seatUp, -52), -14, 0);
  const lampOnFork = shifted(moved(crown, steererForward, 40), 18, -6);
  return {
    frontMudguard: guard(front, -132, 26, [-118, -62]),
    rearMudguard: guard(rear, -106, 78, [-92, -36]),
    rack: rackOf(rackTop, rear, frame.seatStayTop, bike.kind === 'cargo' ? 380 : 320),
    rackTop,
    ...standOf(frame, bones),
    frontLight:
      has('battery-lights') && !has('dynamo-lights') && !has('basket')
        ? shifted(cockpit.clamp, 34, -14)
        : lampOnFork,
    rearLight: onRear,
    rearReflector: has('dynamo-lights') || has('battery-lights') ? shifted(onRear, 0, 36) : onRear,
    bell: shifted(cockpit.clamp, cockpit.bar[0] ? 6 : 0, -26),
    basket: basketOf(cockpit.clamp, front),
    cage: cageOf(frame.downTube),
    lock: onCircle(rear.centre, rear.radius * 0.88, 52),
    battery: batteryOf(frame.downTube, bike, rackTop),
  };
}

function rackOf(
  top: Point,
  rear: WheelGeometry,
  seatStayTop: Point,
  length: number,
): readonly Tube[] {
  const back = shifted(top, -length * 0.58, 0);
  const foot = shifted(rear.centre, -2, -16);
  const frontEnd = shifted(top, length * 0.42, 0);
  const stayEnd = between(seatStayTop, rear.centre, 0.12);
  return [
    tube('rack', [foot, shifted(top, -length * 0.3, 0)], 11),
    tube('rack', [foot, shifted(top, length * 0.06, 0)], 11),
    tube('rack', [frontEnd, stayEnd], 10),
    tube('rack', [shifted(back, 0, 0), frontEnd], 13),
    tube('rack', [back, shifted(back, -14, 26)], 11),
  ];
}

/** From behind the bottom bracket down to the ground, leaning back a little. */
function standOf(frame: FrameGeometry, bones: Skeleton) {
  const chainstay = frame.stays[0];
  const axle = chainstay?.line[0] ?? bones.rear.centre;
  const bracket = chainstay?.line.at(-1) ?? bones.bottomBracket;
  const top = between(bracket, axle, 0.24);
  const standFoot = point(top.x - 62, -7);
  return { stand: tube('stand', [shifted(top, 0, 8), standFoot], 17, 14), standFoot };
}

function basketOf(clamp: Point, front: WheelGeometry): readonly Point[] {
  const share = Math.min(1, 0.35 + front.radius / 540);
  const back = clamp.x + 58 * share;
  const top = clamp.y - 40 * share;
  const bottom = Math.min(top + 225 * share, front.centre.y - front.radius - 46 * share);
  return [
    point(back, top),
    point(back + 300 * share, top),
    point(back + 255 * share, bottom),
    point(back + 14 * share, bottom),
  ];
}

function cageOf(downTube: Tube) {
  const low = downTube.line.at(-1) ?? point(0, 0);
  const high = downTube.line[0] ?? point(0, 0);
  const along = towards(low, high);
  const out = quarterTurn(quarterTurn(quarterTurn(along)));
  return { foot: moved(moved(low, along, 165), out, downTube.width / 2), along, out };
}

function batteryOf(downTube: Tube, bike: Bike, rackTop: Point): Tube {
  const low = downTube.line.at(-1) ?? point(0, 0);
  const high = downTube.line[0] ?? point(0, 0);
  if (bike.assist === 'hub-motor' && bike.extras.includes('rack'))
    return tube('battery', [shifted(rackTop, -150, 26), shifted(rackTop, 130, 26)], 44);
  return tube('battery', [between(low, high, 0.2), between(low, high, 0.84)], downTube.width + 34);
}
