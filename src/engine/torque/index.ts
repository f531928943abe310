/** torque: from a figure with its source to a set point, an order of bolts and a judged reading. */

export { type Adapter, adapterSchema } from './adapter.schema';
export {
  type CalibrationOverdue,
  calibrationPoints,
  readyWrench,
  type WrenchNotInService,
  type WrenchNotReady,
} from './calibration';
export {
  type CalibrationResult,
  calibrationResult,
  type TestPointImpossible,
  type TestPointsMissing,
  type TestPointsRefusal,
} from './calibration-result';
export { classDeviation } from './class-deviation';
export {
  type ComparedFigure,
  compareFigures,
  type FigureComparison,
  type FigureStanding,
  figureStandings,
} from './compare-figures';
export {
  conformityProbability,
  expandedUncertainty,
  falseAcceptance,
  type GuardedVerdict,
  guardedVerdict,
  guardedVerdicts,
  guardFactor,
  type Uncertainty,
} from './conformity';
export type { FigureContradictsItself, FigureEmpty, FigureRefusal } from './demand';
export {
  deliveredInterval,
  deviationAt,
  likelyTorque,
  permissibleDeviation,
  relativeDeviation,
} from './deviation';
export type { DeviationBand } from './deviation-curve';
export { byTrust, figureTrust, type UsualRangeNotAccepted, usableFigure } from './figure';
export {
  type Figure,
  type FigureSource,
  type FigureSourceKind,
  figureSchema,
  figureSourceKinds,
  figureSourceSchema,
} from './figure.schema';
export { type Bearing, frictionByMaterial, socketHeadBearing } from './friction';
export { EVEN_WITHIN, type GapsImpossible, type GapsJudged, judgeGaps } from './gaps';
export {
  type GreaseEffect,
  type GreaseRefusal,
  greaseEffect,
  type PreloadRange,
  type PropertyClassUnknown,
} from './grease';
export { type Layout, type LayoutShape, layoutSchema, layoutShapes } from './layout.schema';
export { type AdapterImpossible, adapterFactor } from './leverage';
export { erfc, normalBelow, normalBetween, normalQuantile } from './normal';
export {
  assemblyPreload,
  type BearingImpossible,
  type FrictionJoint,
  type MaterialNotComputed,
  nutFactor,
  type PreloadRefusal,
  preloadFrom,
  torqueFor,
} from './preload';
export {
  type PropertyClass,
  proofLoad,
  propertyClasses,
  type Strength,
  strengthOf,
  tensileLoad,
} from './property-classes';
export { type RankedWrench, rankWrenches, type WrenchReason, wrenchReasons } from './ranking';
export {
  type JudgedAgain,
  judgeAgain,
  type PeriodBackwards,
  type ReachBackRefusal,
  type ReachedJoint,
  reachBack,
  type WrenchUse,
} from './reach-back';
export {
  judgeReading,
  probabilityInside,
  type Read,
  type ReadingVerdict,
  readingVerdicts,
} from './reading';
export { positionOnScale } from './scale';
export {
  type FigureOutsideWrenchRange,
  planSetPoint,
  type SetPoint,
  type SetPointRefusal,
  type WrenchTooCoarse,
} from './set-point';
export { type Thread, threadSchema } from './thread.schema';
export { knownThread, type ThreadGeometry, type ThreadNotInTable, threadGeometry } from './threads';
export { tighteningOrder } from './tightening-order';
export { type Pass, tighteningPasses } from './tightening-passes';
export {
  type Certificate,
  type CertificatePoint,
  certificatePointSchema,
  certificateSchema,
  type Wrench,
  type WrenchCondition,
  type WrenchKind,
  wrenchConditions,
  wrenchKinds,
  wrenchSchema,
} from './wrench.schema';
export {
  OPERATIONS_BETWEEN_CALIBRATIONS,
  type WrenchClass,
  type WrenchType,
  wrenchClasses,
  wrenchClassTable,
  wrenchTypes,
} from './wrench-classes';
