/** tyres: what is printed on a tyre, how hard it may be on its rim, and how far it rolls. */

export { knownBeadSeats } from './bead-seats';
export { gaugeAt } from './gauge';
export {
  hooklessCeiling,
  type InflationWindow,
  type InflationWindowEmpty,
  inflationWindow,
  type Rim,
  suggestInflation,
  type TyreMaximumUnknown,
} from './inflation';
export type { PrintedSize, SizeSystem } from './printed-sizes';
export { rimFits, usualRimWidth } from './rim-fit';
export { rollout } from './rollout';
export {
  parseTyreMarking,
  type Tyre,
  type TyreMarking,
  type TyreMarkingRefusal,
  type TyreSize,
  type TyreSizeRefusal,
} from './tyre-marking';
export {
  type PressureLimits,
  type PressureUnitsDisagree,
  pressureLimits,
} from './tyre-pressure';
export { frontShareByPosture, type Posture, wheelLoads } from './wheel-loads';
