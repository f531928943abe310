/** The plan of a bike, where one is expected, and what its catalogue demands of the order. */

import { descendants } from '../../src/engine/base';
import type { Bike } from '../../src/engine/bike';
import { type Catalogue, type Plan, predecessorsOf, resolvePlan } from '../../src/engine/plan';
import { seedCatalogue } from './seed-catalogue';

const seeds = seedCatalogue();

export function planOf(bike: Bike, catalogue: Catalogue = seeds): Plan {
  const plan = resolvePlan(bike, catalogue);
  if (!plan.ok) throw new Error(`a plan was expected, not ${JSON.stringify(plan.refusal)}`);
  return plan.value;
}

/** Whether the catalogue itself demands the order, so that no tie-break can undo it. */
export function mustComeFirst({ steps }: Plan, earlier: string, later: string): boolean {
  return descendants(predecessorsOf(steps), [earlier]).includes(later);
}
