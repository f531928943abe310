/** The points that everything else hangs on: axles, bottom bracket, head tube, seat tube; frame and fork agree on them. */

import type { Bike } from '../../engine/bike';
import type { Proportions } from './proportions';
import { moved, type Point, point, quarterTurn, upwards } from './vector';
import { type WheelGeometry, wheelOf } from './wheels';

export interface Skeleton {
  readonly usual: Proportions;
  readonly rear: WheelGeometry;
  readonly front: WheelGeometry;
  readonly bottomBracket: Point;
  /** Where the rear rider of a tandem pedals. */
  readonly rearBottomBracket: Point | undefined;
  readonly wheelbase: number;
  /** Up along the steerer, and square to it towards the front. */
  readonly steererUp: Point;
  readonly steererForward: Point;
  readonly seatUp: Point;
  readonly crown: Point;
  readonly headBottom: Point;
  readonly headTop: Point;
  readonly seatTubeTop: Point;
}

/** The least height of an adult's bottom bracket over the ground, mm (common practice, no source). */
const leastHeight = 265;
const tandemBay = 700;
const lowerCup = 11;

export function skeletonOf(bike: Bike, usual: Proportions): Skeleton {
  const rear = wheelOf(bike, 'rear', usual, 0);
  const growing = bike.kind === 'child' || bike.kind === 'balance';
  const height = growing
    ? rear.radius - usual.drop
    : Math.max(rear.radius - usual.drop, leastHeight);
  const rearOfBracket = bracketAhead(bike, usual, rear, rear.radius - height);
  const tandem = bike.kind === 'tandem';
  const rearBottomBracket = tandem ? point(rearOfBracket, -height) : undefined;
  const bottomBracket = point(rearOfBracket + (tandem ? tandemBay : 0), -height);

  const steererUp = upwards(180 - usual.headAngle);
  const steererForward = quarterTurn(steererUp);
  const seatUp = upwards(180 - usual.seatAngle);
  const probe = wheelOf(bike, 'front', usual, 0);
  const toHeadTop = headTopFrom(probe.centre, bike, usual, probe.radius, steererUp, steererForward);
  const wheelbase = bottomBracket.x + usual.reach - toHeadTop.headTop.x;
  const slid = (p: Point) => point(p.x + wheelbase, p.y);
  return {
    usual,
    rear,
    front: wheelOf(bike, 'front', usual, wheelbase),
    bottomBracket,
    rearBottomBracket,
    wheelbase,
    steererUp,
    steererForward,
    seatUp,
    crown: slid(toHeadTop.crown),
    headBottom: slid(toHeadTop.headBottom),
    headTop: slid(toHeadTop.headTop),
    seatTubeTop: moved(bottomBracket, seatUp, usual.seatTube),
  };
}

/** How far the bottom bracket lies ahead of the rear axle: the usual chainstay, or longer so that a fat tyre clears the seat tube. */
function bracketAhead(bike: Bike, usual: Proportions, rear: WheelGeometry, drop: number): number {
  const gap = bike.extras.includes('mudguards') ? 32 : 8;
  const seatAngle = (usual.seatAngle * Math.PI) / 180;
  const needed = rear.radius + usual.tubes.seat / 2 + gap;
  const clearing = (needed + drop * Math.cos(seatAngle)) / Math.sin(seatAngle);
  return Math.max(Math.sqrt(usual.chainstay ** 2 - drop ** 2), clearing);
}

function headTopFrom(
  axle: Point,
  bike: Bike,
  usual: Proportions,
  radius: number,
  up: Point,
  forward: Point,
) {
  const long =
    radius + (bike.fork.kind === 'suspension' ? 28 + usual.travel : usual.crownClearance);
  const alongSteerer = Math.sqrt(long ** 2 - usual.rake ** 2);
  const crown = moved(moved(axle, forward, -usual.rake), up, alongSteerer);
  const headBottom = moved(crown, up, lowerCup);
  return { crown, headBottom, headTop: moved(headBottom, up, usual.headTube) };
}
