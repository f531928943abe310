/** What one setting makes of a joint, and how that compares with what its figure demands. */

import { deliveredInterval, deviationAt, likelyTorque } from './deviation';
import type { DeviationBand } from './deviation-curve';
import { meets } from './risk';
import type { Setting } from './scale';
import { openEnd, printedLimits, type Task } from './window';
import type { Wrench } from './wrench.schema';

/** N·m at the fastener: what was set, and where the bolt can end. */
export type Outcome = Setting & {
  readonly band: DeviationBand;
  readonly indicated: number;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
};

export function outcomeOf(setting: Setting, { factor }: Task, wrench: Wrench): Outcome {
  const band = deviationAt(wrench, setting.torque);
  const indicated = setting.torque * factor;
  const likely = likelyTorque(indicated, band);
  return { ...setting, band, indicated, likely, ...deliveredInterval(indicated, band) };
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
