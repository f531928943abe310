/** When the book was last backed up, where to, and whether the next backup is due. */

import { createStore, type StoreApi } from 'zustand/vanilla';
import type { JobRow, Setting, Storage } from '../storage/contract';
import { daysBetween } from './calendar-days';
import type { ChosenFolder } from './file-ports';

/** Common practice, no source: a week of work is the most that anybody should have to do again. */
export const daysBetweenBackups = 7;

export interface LastBackup {
  /** ISO date. */
  readonly day: string;
  readonly records: number;
  /** All entries the shop had then: more now means that something has happened since. */
  readonly entries: number;
  readonly root: string;
}

export interface BackupState {
  readonly loaded: boolean;
  readonly last?: LastBackup;
  /** The folder a person has chosen for it. */
  readonly folder?: ChosenFolder;
  /** A restore was begun and not finished. */
  readonly isRestoring: boolean;
}

export type BackupStore = StoreApi<BackupState>;

export const lastSetting = 'backup';
export const folderSetting = 'backup-folder';
/** While this setting is there, a restore was begun and not finished: the same file finishes it. */
export const restoringSetting = 'restoring';

export function createBackupStore(settings: Storage['settings']): BackupStore {
  const store = createStore<BackupState>(() => ({ loaded: false, isRestoring: false }));
  settings.watch((rows) => store.setState(stateFrom(rows), true));
  return store;
}

function stateFrom(rows: readonly Setting[]): BackupState {
  const kept = (id: string) => rows.find((row) => row.id === id)?.value;
  const last = kept(lastSetting) as LastBackup | undefined; // written below and nowhere else
  const folder = kept(folderSetting) as ChosenFolder | undefined; // as above
  return {
    loaded: true,
    ...(last && { last }),
    ...(folder && { folder }),
    isRestoring: kept(restoringSetting) !== undefined,
  };
}

/** Days since the last backup when that is too long and something has happened; `never` when there was none. */
export function backupDue(
  { loaded, last }: BackupState,
  rows: readonly JobRow[],
  today: string,
): number | 'never' | undefined {
  const entries = entriesOf(rows);
  if (!loaded || entries === 0) return undefined;
  if (last === undefined) return 'never';
  const days = daysBetween(last.day, today);
  return entries !== last.entries && days >= daysBetweenBackups ? days : undefined;
}

export function entriesOf(rows: readonly JobRow[]): number {
  return rows.reduce((sum, { count }) => sum + count, 0);
}
