/** One step with a joint, as a plan holds it, without reading a file: for tests that draw. */

import { type PlanJoint, type PlanStep, resolvePlan } from '../../src/engine/plan';
import { type Figure, type FigureSource, figureSchema } from '../../src/engine/torque';
import { bikeFrom, mountainBike } from './bikes';
import { catalogueOf } from './catalogues';

const plan = resolvePlan(
  bikeFrom(mountainBike),
  catalogueOf({
    steps: [{ id: 'plain' }, { id: 'stem', joint: 'stem-bolts' }],
    joints: [{ id: 'stem-bolts', bolts: 4, layout: 'rectangle', clamps: ['steering.barMaterial'] }],
  }),
);

function stepCalled(id: string): PlanStep {
  const step = plan.ok ? plan.value.steps.find((one) => one.id === id) : undefined;
  if (step === undefined) throw new Error(`there is no step ${id}`);
  return step;
}

/** A step without a joint. */
export const plainStep = stepCalled('plain');

/** Four M5 bolts in a rectangle round an aluminium bar, usually 4 to 6 N·m; with what is changed about them. */
export function jointStep(change: Partial<PlanJoint> = {}): PlanStep {
  const stem = stepCalled('stem');
  if (stem.joint === undefined) throw new Error('the stem has a joint');
  return { ...stem, joint: { ...stem.joint, ...change } };
}

export function figureFrom(
  limits: { readonly min?: number; readonly max?: number; readonly target?: number },
  source: FigureSource = { kind: 'part', printed: 'as printed' },
): Figure {
  return figureSchema.parse({ ...limits, source });
}
