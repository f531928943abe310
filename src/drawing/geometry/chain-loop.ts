/** A chain or belt laid tightly round circles, as one closed path. */

import { at, written } from './path';
import { moved, type Point } from './vector';

/** A circle the loop passes; `turns` 1 clockwise as seen, -1 the other way. */
export interface Wheel {
  readonly centre: Point;
  readonly radius: number;
  readonly turns: 1 | -1;
}

interface Run {
  readonly leave: Point;
  readonly arrive: Point;
}

export function chainLoop(wheels: readonly Wheel[]): string {
  const runs = wheels.map((wheel, index) =>
    run(wheel, wheels[(index + 1) % wheels.length] ?? wheel),
  );
  const first = runs.at(-1);
  if (!first) return '';
  let path = `M${at(first.arrive)}`;
  let arrived = first.arrive;
  for (const [index, wheel] of wheels.entries()) {
    const { leave, arrive } = runs[index] ?? first;
    const r = written(wheel.radius);
    const large = swept(wheel, arrived, leave) > Math.PI ? 1 : 0;
    path += `A${r} ${r} 0 ${large} ${wheel.turns === 1 ? 1 : 0} ${at(leave)}L${at(arrive)}`;
    arrived = arrive;
  }
  return `${path}Z`;
}

/** The straight run between two circles: the tangent that leaves the first and meets the second in the sense each turns. */
export function run(from: Wheel, to: Wheel): Run {
  const first = from.radius * from.turns;
  const second = to.radius * to.turns;
  const d = { x: to.centre.x - from.centre.x, y: to.centre.y - from.centre.y };
  const square = d.x ** 2 + d.y ** 2;
  const aside = first - second;
  const ahead = Math.sqrt(Math.max(0, square - aside ** 2));
  const along = {
    x: (ahead * d.x - aside * d.y) / square,
    y: (ahead * d.y + aside * d.x) / square,
  };
  const outward = { x: along.y, y: -along.x };
  return { leave: moved(from.centre, outward, first), arrive: moved(to.centre, outward, second) };
}

/** The angle a loop lies on a circle between two points of it, radians. */
function swept({ centre, turns }: Wheel, from: Point, to: Point): number {
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  const end = Math.atan2(to.y - centre.y, to.x - centre.x);
  const turn = (end - start) * turns;
  return ((turn % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
}
