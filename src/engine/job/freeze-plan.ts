/** Freezing: everything a job will be done by, resolved once for its bike when it opens. */

import { ok, type Result } from '../base';
import type { Bike } from '../bike';
import { type Point, routeFor } from '../inspection';
import { leverSide, type MarketRules } from '../market';
import { type Catalogue, type PlanRefusal, resolvePlan } from '../plan';
import type { Figure, FigureSourceKind } from '../torque';
import { isFarFromUsual } from './far-figure';
import type { JobPlan } from './job-plan.schema';

const holdsForTheModel: readonly FigureSourceKind[] = ['document', 'approved'];

export interface FreezingInput {
  readonly bike: Bike;
  readonly catalogue: Catalogue;
  readonly points: readonly Point[];
  readonly market: MarketRules;
  /** Figures from the maker's documents, or approved by the shop, for this make and model; by joint. */
  readonly figures: Readonly<Record<string, Figure>>;
}

/** The plan a job is done by, or why the catalogue cannot carry this bike. */
export function freezePlan(input: FreezingInput): Result<JobPlan, PlanRefusal> {
  const { bike, catalogue, points, market, figures } = input;
  const plan = resolvePlan(bike, catalogue);
  if (!plan.ok) return plan;
  const stepsByJoint = new Map(plan.value.steps.map((step) => [step.joint?.id, step]));
  // What was read on another bike's part has to be read again on this one's.
  const known = Object.entries(figures).filter(([joint, figure]) => {
    const step = stepsByJoint.get(joint);
    if (step === undefined || !holdsForTheModel.includes(figure.source.kind)) return false;
    // What the shop approved for another form of the joint is not put on this one's bolts unasked.
    return figure.source.kind !== 'approved' || !isFarFromUsual(step, figure);
  });
  return ok({
    ...plan.value,
    bike,
    market: market.id,
    frontBrakeLever: bike.front.brake === 'none' ? 'none' : leverSide(market),
    points: [...routeFor(bike, points)],
    figures: Object.fromEntries(known),
  });
}
