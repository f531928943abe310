/** The one app that every screen receives: living data, and everything a person can do. */

import type { StoreApi } from 'zustand/vanilla';
import type { Result } from '../engine/base';
import type { Bike } from '../engine/bike';
import type { LogDamaged, WholeLog } from '../engine/integrity';
import type { JobState } from '../engine/job';
import type { MarketRules } from '../engine/market';
import type { CatalogueVersion, MergedVersions, ShopChange, VersionAltered } from '../engine/plan';
import type { ReachBackRefusal } from '../engine/torque';
import type {
  Customer,
  JobRow,
  KeptBlob,
  KnownFigure,
  Person,
  StorageRefusal,
  Tool,
} from '../storage/contract';
import type { AllowedFinding, AllowRefusal } from './allow-finding';
import type { BackupStore } from './backup-state';
import type { CatalogueRefusal, OnTried, TakeInRefusal, TakingIn } from './catalogue-change';
import type { ConfirmedJoints, ConfirmRefusal } from './confirm-joints';
import type { DayPage } from './day-page';
import type { DemoRefusal } from './demo-shop';
import type {
  ChosenFolder,
  FileRefusal,
  FileWritten,
  FolderUnavailable,
  ToldProgress,
} from './file-ports';
import type { JobStore } from './job-store';
import type { FileLooked } from './look-at-file';
import type { ActRefusal } from './open-job';
import type { OwnShop, OwnShopRefusal } from './own-shop';
import type { PinHeldAlready, PinNotUsable } from './people';
import type { PeopleActions } from './people-actions';
import type {
  CatalogueFileRefusal,
  Clock,
  CopyRefusal,
  DeliveredBike,
  DeliveryListRefusal,
  DeliveryReading,
  Durability,
  FileNotText,
  KeysUnavailable,
  PhotoNotReadable,
  ShopCatalogue,
} from './ports';
import type { CallBack, CallBackRefusal, ReachedBack } from './reach-back';
import type { CodeNotReadable, PrintedCode, SheetCode } from './read-code';
import type { Box } from './receive-boxes';
import type { RestoreRefusal } from './restore-backup';
import type { RowsStore } from './rows-store';
import type { SessionStore } from './session';
import type { ShopStore } from './shop';
import type { SignatureChecked } from './signature-check';
import type { HandingOver, SignRefusal } from './signing';
import type { StartRefusal } from './start-job';
import type { TakenIn } from './take-in-records';
import type {
  ConditionChange,
  ConditionRefusal,
  NewAdapter,
  NewTool,
  ToolNameTaken,
  WrenchDescription,
} from './tool-board';
import type { Calibration, CalibrationRefusal } from './tool-calibration';
import type { ToolRefusal } from './tool-changes';
import type { Doubt, WrenchTool } from './tool-doubts';
import type { Verified } from './verify-record';
import type { NotWritten } from './write-records';

export type NobodyAtTheStand = { readonly code: 'nobody-at-the-stand' };
export type JobMissing = { readonly code: 'job-missing' };

/** Rows and small facts that follow the disk, the browser and other tabs. */
export interface LivingData {
  readonly rack: RowsStore<JobRow>;
  readonly people: RowsStore<Person>;
  /** With the operations of each wrench as they stand now: entered, and counted since. */
  readonly tools: RowsStore<Tool>;
  readonly figures: RowsStore<KnownFigure>;
  /** What the shop has changed in the catalogue, in order. */
  readonly catalogueVersions: RowsStore<CatalogueVersion>;
  readonly session: SessionStore;
  readonly shop: ShopStore;
  readonly backup: BackupStore;
  /** Whether a newer version of the app waits. */
  readonly update: StoreApi<{ readonly offered: boolean }>;
  readonly install: StoreApi<{ readonly offered: boolean; readonly installed: boolean }>;
  readonly durability: StoreApi<Durability>;
  /** Why nothing can be kept any more, where that is so. */
  readonly trouble: StoreApi<{ readonly refusal?: StorageRefusal }>;
}

export interface JobActions {
  /** Shared by everybody who has it open; each closes it. */
  openJobStore(job: string): Promise<JobStore>;
  /** Answers the new job's id. */
  receiveBox(box: Box): Promise<Result<string, ActRefusal>>;
  /** Resolves the plan for this bike and freezes it. */
  startJob(job: string): Promise<Result<JobState, StartRefusal | NobodyAtTheStand>>;
  /** Reads, keeps nothing. */
  readDeliveryList(text: string): Promise<Result<DeliveryReading, DeliveryListRefusal>>;
  /** All in one transaction; answers how many. */
  keepDeliveries(
    rows: readonly DeliveredBike[],
  ): Promise<Result<number, StorageRefusal | NobodyAtTheStand>>;
  /** By whoever is at the stand. */
  sign(asked: {
    readonly job: string;
    readonly meaning: 'built' | 'checked';
    readonly pin: string;
  }): Promise<Result<JobState, SignRefusal | NobodyAtTheStand>>;
  /** A second pair of eyes on an apprentice's joints, by its own PIN; whoever is at the stand stays there. */
  /** A finding that the bike goes out with, in a supervisor's name. */
  allowFinding(asked: AllowedFinding): Promise<Result<JobState, AllowRefusal>>;
  confirmJoints(asked: ConfirmedJoints): Promise<Result<JobState | undefined, ConfirmRefusal>>;
  handOver(
    asked: HandingOver & { readonly job: string; readonly pin: string },
  ): Promise<Result<JobState, SignRefusal | NobodyAtTheStand>>;
  /** Whether the record is whole and unaltered, as it is on the disk now. */
  checkLog(job: string): Promise<Result<WholeLog, LogDamaged | StorageRefusal>>;
  /** Whether each signature was made by whom it names, over what it names. */
  checkSignatures(job: string): Promise<readonly SignatureChecked[]>;
  /** A compact JWS for the sheet's QR. */
  sealCode(job: string): Promise<Result<string, KeysUnavailable | JobMissing>>;
  /** What the bike of a job is; the one the rack holds under an article number, for example. */
  bikeOf(job: string): Promise<Bike | undefined>;
  findByFrameNumber(text: string): Promise<readonly JobRow[]>;
  customerOf(digest: string): Promise<Customer | undefined>;
  photo(digest: string): Promise<KeptBlob | undefined>;
  /** Scaled and kept; answers its digest. */
  keepPhoto(picked: Blob): Promise<Result<string, StorageRefusal | PhotoNotReadable>>;
}

export interface ShopActions {
  saveFigure(figure: Omit<KnownFigure, 'id'>): Promise<Result<true, StorageRefusal>>;
  removeFigure(id: string): Promise<Result<true, StorageRefusal>>;
  /** A PIN where this device holds no key of theirs; what was signed elsewhere stays good. */
  choosePin(
    person: string,
    pin: string,
  ): Promise<Result<true, StorageRefusal | KeysUnavailable | PinNotUsable | PinHeldAlready>>;
  /** The record stays whole: it holds only a digest of what is erased here. */
  eraseCustomer(digest: string): Promise<Result<true, StorageRefusal>>;
  loadCatalogue(): Promise<ShopCatalogue>;
  loadMarkets(): Promise<readonly MarketRules[]>;
  /** `onProgress` is told how much of the demo is ready. */
  openDemoShop(onProgress?: (done: number, of: number) => void): Promise<Result<true, DemoRefusal>>;
  /** Erases everything first. */
  startOwnShop(own: OwnShop): Promise<Result<Person, OwnShopRefusal>>;
}

export interface FileActions {
  /** Everything the shop has, into the downloads or the chosen folder; private keys and PINs stay behind. */
  saveBackup(
    to: 'download' | 'folder',
    onProgress?: ToldProgress,
  ): Promise<Result<FileWritten, NotWritten | FolderUnavailable>>;
  chooseBackupFolder(): Promise<Result<ChosenFolder, FolderUnavailable | NotWritten>>;
  /** Some records, into the downloads. */
  saveRecords(
    jobs: readonly string[],
    how: { readonly name: string; readonly withCustomers: boolean },
    onProgress?: ToldProgress,
  ): Promise<Result<FileWritten, NotWritten>>;
  /** Verifies every record of a file, and keeps nothing. */
  lookAtFile(file: Blob, onProgress?: ToldProgress): Promise<Result<FileLooked, FileRefusal>>;
  /** Joins the good records of a file to what is held, each all or not at all. */
  takeInRecords(
    looked: FileLooked,
    onProgress?: ToldProgress,
  ): Promise<Result<TakenIn, StorageRefusal>>;
  /** A whole shop, into a book without jobs or in place of the demo. */
  restoreBackup(
    looked: FileLooked,
    onProgress?: ToldProgress,
  ): Promise<Result<TakenIn, RestoreRefusal>>;
  /** The same from a copy in JSON; answers how many jobs. */
  restoreOlderCopy(
    file: Blob,
  ): Promise<
    Result<
      number,
      | CopyRefusal
      | StorageRefusal
      | FileNotText
      | { readonly code: 'shop-not-empty'; readonly jobs: number }
      | { readonly code: 'file-too-large' }
    >
  >;
  /** The code of a hand-over sheet or a day's page. */
  readCode(text: string): Promise<Result<PrintedCode, CodeNotReadable>>;
  /** A sheet's code held against the record on this device, or in a file. */
  verifyHeld(code: SheetCode): Promise<Result<Verified, StorageRefusal>>;
  verifyInFile(looked: FileLooked, code: SheetCode): Promise<Verified>;
  dayPage(): Promise<Result<DayPage, StorageRefusal>>;
}

/** By whoever is at the stand: what happens to a tool is noted with who and when. */
export interface ToolActions {
  addTool(tool: NewTool): Promise<Result<true, StorageRefusal | ToolNameTaken | NobodyAtTheStand>>;
  describeWrench(
    id: string,
    description: WrenchDescription,
  ): Promise<Result<true, ToolRefusal | NobodyAtTheStand>>;
  describeAdapter(adapter: NewAdapter): Promise<Result<true, ToolRefusal | NobodyAtTheStand>>;
  retireAdapter(
    id: string,
    isRetired: boolean,
  ): Promise<Result<true, ToolRefusal | NobodyAtTheStand>>;
  changeCondition(
    change: ConditionChange,
  ): Promise<Result<true, ConditionRefusal | NobodyAtTheStand>>;
  calibrate(calibration: Calibration): Promise<Result<true, CalibrationRefusal | NobodyAtTheStand>>;
  /** Which bikes a doubt about a wrench concerns; reads only jobs on which it was used. */
  reachBackFor(
    tool: WrenchTool,
    doubt: Doubt,
    onProgress?: (done: number, of: number) => void,
  ): Promise<Result<ReachedBack, StorageRefusal | ReachBackRefusal>>;
  callBack(call: CallBack): Promise<Result<true, CallBackRefusal | NobodyAtTheStand>>;
}

export interface CatalogueActions {
  /** By the supervisor at the stand. Tried on every unlike bike first; open jobs keep their frozen plans. */
  changeCatalogue(
    asked: { readonly reason: string; readonly changes: readonly ShopChange[] },
    onTried?: OnTried,
  ): Promise<Result<CatalogueVersion, CatalogueRefusal | NobodyAtTheStand>>;
  /** Bikes as unlike as the catalogue knows them, ordinary ones first. */
  loadBikesToTry(): Promise<readonly Bike[]>;
  /** Downloads all versions. */
  saveCatalogueFile(): Promise<Result<true, StorageRefusal>>;
  /** Reads, keeps nothing: what would come in, and what contradicts. */
  readCatalogueFile(
    text: string,
  ): Promise<
    Result<
      MergedVersions & { readonly versions: readonly CatalogueVersion[] },
      CatalogueFileRefusal | VersionAltered | StorageRefusal
    >
  >;
  /** All of it or nothing; answers how many versions came in. */
  takeInCatalogue(
    taking: TakingIn,
    onTried?: OnTried,
  ): Promise<Result<number, TakeInRefusal | NobodyAtTheStand>>;
}

export interface DeviceActions {
  printSheet(title: string): void;
  askToInstall(): Promise<'accepted' | 'dismissed' | 'not-offered'>;
  /** Reloads the page: only where no work is open. */
  applyUpdate(): void;
  askToKeep(): Promise<void>;
  /** Until the answer is called. */
  keepAwake(): () => void;
  /** The text of a picked file. */
  readTextFile(file: Blob): Promise<Result<string, FileNotText>>;
  /** What a scanner, or a wrench beside every field, types; until the answer is called. */
  onCode(listener: (text: string) => void, by?: 'scanner' | 'wrench'): () => void;
  /** The last day on which a real shop was open here, even when the browser has cleared it since. */
  shopLastSeen(): string | undefined;
  /** That shop is not waited for any more. */
  forgetLostShop(): void;
  /** Whether this browser lets a page write into a folder. */
  readonly canChooseFolder: boolean;
  /** Only where the browser itself reads bar codes. */
  readonly scanPicture?: (picture: ImageBitmapSource) => Promise<readonly string[]>;
  readonly clock: Clock;
  newId(): string;
}

export type App = LivingData &
  JobActions &
  ShopActions &
  ToolActions &
  PeopleActions &
  FileActions &
  CatalogueActions &
  DeviceActions;
