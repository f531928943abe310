/** plan: the catalogue, and the ordered steps for one bike resolved from it. */

export { answersByQuestion, unaskable } from './answers-by-question';
export {
  type ApprovedFigure,
  applyShopChanges,
  type CatalogueBase,
  type ChangeUnmet,
  type ShopCatalogueNow,
} from './apply-shop-changes';
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
export {
  checkShopChange,
  type PlanUnsound,
  type ShopChangeRefusal,
  type Trial,
  trialOf,
  unsoundFor,
} from './check-shop-change';
export { type Ground, groundsOf, holds, questionsAsked } from './condition';
export { type Condition, conditionSchema } from './condition.schema';
export { type Activity, type CriticalPath, criticalPath } from './critical-path';
export { type Effort, effortOf, type ThreePoints } from './effort';
export { type GreaseAdvice, type GreaseAdviceRefusal, greaseAdvice } from './grease-advice';
export { featuresToHandle } from './handled-features';
export { jointThread } from './joint-thread';
export {
  type ChangeConflict,
  type MergedVersions,
  mergeVersions,
  subjectOf,
  type VersionAltered,
  type VersionedChange,
} from './merge-versions';
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
export { type OrderedStep, type ReasonsForOrder, reasonsForOrder } from './reasons-for-order';
export type { UnmetReference } from './references';
export { type DoneSoFar, remainingEffort } from './remaining-effort';
export { type PlanRefusal, resolvePlan, unorderedPlan } from './resolve-plan';
export {
  type CatalogueVersion,
  type ChangedWords,
  catalogueVersionSchema,
  type OwnJoint,
  type OwnStep,
  ownJointSchema,
  ownStepSchema,
  type ShopChange,
  shopChangeSchema,
} from './shop-change.schema';
export { type ChangeForbidden, forbiddenChange } from './shop-change-faults';
export { shopEffort } from './shop-effort';
export { type LookedAt, type PlanFault, planFaults } from './soundness';
export { staleAfter } from './stale-after';
export { predecessorsOf } from './step-order';
export {
  type TyreEntryFault,
  type TyreEntryRefusal,
  type TyrePressureUnlikely,
  tyreEntryFaults,
} from './tyre-entry';
export { countingVersions, nextVersion, orderVersions } from './version-order';
export { type Changes, changesIn } from './work-changes';
export { type LimitRefusal, workedMeasure } from './worked-limit';
