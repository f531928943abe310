/** A chainguard as an outline: over the upper run, round the front of the ring. */

import { run } from './chain-loop';
import type { DriveGeometry } from './drive';
import { arcOn, at } from './path';
import { moved, onCircle, type Point, towards } from './vector';

/** How far the guard stands out from the chain, mm. */
const outside = 17;
const lap = 34;

export function chainguardOutline(drive: DriveGeometry, axle: Point): string {
  const centre = drive.crankCentre;
  const outer = drive.chainringUsed + outside;
  const inner = outer - lap;
  const upper = run(
    { centre: axle, radius: drive.sprocketUsed + outside, turns: 1 },
    { centre, radius: outer, turns: 1 },
  );
  const along = towards(upper.leave, upper.arrive);
  const down = { x: -along.y, y: along.x };
  const top = bearingOf(centre, upper.arrive);
  const end = top + 138;
  const tail = moved(upper.leave, along, -8);
  return [
    `M${at(tail)}L${at(upper.arrive)}`,
    arcOn(centre, outer, top, end),
    `L${at(onCircle(centre, inner, end))}`,
    arcOn(centre, inner, end, top),
    `L${at(moved(moved(tail, down, lap), along, 6))}`,
    `Q${at(moved(moved(tail, down, lap / 2), along, -18))} ${at(tail)}Z`,
  ].join('');
}

function bearingOf(centre: Point, p: Point): number {
  return (Math.atan2(p.x - centre.x, centre.y - p.y) * 180) / Math.PI;
}
