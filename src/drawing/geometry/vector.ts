/** Points and directions of the drawing plane, mm: x grows towards the front of the bike, y downwards, the ground is y = 0. */

export interface Point {
  readonly x: number;
  readonly y: number;
}

export function point(x: number, y: number): Point {
  return { x, y };
}

/** `from`, moved by `distance` along `direction`. */
export function moved(from: Point, direction: Point, distance: number): Point {
  return { x: from.x + direction.x * distance, y: from.y + direction.y * distance };
}

export function shifted(from: Point, x: number, y: number): Point {
  return { x: from.x + x, y: from.y + y };
}

/** The point at `share` of the way, 0 at `from`, 1 at `to`. */
export function between(from: Point, to: Point, share: number): Point {
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}

export function distance(from: Point, to: Point): number {
  return Math.hypot(to.x - from.x, to.y - from.y);
}

/** The direction from one point to another, of length 1. */
export function towards(from: Point, to: Point): Point {
  const length = distance(from, to) || 1;
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

/** A direction of length 1, degrees above the horizontal, looking to the front. */
export function upwards(degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  return { x: Math.cos(angle), y: -Math.sin(angle) };
}

/** The direction, turned a quarter turn clockwise as seen. */
export function quarterTurn(direction: Point): Point {
  return { x: -direction.y, y: direction.x };
}

/** The point on a circle, degrees clockwise as seen from straight up. */
export function onCircle(centre: Point, radius: number, clockDegrees: number): Point {
  return moved(centre, upwards(90 - clockDegrees), radius);
}

/** How far a point lies from the straight line through two others. */
export function distanceToLine(from: Point, a: Point, b: Point): number {
  const along = towards(a, b);
  return Math.abs((from.x - a.x) * along.y - (from.y - a.y) * along.x);
}
