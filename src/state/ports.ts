/** What the state needs of the world outside; the composition root hands it in. */

import type { Result } from '../engine/base';
import type { Bike } from '../engine/bike';
import type { Point } from '../engine/inspection';
import type { ClaimedTime } from '../engine/integrity';
import type { MarketRules } from '../engine/market';
import type { Catalogue, CatalogueVersion } from '../engine/plan';
import type { Holdings, KeptBlob, Storage } from '../storage/contract';
import type { DemoSeeds } from './demo-seeds';
import type { FilePlaces, PublicKeysOf, RecordFiles } from './file-ports';

export interface Clock {
  now(): ClaimedTime;
  /** The ISO date at the stand. */
  today(): string;
}

/** `seconds` is there when the next try has to wait. */
export type PinWrong = { readonly code: 'pin-wrong'; readonly seconds?: number };
/** Not looked at: too many wrong ones before. */
export type PinWaits = { readonly code: 'pin-waits'; readonly seconds: number };
export type KeysUnavailable = { readonly code: 'keys-unavailable'; readonly cause: string };
/** `signer-unknown`: this device holds no public key of whoever is said to have signed. */
export type SignatureWrong = { readonly code: 'signature-wrong' | 'signer-unknown' };

export type PinRefusal = PinWrong | PinWaits | KeysUnavailable;

export interface Keys {
  createFor(person: string, pin: string): Promise<Result<true, KeysUnavailable>>;
  signAs(person: string, pin: string, payload: unknown): Promise<Result<string, PinRefusal>>;
  /** Whether this is their PIN; a wrong one counts as it does when signing. */
  isPinOf(person: string, pin: string): Promise<Result<true, PinRefusal>>;
  /** Whether this device can sign for them. */
  holds(person: string): Promise<boolean>;
  /** `data` where the browser refuses to keep keys as keys. */
  keptAs(): Promise<Result<'keys' | 'data', KeysUnavailable>>;
  signAsDevice(payload: unknown): Promise<Result<string, KeysUnavailable>>;
  verify(jws: string, person?: string): Promise<Result<unknown, SignatureWrong>>;
  /** By keys that came from elsewhere. */
  verifyWith(jws: string, keys: PublicKeysOf['keys']): Promise<Result<unknown, SignatureWrong>>;
}

/** What the app is born with: steps, joints, contents, points and what markets ask for. */
export interface ShopCatalogue {
  readonly catalogue: Catalogue;
  readonly points: readonly Point[];
  readonly markets: readonly MarketRules[];
}

/** One row of a delivery list that makes a bike. */
export interface DeliveredBike {
  readonly line: number;
  readonly bike: Bike;
  readonly due?: string;
  readonly delivery?: string;
}

export interface RowRefused {
  readonly code: string;
  readonly line: number;
  readonly column?: string;
  readonly value?: string;
  readonly allowed?: readonly string[];
  readonly firstLine?: number;
}

export interface DeliveryReading {
  readonly rows: readonly DeliveredBike[];
  readonly refused: readonly RowRefused[];
}

export interface DeliveryListRefusal {
  readonly code: string;
  readonly columns?: readonly string[];
  readonly size?: number;
  readonly limit?: number;
}

export interface CopyRefusal {
  readonly code: string;
  readonly job?: string;
  readonly place?: string;
}

/** Why a file of catalogue changes is not taken in; `place` is where in it. */
export type CatalogueFileRefusal =
  | { readonly code: 'catalogue-file-too-large'; readonly limit: number }
  | { readonly code: 'catalogue-file-not-readable' }
  | { readonly code: 'catalogue-file-of-another-version'; readonly version: number }
  | { readonly code: 'catalogue-file-malformed'; readonly place: string };

export type FileNotText = { readonly code: 'file-not-text' };
export type PhotoNotReadable = { readonly code: 'photo-not-readable' };

export interface Durability {
  readonly answer: 'kept' | 'may-be-cleared' | 'unknown';
  readonly used?: number;
  readonly allowed?: number;
}

export interface InstallPrompt {
  isOffered(): boolean;
  isInstalled(): boolean;
  ask(): Promise<'accepted' | 'dismissed' | 'not-offered'>;
  onChange(listener: () => void): () => void;
}

export interface OfferedUpdate {
  apply(): void;
}

export interface AppPorts {
  readonly storage: Storage;
  /** Storage that lasts as long as it is held: where the demo is played before it is kept. */
  readonly createScratchStorage: () => Storage;
  readonly clock: Clock;
  readonly newId: () => string;
  /** The id under which this device writes. */
  readonly device: string;
  readonly keys: Keys;
  readonly loadCatalogue: () => Promise<ShopCatalogue>;
  readonly loadDemoSeeds: () => Promise<DemoSeeds>;
  /** Each sound by the catalogue that the app is born with; ordinary ones first. */
  readonly loadBikesToTry: () => Promise<readonly Bike[]>;
  readonly writeCatalogueFile: (file: {
    readonly versions: readonly CatalogueVersion[];
    readonly catalogue: string;
    readonly shop: string;
    readonly at: string;
  }) => Promise<string>;
  readonly readCatalogueFile: (
    text: string,
  ) => Promise<Result<readonly CatalogueVersion[], CatalogueFileRefusal>>;
  readonly readDeliveryList: (
    text: string,
    known: { readonly knownFrameNumbers: ReadonlySet<string>; readonly today: string },
  ) => Promise<Result<DeliveryReading, DeliveryListRefusal>>;
  /** A copy of a shop in one piece of JSON, as earlier versions wrote it. */
  readonly readCopy: (text: string) => Promise<Result<Holdings, CopyRefusal>>;
  /** Fetched at the first file. */
  readonly loadRecordFiles: () => Promise<RecordFiles>;
  readonly filePlaces: FilePlaces;
  readonly readTextFile: (file: Blob) => Promise<Result<string, FileNotText>>;
  readonly printPage: (title: string) => void;
  readonly photoFrom: (picked: Blob) => Promise<Result<KeptBlob, PhotoNotReadable>>;
  readonly readDurability: () => Promise<Durability>;
  readonly askToKeep: () => Promise<Durability>;
  readonly keepAwake: () => () => void;
  /** Messages of devices that type like a keyboard: a scanner anywhere, a wrench beside every field. */
  readonly onScannedCode: (
    listener: (text: string) => void,
    by?: 'scanner' | 'wrench',
  ) => () => void;
  /** Only where the browser itself reads bar codes. */
  readonly pictureScanner?:
    | { codesIn(picture: ImageBitmapSource): Promise<readonly string[]> }
    | undefined;
  readonly install: InstallPrompt;
  readonly watchUpdates: (onOffered: (update: OfferedUpdate) => void) => void;
  /** Calls back when the page is about to be hidden or closed. */
  readonly onLeaving: (listener: () => void) => () => void;
}
