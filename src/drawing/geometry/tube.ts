/** A tube as it is seen from the side: a centre line of two to four points and its width at both ends, mm. */

import type { PartName } from '../part-names';
import { polyline } from './path';
import { moved, type Point, point, quarterTurn, towards } from './vector';

export interface Tube {
  readonly part: PartName;
  /** Two points are a straight tube, three or four the control points of a bent one. */
  readonly line: readonly Point[];
  readonly width: number;
  readonly endWidth: number;
}

export function tube(
  part: PartName,
  line: readonly Point[],
  width: number,
  endWidth = width,
): Tube {
  return { part, line, width, endWidth };
}

/** The outline of a tube as path data. */
export function tubeOutline({ line, width, endWidth }: Tube): string {
  const steps = line.length === 2 ? 1 : 14;
  const near: Point[] = [];
  const far: Point[] = [];
  for (let step = 0; step <= steps; step += 1) {
    const share = step / steps;
    const centre = onBend(line, share);
    const along = towards(onBend(line, share - 0.01), onBend(line, share + 0.01));
    const half = (width + (endWidth - width) * share) / 2;
    near.push(moved(centre, quarterTurn(along), half));
    far.unshift(moved(centre, quarterTurn(along), -half));
  }
  return polyline([...near, ...far], true);
}

/** The point at `share` of a bend given by its control points (De Casteljau). */
export function onBend(line: readonly Point[], share: number): Point {
  let points = line;
  while (points.length > 1)
    points = points.slice(1).map((p, index) => {
      const before = points[index] ?? p;
      return point(before.x + (p.x - before.x) * share, before.y + (p.y - before.y) * share);
    });
  return points[0] ?? point(0, 0);
}
