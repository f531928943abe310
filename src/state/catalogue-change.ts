/** A change of the catalogue on its way in: what is asked, and why it may be refused. */

import type {
  CatalogueVersion,
  ChangeForbidden,
  ChangeUnmet,
  PlanUnsound,
  VersionAltered,
} from '../engine/plan';
import type { StorageRefusal } from '../storage/contract';

export type CatalogueRefusal =
  | StorageRefusal
  | ChangeForbidden
  | ChangeUnmet
  | PlanUnsound
  | { readonly code: 'catalogue-for-supervisors' }
  | { readonly code: 'catalogue-reason-missing' };

export type TakeInRefusal =
  | CatalogueRefusal
  | VersionAltered
  | { readonly code: 'catalogue-nothing-new' }
  | { readonly code: 'catalogue-undecided'; readonly subjects: readonly string[] };

export interface TakingIn {
  readonly versions: readonly CatalogueVersion[];
  /** For each subject that both sides changed: whose change stands. */
  readonly decided: Readonly<Record<string, 'mine' | 'theirs'>>;
  readonly reason: string;
}

export type OnTried = (done: number, of: number) => void;
