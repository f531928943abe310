/** How much work a plan still holds. */

import { minutes } from '../units';
import type { Effort } from './effort';
import type { Plan } from './plan.schema';
import { shopEffort } from './shop-effort';

export interface DoneSoFar {
  readonly done: readonly string[] | ReadonlySet<string>;
  /** By step, the minutes it took in this shop before; nothing of a step leaves the catalogue's own estimate. */
  readonly taken?: Readonly<Record<string, readonly number[]>>;
}

/**
 * Expected minutes and their spread over the steps that are not done; ids the plan does not have change nothing.
 * Source: PERT (Malcolm and others, 1959): means and variances add up, the steps being taken as independent.
 */
export function remainingEffort(plan: Plan, { done, taken = {} }: DoneSoFar): Effort {
  const isDone = new Set(done);
  const left = plan.steps
    .filter((step) => !isDone.has(step.id))
    .map((step) =>
      shopEffort(step.effort, Object.hasOwn(taken, step.id) ? (taken[step.id] ?? []) : []),
    );
  return {
    expected: minutes(left.reduce((sum, { expected }) => sum + expected, 0)),
    spread: minutes(Math.sqrt(left.reduce((sum, { spread }) => sum + spread ** 2, 0))),
  };
}
