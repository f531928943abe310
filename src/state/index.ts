/** state: the one way to change a job, and the living data and actions that screens receive. */

export type {
  Customer,
  JobRow,
  KeptBlob,
  KnownFigure,
  Person,
  StorageRefusal,
  Tool,
  ToolNote,
} from '../storage/contract';
export { type BackupState, backupDue, type LastBackup } from './backup-state';
export { daysBetween, yearAfter } from './calendar-days';
export type { CatalogueRefusal, TakeInRefusal, TakingIn } from './catalogue-change';
export { createApp } from './create-app';
export type { DayPage } from './day-page';
export type { DemoSeeds } from './demo-seeds';
export type { DemoRefusal } from './demo-shop';
export { figureKey, knownFigures, printedElsewhere } from './figure-book';
export type {
  ChosenFolder,
  FilePlaces,
  FileRefusal,
  FileSink,
  FileWritten,
  FolderUnavailable,
  OpenedFile,
  RecordFiles,
  ToldProgress,
} from './file-ports';
export { type Bench, type Build, build, does, lookedAt, walk, workThrough } from './good-mechanic';
export { createJobStore, type JobStore, type JobStorePorts } from './job-store';
export { type LoadedJob, loadJob } from './load-job';
export type { FileLooked, GoodRecord, RefusedRecord } from './look-at-file';
export type { ActRefusal, OpenJob, Problem } from './open-job';
export type { OwnShop, OwnShopRefusal } from './own-shop';
export { isUsablePin, type NameMissing, type NewPerson, type PinNotUsable } from './people';
export {
  type Actor,
  type Bug,
  createPerform,
  type Extras,
  type Perform,
  type Performed,
  type PerformPorts,
  type PerformRefusal,
} from './perform';
export type {
  AppPorts,
  CatalogueFileRefusal,
  Clock,
  CopyRefusal,
  DeliveredBike,
  DeliveryListRefusal,
  DeliveryReading,
  Durability,
  FileNotText,
  InstallPrompt,
  Keys,
  KeysUnavailable,
  OfferedUpdate,
  PhotoNotReadable,
  PinWrong,
  RowRefused,
  ShopCatalogue,
} from './ports';
export { filterRows, type RackFilter, sortRows } from './rack';
export type {
  BikeInDoubt,
  CallBack,
  CalledBack,
  JointInDoubt,
  ReachedBack,
} from './reach-back';
export type { DayCode, PrintedCode, SheetCode } from './read-code';
export type { Box } from './receive-boxes';
export type { Rows, RowsStore } from './rows-store';
export type {
  App,
  CatalogueActions,
  DeviceActions,
  FileActions,
  JobActions,
  JobMissing,
  LivingData,
  NobodyAtTheStand,
  ShopActions,
  ToolActions,
} from './services';
export { lockMinutes, type Preferences, type Session, type SessionStore, themes } from './session';
export type { Shop, ShopStore } from './shop';
export type { SignatureChecked } from './signature-check';
export type { HandingOver, SignRefusal } from './signing';
export type { Supervised } from './standing-for';
export type { StartRefusal } from './start-job';
export type { TakenIn } from './take-in-records';
export type { NewAdapter, NewTool, WrenchDescription } from './tool-board';
export type { Calibration } from './tool-calibration';
export {
  calledBackFor,
  type Doubt,
  doubtByKey,
  doubtsOf,
  needsCalibration,
  type WrenchTool,
} from './tool-doubts';
export type { Verified } from './verify-record';
