/** A bike in numbers, mm and degrees: what its description fixes (wheels) and what is usual for its kind (the rest). */

import type { Bike, Extra } from '../engine/bike';
import { type CockpitGeometry, cockpitOf } from './geometry/cockpit';
import { type DriveGeometry, driveOf } from './geometry/drive';
import { type FittingsGeometry, fittingsOf } from './geometry/fittings';
import { type ForkGeometry, forkOf } from './geometry/fork';
import { type FrameGeometry, frameOf } from './geometry/frame';
import { proportionsOf, scaledToWheel } from './geometry/proportions';
import { type SeatGeometry, seatOf } from './geometry/seat';
import { type Skeleton, skeletonOf } from './geometry/skeleton';
import { wheelOf } from './geometry/wheels';

export interface BikeGeometry extends Skeleton {
  readonly kind: Bike['kind'];
  readonly headAngle: number;
  readonly seatAngle: number;
  readonly bottomBracketDrop: number;
  /** From the bottom bracket to the top of the head tube, level and upright. */
  readonly reach: number;
  readonly stack: number;
  readonly frame: FrameGeometry;
  readonly fork: ForkGeometry;
  readonly cockpit: CockpitGeometry;
  readonly seat: SeatGeometry;
  /** The second rider's place on a tandem. */
  readonly rearSeat: SeatGeometry | undefined;
  readonly drive: DriveGeometry | undefined;
  readonly fittings: FittingsGeometry;
  readonly extras: ReadonlySet<Extra>;
  readonly frontBrake: Bike['front']['brake'];
  readonly rearBrake: Bike['rear']['brake'];
  readonly bar: Bike['steering']['bar'];
  readonly assist: Bike['assist'];
  readonly gears: Bike['gears']['kind'];
  /** Everything drawn lies inside. */
  readonly box: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  };
}

/** Room round the bike for the circle round a lit place. */
const margin = { side: 70, above: 130, below: 46 };

/** The geometry of a bike as described; lengths nobody described are typical for the kind, not this frame's measure. */
export function geometryOf(bike: Bike): BikeGeometry {
  const typical = proportionsOf(bike.kind);
  const usual = scaledToWheel(typical, bike.kind, wheelOf(bike, 'rear', typical, 0).radius);
  const bones = skeletonOf(bike, usual);
  const frame = frameOf(bike, bones);
  const cockpit = cockpitOf(bike, bones);
  const seatMeasures = { ...usual, tube: usual.tubes.seat };
  const { bottomBracket, rearBottomBracket, seatUp, rear, headTop } = bones;
  const seat = seatOf(bike, bottomBracket, seatUp, seatMeasures);
  return {
    ...bones,
    kind: bike.kind,
    headAngle: usual.headAngle,
    seatAngle: usual.seatAngle,
    bottomBracketDrop: rear.radius + bottomBracket.y,
    reach: headTop.x - bottomBracket.x,
    stack: bottomBracket.y - headTop.y,
    frame,
    fork: forkOf(bike, bones),
    cockpit,
    seat,
    rearSeat: rearBottomBracket && seatOf(bike, rearBottomBracket, seatUp, seatMeasures),
    drive: driveOf(bike, bones),
    fittings: fittingsOf(bike, bones, { frame, cockpit, seat }),
    extras: new Set(bike.extras),
    frontBrake: bike.front.brake,
    rearBrake: bike.rear.brake,
    bar: bike.steering.bar,
    assist: bike.assist,
    gears: bike.gears.kind,
    box: boxOf(bones, Math.min(cockpit.top, seat.top)),
  };
}

function boxOf({ rear, front }: Skeleton, top: number): BikeGeometry['box'] {
  const left = rear.centre.x - rear.radius - margin.side;
  const right = front.centre.x + front.radius + margin.side;
  const y = top - margin.above;
  return { x: left, y, width: right - left, height: margin.below - y };
}
