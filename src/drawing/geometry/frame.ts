/** The tubes of a frame, far ones first. */

import type { Bike } from '../../engine/bike';
import type { Skeleton } from './skeleton';
import { type Tube, tube } from './tube';
import { between, moved, type Point, shifted } from './vector';

export interface FrameGeometry {
  /** Top, down and seat tube, which the chain passes in front of. */
  readonly main: readonly Tube[];
  /** Chainstay and seatstay, which the chain runs inside of. */
  readonly stays: readonly Tube[];
  readonly headTube: Tube;
  readonly topTube: Tube;
  readonly downTube: Tube;
  readonly seatStayTop: Point;
  /** The rear shock, and the link that presses it. */
  readonly shock:
    | { readonly link: Tube; readonly pivot: Point; readonly from: Point; readonly to: Point }
    | undefined;
  readonly hinge: Point | undefined;
}

export function frameOf(bike: Bike, bones: Skeleton): FrameGeometry {
  const { bottomBracket, headTop, headBottom, steererUp, seatTubeTop, usual, seatUp } = bones;
  const { tubes } = usual;
  const rearBracket = bones.rearBottomBracket ?? bottomBracket;
  const rearSeatTop = moved(rearBracket, seatUp, usual.seatTube);
  const headTube = tube('head-tube', [headBottom, headTop], tubes.head, tubes.head - 3);
  const seatTube = tube('seat-tube', [bottomBracket, seatTubeTop], tubes.seat);
  const topTube = topTubeOf(bike, bones);
  const low = moved(headBottom, steererUp, Math.min(26, usual.headTube * 0.24));
  const downTube =
    bike.kind === 'balance'
      ? tube('down-tube', [low, between(low, bottomBracket, 0.55), bottomBracket], tubes.down)
      : tube('down-tube', [low, bottomBracket], tubes.down, tubes.down - 4);
  const main = [downTube, topTube, seatTube];
  if (bones.rearBottomBracket) {
    main.unshift(tube('down-tube', [bones.rearBottomBracket, bottomBracket], 44));
    main.push(tube('seat-tube', [bones.rearBottomBracket, rearSeatTop], tubes.seat));
  }
  if (bike.kind === 'folding') main.splice(0, 1);
  return { main, headTube, topTube, downTube, ...rearOf(bike, bones, rearBracket, topTube) };
}

function topTubeOf(bike: Bike, bones: Skeleton): Tube {
  const { bottomBracket, headTop, headBottom, steererUp, seatUp, usual } = bones;
  const { tubes, seatTube } = usual;
  if (bike.kind === 'folding') {
    const beam = [between(headBottom, headTop, 0.5), moved(bottomBracket, seatUp, 92)];
    return tube('top-tube', beam, tubes.down);
  }
  if (bike.kind === 'balance') {
    const end = moved(bottomBracket, seatUp, seatTube * 0.7);
    return tube('top-tube', [moved(headTop, steererUp, -18), end], tubes.top);
  }
  if (bike.frame.shape === 'low-step') {
    const start = moved(headTop, steererUp, -Math.min(48, usual.headTube * 0.35));
    const end = moved(bottomBracket, seatUp, seatTube * 0.4);
    const sag = shifted(between(start, end, 0.52), -28, seatTube * 0.16);
    return tube('top-tube', [start, sag, end], tubes.top);
  }
  const rearSeatTop = moved(bones.rearBottomBracket ?? bottomBracket, seatUp, seatTube);
  const start = moved(headTop, steererUp, -Math.min(26, usual.headTube * 0.22));
  return tube('top-tube', [start, moved(rearSeatTop, seatUp, -24)], tubes.top + 2, tubes.top - 3);
}

function rearOf(bike: Bike, bones: Skeleton, bracket: Point, topTube: Tube) {
  const { rear, seatUp, usual } = bones;
  const axle = rear.centre;
  const thin = bike.kind === 'balance' || rear.radius < 220 ? 15 : 18;
  const chainstay = tube('stays', [axle, bracket], thin, thin + 8);
  if (bike.kind === 'mountain-full-suspension') {
    const pivot = shifted(bracket, 12, -62);
    const onSeatTube = moved(bracket, seatUp, usual.seatTube * 0.66);
    const back = shifted(onSeatTube, -48, 14);
    const from = shifted(onSeatTube, 50, -22);
    const [head = from, seat = from] = topTube.line;
    const to = shifted(between(head, seat, 0.4), 0, topTube.width / 2 + 10);
    const stays = [tube('stays', [axle, pivot], 24, 34), tube('stays', [axle, back], 20, 24)];
    const shock = { link: tube('stays', [back, from], 28, 24), pivot: onSeatTube, from, to };
    return { stays, seatStayTop: back, shock, hinge: undefined };
  }
  const high = seatStayHeight(bike.kind, usual.seatTube, bike.frame.shape === 'low-step');
  const seatStayTop = moved(bracket, seatUp, high);
  const stays = [chainstay, tube('stays', [axle, seatStayTop], thin - 2, thin)];
  const hinge =
    bike.kind === 'folding'
      ? between(bones.headBottom, moved(bracket, seatUp, 92), 0.45)
      : undefined;
  return { stays, seatStayTop, shock: undefined, hinge };
}

/** Where the seatstay meets the seat tube: just under the top tube, lower on modern road frames, low on a beam. */
function seatStayHeight(kind: Bike['kind'], seatTube: number, lowStep: boolean): number {
  if (kind === 'folding') return seatTube * 0.72;
  if (kind === 'road' || kind === 'gravel') return seatTube - 96;
  return seatTube - (lowStep ? 58 : 40);
}
