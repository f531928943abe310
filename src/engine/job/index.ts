/** job: one boxed bike's life as a log of events; what may happen next, and what it adds up to. */

export {
  type Asked,
  type AskedOf,
  type Command,
  type CommandKind,
  type NewFinding,
  type Role,
  roles,
  type Signing,
  type Stamp,
} from './command';
export { decide } from './decide';
export { topicsToTell } from './decide-signing';
export {
  type AdapterUsed,
  type EventOf,
  eventSchema,
  type HoldReason,
  holdReasons,
  type JobEvent,
  type Meaning,
  meanings,
  type PartState,
  type PassMade,
  partStates,
  type ReadingTaken,
  type Tightened,
  type WrenchUsed,
} from './event.schema';
export { evolve } from './evolve';
export { isFarFromUsual } from './far-figure';
export { type FreezingInput, freezePlan } from './freeze-plan';
export { type Gate, gatesFor, isStepOpen, openSteps, stepGates, uncheckedContents } from './gates';
export { type JobPlan, jobPlanSchema } from './job-plan.schema';
export { type LatestMeasure, latestMeasure } from './latest-measure';
export { measuresAt, missingMeasures } from './measuring';
export {
  type BoltReading,
  lastOfEachBolt,
  type ReadingGround,
  type ReadingRefusal,
  verdictOf,
} from './pass-readings';
export { recordCode } from './record-code';
export type { JobRefusal } from './refusal';
export { planNamedIn, replay, withPlan } from './replay';
export { isLearner, unconfirmedJoints } from './second-eyes';
export {
  type Disturbance,
  emptyJob,
  type Finding,
  type JobState,
  type JointMark,
  type Mark,
  type MeasureMark,
  type PartMark,
  type PointMark,
  type SignatureMark,
  type StepMark,
} from './state';
export {
  blockingFindings,
  isPointSettled,
  type JobStatus,
  jobStatuses,
  openFindings,
  pointById,
  pointsOf,
  type Standing,
  standingOfStep,
  standingSignature,
  statusOf,
  stepById,
  stepOfJoint,
  stepsOf,
  unfinishedSteps,
  unsettledPoints,
} from './status';
export { type JobSummary, summaryOf, type ZoneCount, zoneCounts } from './summary';
export { figureFor, layoutOf, type NextPass, type NoNextPass, nextPass } from './tightening';
export { type Topic, topics, topicsFor } from './told';
export { type Unusual, unusualIn } from './unusual';
export { type Waiting, waitsFor } from './waiting';
export { type WhatNow, whatNow } from './what-now';
export { type WrenchDay, wrenchDays } from './wrench-days';
export { type WrenchUse, wrenchUses } from './wrench-uses';
