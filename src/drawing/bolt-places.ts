/** Where the bolts of a joint lie in their picture, by bolt number, and the frame round them. */

import type { Layout } from '../engine/torque';
import { onCircle, type Point, point } from './geometry/vector';

export interface BoltPicture {
  /** In the order of bolt numbers: along the line, or clockwise from the top left. */
  readonly bolts: readonly Point[];
  readonly width: number;
  readonly height: number;
  readonly round: boolean;
}

export const boltRadius = 22;
const edge = 40;
const step = 84;
/** Under a line, where the way passes a bolt that lies between. */
const roomForBow = 12;

export function boltPicture({ shape, bolts: count }: Layout): BoltPicture {
  if (count === 1) return { bolts: [point(74, 74)], width: 148, height: 148, round: true };
  switch (shape) {
    case 'line':
    case 'pair':
      return {
        bolts: Array.from({ length: count }, (_, index) => point(edge + index * step, edge)),
        width: edge * 2 + step * (count - 1),
        height: edge * 2 + (count > 2 ? roomForBow : 0),
        round: false,
      };
    case 'opposed':
      return {
        bolts: Array.from({ length: count }, (_, index) => point(edge + index * step * 2, edge)),
        width: edge * 2 + step * 2 * (count - 1),
        height: edge * 2 + (count > 2 ? roomForBow : 0),
        round: false,
      };
    case 'rectangle':
      return rectangle(count);
    case 'ring':
      return ring(count);
  }
}

/** As many above as below; an odd one more above. */
function rectangle(count: number): BoltPicture {
  const above = Math.ceil(count / 2);
  const right = edge + step * (above - 1);
  const bolts = Array.from({ length: count }, (_, index) =>
    index < above
      ? point(edge + step * index, edge)
      : point(right - step * (index - above), edge + step),
  );
  return { bolts, width: right + edge, height: edge * 2 + step, round: false };
}

function ring(count: number): BoltPicture {
  const radius = Math.max(54, (boltRadius * 2 + 14) / (2 * Math.sin(Math.PI / count)));
  const centre = point(radius + edge, radius + edge);
  const bolts = Array.from({ length: count }, (_, index) =>
    onCircle(centre, radius, (index * 360) / count),
  );
  return { bolts, width: centre.x * 2, height: centre.y * 2, round: true };
}
