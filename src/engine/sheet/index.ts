/** sheet: the printed hand-over page, as data. */

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
