/** Where each kind of brake takes hold: on the rotor, on the rim, or at the hub. */

import type { BikeGeometry } from '../bike-geometry';
import { between, distance, moved, onCircle, type Point, towards } from './vector';

export interface BrakePlace {
  readonly end: 'front' | 'rear';
  /** Where pads meet rim or rotor, or the hub of a brake inside it. */
  readonly pad: Point;
  /** Up along the fork leg or seatstay. */
  readonly along: Point;
  /** Away from the wheel's own side of that leg or stay: to the front at the front, to the rear at the rear. */
  readonly out: Point;
  /** The middle of the bridge or crown over the tyre. */
  readonly bridge: Point;
}

export function brakePlace(geometry: BikeGeometry, end: 'front' | 'rear'): BrakePlace {
  const wheel = geometry[end];
  const high = end === 'front' ? geometry.crown : geometry.frame.seatStayTop;
  const along = towards(wheel.centre, high);
  const out = end === 'front' ? { x: -along.y, y: along.x } : { x: along.y, y: -along.x };
  const onRim = moved(wheel.centre, along, (wheel.rimOuter + wheel.rimInner) / 2);
  const over = Math.min(wheel.radius + 26, distance(wheel.centre, high) - 4);
  const bridge = moved(wheel.centre, along, over);
  return { end, pad: padOf(geometry, end, onRim), along, out, bridge };
}

function padOf(geometry: BikeGeometry, end: 'front' | 'rear', onRim: Point): Point {
  const wheel = geometry[end];
  const brake = end === 'front' ? geometry.frontBrake : geometry.rearBrake;
  if (wheel.rotor !== undefined) return caliperAt(geometry, end, wheel.rotor - 10);
  if (['coaster', 'roller', 'drum'].includes(brake)) return wheel.centre;
  return onRim;
}

/** Behind the left fork leg; between the left stays. */
function caliperAt(geometry: BikeGeometry, end: 'front' | 'rear', radius: number): Point {
  const { centre } = geometry[end];
  if (end === 'front') {
    const up = towards(centre, geometry.crown);
    const behind = { x: up.y, y: -up.x };
    return moved(centre, between(up, behind, 0.36), radius * 1.22);
  }
  return onCircle(centre, radius * 1.3, 70);
}
