/** A figure that is most likely a slip of the pad or the unit. */

import type { PlanStep } from '../plan';
import type { Figure } from '../torque';

/** Wholly below half, or wholly above twice the usual range of such a joint: common practice, no source. Never refused, always told. */
export function isFarFromUsual(
  { joint }: Pick<PlanStep, 'joint'>,
  figure: Pick<Figure, 'min' | 'max' | 'target'> | undefined,
): boolean {
  if (joint === undefined || figure === undefined) return false;
  const lowest = figure.min ?? figure.target ?? figure.max ?? 0;
  const highest = figure.max ?? figure.target ?? figure.min ?? 0;
  return highest < joint.usual.min / 2 || lowest > joint.usual.max * 2;
}
