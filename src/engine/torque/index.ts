/** torque: from a figure with its source to a set point, an order of bolts and a judged reading. */

export { type Adapter, adapterSchema } from './adapter.schema';
export {
  type CalibrationOverdue,
  calibrationPoints,
  readyWrench,
  type WrenchNotInService,
  type WrenchNotReady,
} from './calibration';
export type { FigureContradictsItself, FigureEmpty, FigureRefusal } from './demand';
export { deliveredInterval, permissibleDeviation, relativeDeviation } from './deviation';
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
export {
  type GreaseEffect,
  type GreaseRefusal,
  greaseEffect,
  type PreloadRange,
  type PropertyClassUnknown,
} from './grease';
export { type Layout, type LayoutShape, layoutSchema, layoutShapes } from './layout.schema';
export { type AdapterImpossible, adapterFactor } from './leverage';
export {
  assemblyPreload,
  type BearingImpossible,
  type FrictionJoint,
  type MaterialNotComputed,
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
} from './property-classes';
export { type RankedWrench, rankWrenches, type WrenchReason, wrenchReasons } from './ranking';
export { judgeReading, probabilityInside, type ReadingVerdict, readingVerdicts } from './reading';
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
