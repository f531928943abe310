/** A first saddle height from the rider's inseam. */

import { type Millimetres, millimetres } from '../units';

/**
 * Advice, never a specification: from the centre of the bottom bracket to the top of the saddle, along the seat tube, in
 * mm. The inseam is taken without shoes, in mm. Source: 0.883 × inseam, common practice, no source.
 */
export function saddleHeightFrom(inseam: Millimetres): Millimetres {
  return millimetres(0.883 * inseam);
}
