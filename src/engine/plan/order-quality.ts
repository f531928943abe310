/** How good an order of work is: what changes in it, and what no order can stay under. */

import { fewestChangesBound } from './changes-bound';
import type { PlanStep } from './plan.schema';
import { predecessorsOf } from './step-order';
import { type Changes, changesIn } from './work-changes';
import { workOf } from './work-states';

export type OrderQuality = {
  readonly changes: Changes;
  /** No order of these steps has fewer changes in all. */
  readonly bound: number;
  /** `changes.total` over `bound`; 1 where the order is proven to be the best. */
  readonly ratio: number;
};

/** Enough to come within a tenth of the best on plans of a hundred steps. */
const usualEffort = 6000;

/**
 * The changes of zone, tool and side in a plan as it stands, and a proven lower bound of their sum over every order that
 * its steps allow. `effort` is how many stands are tried at most: more of it proves a bound closer to the best.
 */
export function orderQuality(
  plan: { readonly steps: readonly PlanStep[] },
  effort: number = usualEffort,
): OrderQuality {
  const changes = changesIn(plan.steps);
  const work = workOf(plan.steps, predecessorsOf(plan.steps));
  const bound = fewestChangesBound(work, effort);
  return { changes, bound, ratio: changes.total === bound ? 1 : changes.total / bound };
}
