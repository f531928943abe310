/** The fork: rigid and straight, rigid and bent, or telescopic with its stanchions, seen from the side. */

import type { Bike } from '../../engine/bike';
import type { Skeleton } from './skeleton';
import { type Tube, tube } from './tube';
import { between, moved, type Point } from './vector';

export interface ForkGeometry {
  readonly kind: 'bent' | 'straight' | 'telescopic';
  /** Legs from the top down; a telescopic fork has stanchion, then lower leg. */
  readonly legs: readonly Tube[];
  readonly crown: Tube;
  /** The bridge between the lower legs, standing out in front. */
  readonly arch: Tube | undefined;
  readonly middle: Point;
}

const bentForks: readonly Bike['kind'][] = ['town', 'trekking'];

export function forkOf(bike: Bike, bones: Skeleton): ForkGeometry {
  const middle = between(bones.crown, bones.front.centre, 0.5);
  if (bike.fork.kind === 'suspension') return telescopic(bones, middle);
  const { crown, front, steererUp, usual } = bones;
  const bent = bentForks.includes(bike.kind);
  const along = (share: number) =>
    moved(crown, steererUp, -share * (front.radius + usual.crownClearance));
  const wide = front.radius < 220 ? 24 : 30;
  const line = bent ? [crown, along(0.5), along(0.82), front.centre] : [crown, front.centre];
  return {
    kind: bent ? 'bent' : 'straight',
    legs: [tube('fork', line, wide, wide * 0.6)],
    crown: tube('fork', [moved(crown, steererUp, 2), along(0.075)], usual.tubes.head - 2, wide + 4),
    arch: undefined,
    middle,
  };
}

/** Lower legs lie ahead of the steerer and end a little behind the axle's offset. */
function telescopic(bones: Skeleton, middle: Point): ForkGeometry {
  const { crown, front, steererUp, steererForward, usual } = bones;
  const behindAxle = Math.min(10, usual.rake * 0.25);
  const foot = moved(front.centre, steererForward, -behindAxle);
  const long = Math.hypot(crown.x - front.centre.x, crown.y - front.centre.y);
  const leg = (height: number) => moved(foot, steererUp, height);
  const shoulder = long - usual.travel - 34;
  const wide = front.radius < 300 ? 34 : 42;
  return {
    kind: 'telescopic',
    legs: [
      tube('fork', [leg(long + 8), leg(shoulder)], wide - 12),
      tube('fork', [leg(shoulder), leg(shoulder - 26)], wide + 4, wide),
      tube('fork', [leg(shoulder - 26), leg(-10)], wide, wide - 12),
    ],
    crown: tube(
      'fork',
      [
        moved(moved(crown, steererForward, -20), steererUp, -12),
        moved(leg(long - 12), steererForward, wide / 2 - 3),
      ],
      30,
      28,
    ),
    arch: tube(
      'fork',
      [
        moved(leg(shoulder - 84), steererForward, wide / 2 - 6),
        moved(leg(shoulder - 40), steererForward, wide / 2 + 30),
        moved(leg(shoulder - 4), steererForward, wide / 2 - 4),
      ],
      16,
    ),
    middle,
  };
}
