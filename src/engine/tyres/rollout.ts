/** How far a wheel rolls in one turn. */

import { type Millimetres, millimetres } from '../units';
import type { TyreSize } from './tyre-marking';

/** π · (bead seat + 2 · width), mm, without load; published tables disagree by up to 2 %. Source: ISO 5775-1 geometry. */
export function rollout(size: TyreSize): Millimetres {
  return millimetres(Math.PI * (size.beadSeat + 2 * size.width));
}
