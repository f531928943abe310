/** A plan from a bike and the catalogue: the steps that this bike needs, in an order that works, nothing left to look up. */

import { ok, type Refusal, type Result, refuse } from '../base';
import {
  type Bike,
  type BikeFacts,
  type Contradiction,
  contradictionsIn,
  factsOf,
  materials,
} from '../bike';
import type { Catalogue, Joint, MaterialQuestion, Measure, Step } from './catalogue.schema';
import { holds } from './condition';
import { type BikeOutsideCatalogue, checkInsideCatalogue } from './outside-catalogue';
import type { Plan, PlanJoint, PlanPart, PlanStep } from './plan.schema';
import { checkReferences, type UnmetReference } from './references';
import { orderSteps } from './step-order';
import { rimCaution } from './tyre-limit';
import { type LimitRefusal, workedMeasure } from './worked-limit';

/**
 * Resolves the plan for one bike: steps and box contents whose conditions hold, joints with the first matching
 * variant, measures with their limits worked out (mm, kPa), references kept only where this bike has the other
 * end. Order: after everything a step waits for, then with few changes of zone and side, then as in the catalogue.
 *
 * Refuses a catalogue with a circle (`plan-cycle`) or an unmet reference (`step-unknown`, `joint-unknown`,
 * `part-unknown`, `id-not-unique`), a description that no bike can answer to (`features-at-odds`), a bike with features
 * that the catalogue has no work for (`bike-outside-catalogue`), and markings that give no limit (`tyre-not-understood`,
 * `tyre-pressure-not-understood`, `tyre-window-empty`, `tyre-narrower-than-rim`).
 */
export function resolvePlan(bike: Bike, catalogue: Catalogue): Result<Plan, PlanRefusal> {
  const plan = unorderedPlan(bike, catalogue);
  if (!plan.ok) return plan;
  const order = orderSteps(plan.value.steps);
  if (!order.ok) return refuse({ code: 'plan-cycle', cycle: order.refusal.cycle });
  return ok({ ...plan.value, steps: [...order.value] });
}

export type PlanRefusal =
  | (Refusal & { readonly code: 'plan-cycle'; readonly cycle: readonly string[] })
  | (Refusal & {
      readonly code: 'features-at-odds';
      readonly contradictions: readonly Contradiction[];
    })
  | UnmetReference
  | BikeOutsideCatalogue
  | LimitRefusal;

/** All that a plan holds, with its steps still as in the catalogue: for those who ask what, and not when. */
export function unorderedPlan(bike: Bike, catalogue: Catalogue): Result<Plan, PlanRefusal> {
  const facts = factsOf(bike);
  const references = checkReferences(catalogue);
  if (!references.ok) return references;
  const contradictions = contradictionsIn(bike);
  if (contradictions.length > 0) return refuse({ code: 'features-at-odds', contradictions });
  const inside = checkInsideCatalogue(catalogue, facts);
  if (!inside.ok) return inside;

  const contents = contentsOf(catalogue, facts);
  const chosen = catalogue.steps.filter((step) => holds(step.when, facts));
  const present = {
    steps: new Set(chosen.map((step) => step.id)),
    parts: new Set(contents.map((part) => part.id)),
    joints: new Map(catalogue.joints.map((joint) => [joint.id, joint])),
  };
  const steps: PlanStep[] = [];
  for (const step of chosen) {
    const resolved = resolveStep(step, bike, facts, present);
    if (!resolved.ok) return resolved;
    steps.push(resolved.value);
  }
  return ok({ catalogue: catalogue.version, steps, contents });
}

function contentsOf(catalogue: Catalogue, facts: BikeFacts): PlanPart[] {
  return catalogue.parts
    .filter((part) => holds(part.when, facts))
    .map(({ when: _, ...part }) => part);
}

type Present = {
  readonly steps: ReadonlySet<string>;
  readonly parts: ReadonlySet<string>;
  readonly joints: ReadonlyMap<string, Joint>;
};

function resolveStep(
  { when: _, joint: jointId, measures, ...step }: Step,
  bike: Bike,
  facts: BikeFacts,
  present: Present,
): Result<PlanStep, LimitRefusal> {
  const worked: PlanStep['measures'] = [];
  for (const measure of measures) {
    const one = workedMeasure(bike, measure);
    if (!one.ok) return one;
    worked.push(one.value);
  }
  const cautions = measures.flatMap(({ limit }) => cautionFrom(bike, limit) ?? []);
  const joint = jointId === undefined ? undefined : present.joints.get(jointId);
  return ok({
    ...step,
    after: step.after.filter((id) => present.steps.has(id)),
    reliesOn: step.reliesOn.filter((id) => present.steps.has(id)),
    parts: step.parts.filter((id) => present.parts.has(id)),
    measures: worked,
    cautions: [...step.cautions, ...cautions],
    ...(joint && { joint: resolveJoint(joint, facts) }),
  });
}

/** A wheel is inflated under the caution that its tyre and rim ask for. */
function cautionFrom(bike: Bike, limit: Measure['limit']): string | undefined {
  if (!('rule' in limit)) return undefined;
  if (limit.rule === 'tyre-window-front') return rimCaution(bike.front);
  return limit.rule === 'tyre-window-rear' ? rimCaution(bike.rear) : undefined;
}

function resolveJoint({ variants, clamps, ...own }: Joint, facts: BikeFacts): PlanJoint {
  const joint = { ...own, ...(clamps && { clamps: clamps.map((one) => materialOf(one, facts)) }) };
  const variant = variants.find(({ when }) => holds(when, facts));
  if (variant === undefined) return joint;
  return {
    ...joint,
    bolts: variant.bolts ?? joint.bolts,
    layout: variant.layout ?? joint.layout,
    thread: variant.thread ?? joint.thread,
    bit: variant.bit ?? joint.bit,
    preparation: variant.preparation ?? joint.preparation,
    preparationNote: variant.preparationNote ?? joint.preparationNote,
    usual: variant.usual ?? joint.usual,
    source: variant.source ?? joint.source,
  };
}

/** A material the description leaves open is unknown, which is an answer too. */
function materialOf(question: MaterialQuestion, facts: BikeFacts): (typeof materials)[number] {
  return materials.find((material) => material === facts[question]) ?? 'unknown';
}
