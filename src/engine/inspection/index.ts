/** inspection: the route of points round one bike, front to rear, and the judging of what is measured there. */

export { type Judgement, judgeMeasure, judgements } from './judge-measure';
export {
  type Point,
  pointSchema,
  type RoutePoint,
  routePointSchema,
  type Severity,
  severities,
  type Verdict,
  verdicts,
} from './point.schema';
export { readyValues } from './ready-values';
export { routeFor } from './route-for';
