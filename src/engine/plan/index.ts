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
  type Measure,
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
export { type Condition, conditionSchema } from './condition.schema';
export {
  type Plan,
  type PlanJoint,
  type PlanMeasure,
  type PlanPart,
  type PlanStep,
  planMeasureSchema,
  planSchema,
} from './plan.schema';
