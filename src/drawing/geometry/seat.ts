/** Seat clamp, seat post and saddle. */

import type { Bike } from '../../engine/bike';
import { type Tube, tube } from './tube';
import { moved, type Point, shifted } from './vector';

export interface SeatGeometry {
  readonly clamp: Tube;
  readonly quickLever: boolean;
  readonly post: readonly Tube[];
  /** Where the saddle's rails are held. */
  readonly head: Point;
  readonly saddle: 'slim' | 'wide' | 'small';
  /** How large the saddle is drawn, 1 for an adult's. */
  readonly scale: number;
  readonly top: number;
}

const belowTop = 48;

export function seatOf(
  bike: Bike,
  foot: Point,
  up: Point,
  usual: { readonly seatTube: number; readonly saddleHeight: number; readonly tube: number },
): SeatGeometry {
  const scale = Math.max(0.62, Math.min(1, usual.saddleHeight / 620));
  const top = moved(foot, up, usual.seatTube);
  const height = Math.max(usual.saddleHeight, usual.seatTube + 90 * scale);
  const head = moved(foot, up, height - belowTop * scale);
  const width = bike.seat.postDiameter;
  const clear = height - belowTop * scale - usual.seatTube;
  const along = (share: number) => moved(top, up, clear * share);
  return {
    clamp: tube('seat-clamp', [moved(top, up, -6), moved(top, up, 12)], usual.tube + 8),
    quickLever: bike.seat.clamp === 'quick-lever',
    post: postOf(bike.seat.post, along, width),
    head,
    saddle: saddleOf(bike),
    scale,
    top: shifted(head, 0, -belowTop * scale).y,
  };
}

function postOf(kind: Bike['seat']['post'], along: (share: number) => Point, width: number) {
  const post = (from: number, to: number, wide: number, endWide = wide) =>
    tube('seat-post', [along(from), along(to)], wide, endWide);
  if (kind === 'suspension') return [post(0, 0.5, width), post(0.5, 0.95, width + 16, width + 2)];
  if (kind === 'rigid') return [post(0, 0.96, width)];
  return [post(0, 0.36, width), post(0.36, 0.96, width - 6), post(0.28, 0.38, width + 8)];
}

function saddleOf(bike: Bike): SeatGeometry['saddle'] {
  if (bike.kind === 'child' || bike.kind === 'balance' || bike.kind === 'bmx') return 'small';
  return ['town', 'cargo', 'folding'].includes(bike.kind) ? 'wide' : 'slim';
}
