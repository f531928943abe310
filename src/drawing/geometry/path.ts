/** Points written as SVG path data, to a tenth of a millimetre. */

import { onCircle, type Point } from './vector';

export function written(value: number): string {
  return String(Math.round(value * 10) / 10);
}

export function at(p: Point): string {
  return `${written(p.x)} ${written(p.y)}`;
}

/** A broken line through the points; closed when asked. */
export function polyline(points: readonly Point[], closed = false): string {
  return `M${points.map(at).join('L')}${closed ? 'Z' : ''}`;
}

/** An arc of a circle from one bearing to a greater one, degrees clockwise from straight up. */
export function arc(centre: Point, radius: number, from: number, to: number): string {
  const start = onCircle(centre, radius, from);
  return `M${at(start)}${arcOn(centre, radius, from, to)}`;
}

/** The same arc continued from where the pen is; anticlockwise when `to` is the smaller bearing. */
export function arcOn(centre: Point, radius: number, from: number, to: number): string {
  const large = Math.abs(to - from) > 180 ? 1 : 0;
  const r = written(radius);
  return `A${r} ${r} 0 ${large} ${to > from ? 1 : 0} ${at(onCircle(centre, radius, to))}`;
}

/** A full circle, so that rings can be cut out of one another. */
export function circle(centre: Point, radius: number): string {
  return `${arc(centre, radius, 0, 180)}${arcOn(centre, radius, 180, 360)}Z`;
}
