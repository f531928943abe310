/** The order of work: what must come first does, and the mechanic walks round the bike as little as that allows. */

import { type CycleFound, ok, type Predecessors, type Result, topologicalOrder } from '../base';
import type { PlanStep } from './plan.schema';

/** What each step waits for: the steps it comes after and those it relies on. */
export function predecessorsOf(
  steps: readonly Pick<PlanStep, 'id' | 'after' | 'reliesOn'>[],
): Predecessors {
  return new Map(steps.map((step) => [step.id, [...new Set([...step.after, ...step.reliesOn])]]));
}

/**
 * Orders steps after everything they wait for. Among the steps that are free it stays in the zone, then on the
 * side, of the step before; then the given (catalogue) order decides. Refuses a circle.
 */
export function orderSteps(steps: readonly PlanStep[]): Result<readonly PlanStep[], CycleFound> {
  const before = predecessorsOf(steps);
  const possible = topologicalOrder(before);
  if (!possible.ok) return possible;

  const waiting = [...steps];
  const done = new Set<string>();
  const order: PlanStep[] = [];
  let where: Where = { zone: undefined, side: undefined };
  while (waiting.length > 0) {
    const free = waiting.filter((step) => before.get(step.id)?.every((other) => done.has(other)));
    const next = free.reduce((best, step) =>
      moves(step, where) < moves(best, where) ? step : best,
    );
    waiting.splice(waiting.indexOf(next), 1);
    done.add(next.id);
    order.push(next);
    where = { zone: next.zone, side: sideWorkedFrom(next) ?? where.side };
  }
  return ok(order);
}

type Where = {
  readonly zone: PlanStep['zone'] | undefined;
  readonly side: 'left' | 'right' | undefined;
};

/** A change of zone costs more than any change of side. */
function moves(step: PlanStep, where: Where): number {
  const side = sideWorkedFrom(step);
  const changesSide = side !== undefined && where.side !== undefined && side !== where.side;
  return (step.zone === where.zone ? 0 : 2) + (changesSide ? 1 : 0);
}

function sideWorkedFrom(step: PlanStep): 'left' | 'right' | undefined {
  return step.side === 'left' || step.side === 'right' ? step.side : undefined;
}
