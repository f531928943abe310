/** units: quantities in one unit each, exact conversions, and markings read as they are printed. */

export type { Limits, Marking, MarkingRefusal, Printed } from './marking';
export type { UnitMissing } from './marking-groups';
export type { MarkingNotUnderstood } from './marking-tokens';
export { type PressureMarking, parsePressureMarking } from './pressure-marking';
export { kilopascalsFrom, kilopascalsTo, type PressureUnit, pressureUnits } from './pressure-units';
export {
  type Kilograms,
  type Kilopascals,
  kilograms,
  kilopascals,
  type Millimetres,
  type Minutes,
  millimetres,
  minutes,
  type NewtonMetres,
  type Newtons,
  newtonMetres,
  newtons,
} from './quantities';
export { parseTorqueMarking, type TorqueMarking, writeTorqueMarking } from './torque-marking';
export { newtonMetresFrom, newtonMetresTo, type TorqueUnit, torqueUnits } from './torque-units';
export { parseTypedReading, type TypedReading } from './typed-reading';
