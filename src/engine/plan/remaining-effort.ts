/** How much work a plan still holds. */

import { type Effort, effortOf } from './effort';
import type { Plan } from './plan.schema';

/** Expected minutes and their spread over the steps that are not done; ids the plan does not have change nothing. */
export function remainingEffort(
  plan: Plan,
  state: { readonly done: readonly string[] | ReadonlySet<string> },
): Effort {
  const done = new Set(state.done);
  return effortOf(plan.steps.filter((step) => !done.has(step.id)).map((step) => step.effort));
}
