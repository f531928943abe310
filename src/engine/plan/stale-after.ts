/** What is no longer known to be good once something has been disturbed. */

import { descendants } from '../base';
import type { Plan } from './plan.schema';

/**
 * The ids of the steps whose result rests, directly or through others, on what was disturbed, in plan order.
 * `disturbed` names steps or joints (a joint stands for the steps that tighten it); ids the plan does not have
 * are passed over, and the disturbed steps themselves are not in the answer.
 */
export function staleAfter(plan: Plan, disturbed: readonly string[]): readonly string[] {
  const named = new Set(disturbed);
  const touched = plan.steps
    .filter((step) => named.has(step.id) || (step.joint && named.has(step.joint.id)))
    .map((step) => step.id);
  return descendants(new Map(plan.steps.map((step) => [step.id, step.reliesOn])), touched);
}
