/** The order of work: what must come first does, and the mechanic walks round the bike as little as that allows. */

import { type CycleFound, ok, type Predecessors, type Result, topologicalOrder } from '../base';
import { orderOfFewestChanges } from './fewest-changes';
import type { PlanStep } from './plan.schema';
import { workOf } from './work-states';

/** What each step waits for: the steps it comes after and those it relies on. */
export function predecessorsOf(
  steps: readonly Pick<PlanStep, 'id' | 'after' | 'reliesOn'>[],
): Predecessors {
  return new Map(steps.map((step) => [step.id, [...new Set([...step.after, ...step.reliesOn])]]));
}

/**
 * Orders steps after everything they wait for, with few changes of zone, tool and side: the fewest there can be up to
 * twelve steps, close to it beyond. Of equal orders the given (catalogue) order decides. Refuses a circle.
 */
export function orderSteps(steps: readonly PlanStep[]): Result<readonly PlanStep[], CycleFound> {
  const before = predecessorsOf(steps);
  const possible = topologicalOrder(before);
  if (!possible.ok) return possible;
  const order = orderOfFewestChanges(workOf(steps, before));
  return ok(order.flatMap((step) => steps[step] ?? []));
}
