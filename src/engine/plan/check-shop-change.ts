/** Whether a new version may stand: no change that safety forbids, and no bike whose plan it would make unsound. */

import { ok, type Refusal, type Result, refuse, topologicalOrder } from '../base';
import { type Bike, factsOf } from '../bike';
import {
  applyShopChanges,
  type CatalogueBase,
  type ChangeUnmet,
  type ShopCatalogueNow,
} from './apply-shop-changes';
import { holds } from './condition';
import type { Condition } from './condition.schema';
import { type PlanRefusal, unorderedPlan } from './resolve-plan';
import type { CatalogueVersion, ShopChange } from './shop-change.schema';
import { type ChangeForbidden, forbiddenChange } from './shop-change-faults';
import { type PlanFault, planFaults } from './soundness';
import { predecessorsOf } from './step-order';

export type ShopChangeRefusal = ChangeForbidden | ChangeUnmet | PlanUnsound;

export type PlanUnsound = Refusal & {
  readonly code: 'plan-unsound';
  readonly bike: Bike;
  readonly because: PlanRefusal | PlanFault;
};

/** What has to be tried before a version may stand. */
export interface Trial {
  readonly after: ShopCatalogueNow;
  /** Those of the bikes whose plans the version changes. */
  readonly bikes: readonly Bike[];
}

/**
 * Lays one more version over those that stand, and says on which of these bikes it has to be tried. Refuses what safety
 * forbids and what refers to nothing. Words, efforts and figures change no plan's soundness, so they ask for no bike.
 */
export function trialOf(
  born: CatalogueBase,
  standing: readonly CatalogueVersion[],
  added: readonly CatalogueVersion[],
  bikes: readonly Bike[],
): Result<Trial, ChangeForbidden | ChangeUnmet> {
  const held = [...standing];
  for (const version of added) {
    const forbidden = forbiddenIn(born, held, version);
    if (forbidden !== undefined) return refuse(forbidden);
    held.push(version);
  }
  const after = applyShopChanges(born, held);
  if (!after.ok) return after;
  const steps = [...born.catalogue.steps, ...after.value.catalogue.steps];
  const conditions = added.flatMap(({ changes }) =>
    changes.flatMap((change) => conditionsTouched(change, steps, held)),
  );
  const concerned = bikes.filter((bike) => {
    const facts = factsOf(bike);
    return conditions.some((when) => holds(when, facts));
  });
  return ok({ after: after.value, bikes: concerned });
}

/** The changes of one version are judged as they stand together. */
function forbiddenIn(
  born: CatalogueBase,
  held: readonly CatalogueVersion[],
  version: CatalogueVersion,
): ChangeForbidden | ChangeUnmet | undefined {
  for (const change of version.changes)
    if (change.kind === 'take-back' && !held.some(({ id }) => id === change.version))
      return { code: 'version-to-take-back-unknown' };
  const now = applyShopChanges(born, [...held, version]);
  if (!now.ok) return now.refusal;
  for (const change of version.changes) {
    const forbidden = forbiddenChange(born, now.value, change);
    if (forbidden !== undefined) return forbidden;
  }
  return undefined;
}

function conditionsTouched(
  change: ShopChange,
  steps: CatalogueBase['catalogue']['steps'],
  versions: readonly CatalogueVersion[],
): readonly (Condition | undefined)[] {
  if (change.kind === 'take-back')
    return versions
      .filter(({ id }) => id === change.version)
      .flatMap(({ changes }) => changes.flatMap((one) => conditionsTouched(one, steps, versions)));
  if (change.kind === 'add-step') return [change.step.when];
  if (change.kind !== 'switch-off' && change.kind !== 'switch-on') return [];
  return steps.filter(({ id }) => id === change.step).map(({ when }) => when);
}

/** What is unsound about this bike's plan by the changed catalogue, if anything. */
export function unsoundFor(after: ShopCatalogueNow, bike: Bike): PlanUnsound | undefined {
  const plan = unorderedPlan(bike, after.catalogue);
  if (!plan.ok) return { code: 'plan-unsound', bike, because: plan.refusal };
  // Any order that works will do here, and finding the best one would take most of the time.
  const order = topologicalOrder(predecessorsOf(plan.value.steps));
  if (!order.ok) {
    const { cycle } = order.refusal;
    return { code: 'plan-unsound', bike, because: { code: 'plan-cycle', cycle } };
  }
  const stepById = new Map(plan.value.steps.map((step) => [step.id, step]));
  const steps = order.value.flatMap((id) => stepById.get(id) ?? []);
  const [fault] = planFaults(bike, { ...plan.value, steps }, after.catalogue, after.points);
  return fault && { code: 'plan-unsound', bike, because: fault };
}

/** The whole check at once. The bikes have to be such that the catalogue as it stands is sound for each. */
export function checkShopChange(
  born: CatalogueBase,
  standing: readonly CatalogueVersion[],
  added: CatalogueVersion,
  bikes: readonly Bike[],
): Result<ShopCatalogueNow, ShopChangeRefusal> {
  const trial = trialOf(born, standing, [added], bikes);
  if (!trial.ok) return trial;
  for (const bike of trial.value.bikes) {
    const unsound = unsoundFor(trial.value.after, bike);
    if (unsound !== undefined) return refuse(unsound);
  }
  return ok(trial.value.after);
}
