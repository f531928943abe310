/** plan: the catalogue, and the ordered steps for one bike resolved from it. */

export {
  type Catalogue,
  catalogueSchema,
  hands,
  type Joint,
  jointSchema,
  type Limit,
  type LimitRule,
  layoutShapes,
  limitRules,
  limitSchema,
  type MaterialQuestion,
  type Measure,
  materialQuestions,
  measureSchema,
  measureUnits,
  type Part,
  type Preparation,
  partSchema,
  preparations,
  risks,
  type Step,
  sides,
  stepSchema,
} from './catalogue.schema';
export { type Ground, groundsOf, holds, questionsAsked } from './condition';
export { type Condition, conditionSchema } from './condition.schema';
export { type Activity, type CriticalPath, criticalPath } from './critical-path';
export { type Effort, effortOf, type ThreePoints } from './effort';
export { type GreaseAdvice, type GreaseAdviceRefusal, greaseAdvice } from './grease-advice';
export { featuresToHandle } from './handled-features';
export { jointThread } from './joint-thread';
export { type OrderQuality, orderQuality } from './order-quality';
export type { BikeOutsideCatalogue } from './outside-catalogue';
export {
  type Plan,
  type PlanJoint,
  type PlanMeasure,
  type PlanPart,
  type PlanStep,
  planMeasureSchema,
  planSchema,
} from './plan.schema';
export { type LookedAt, type PlanFault, planFaults } from './plan-faults';
export type { UnmetReference } from './references';
export { remainingEffort } from './remaining-effort';
export { type PlanRefusal, resolvePlan } from './resolve-plan';
export { staleAfter } from './stale-after';
export { predecessorsOf } from './step-order';
export {
  type TyreEntryFault,
  type TyreEntryRefusal,
  type TyrePressureUnlikely,
  tyreEntryFaults,
} from './tyre-entry';
export { type Changes, changesIn } from './work-changes';
export { type LimitRefusal, workedMeasure } from './worked-limit';
