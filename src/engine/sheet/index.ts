/** sheet: the printed hand-over page, as data. */

export { type FindingsInOrder, type FoundOnBike, findingsInOrder } from './findings-in-order';
export {
  type Sheet,
  type SheetFinding,
  type SheetInput,
  type SheetJoint,
  type SheetMeasure,
  type SheetReading,
  type SheetSignature,
  sheetOf,
} from './sheet-of';
