/** What one setting makes of a joint, and how that compares with what its figure demands. */

import { deliveredInterval, likelyTorque } from './deviation';
import { bandAt, type DeviationBand, type Stretch } from './deviation-curve';
import { meets } from './risk';
import type { Setting } from './scale';
import { openEnd, printedLimits, type Task } from './window';

/** N·m at the fastener: what was set, and where the bolt can end. */
export type Outcome = Setting & {
  readonly band: DeviationBand;
  readonly indicated: number;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
};

export function outcomeOf(
  { torque, onScale }: Setting,
  { factor }: Task,
  stretches: readonly Stretch[],
): Outcome {
  const band = bandAt(stretches, torque);
  const indicated = torque * factor;
  const { low, high } = deliveredInterval(indicated, band);
  return { torque, onScale, band, indicated, low, likely: likelyTorque(indicated, band), high };
}

export function isCovered({ torque, indicated, low, high, band }: Outcome, task: Task): boolean {
  const { demand, factor } = task;
  const { min, max } = printedLimits(demand);
  if (low < min * (1 - DUST) || high > max * (1 + DUST)) return false;
  if (demand.kind === 'single') return meets(demand.target, indicated, band, task.tolerance);
  const { from, to } = openEnd(demand, factor);
  return torque >= from * (1 - DUST) && torque <= to * (1 + DUST);
}

/** A target is aimed at with the likeliest torque; a maximum from below with the highest setting, a minimum from above. */
export function awayFromAim({ torque, likely }: Outcome, { demand }: Task): number {
  if (demand.kind === 'maximum') return -torque;
  return demand.kind === 'minimum' ? torque : Math.abs(likely - demand.target);
}

const DUST = 1e-9;
