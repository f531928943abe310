/** Backups: one tap to a file or into a chosen folder. */

import { ok, type Result, refuse } from '../engine/base';
import { entriesOf, folderSetting, type LastBackup, lastSetting } from './backup-state';
import type {
  ChosenFolder,
  FileWritten,
  FolderUnavailable,
  ToldProgress,
  WithRecordFiles,
} from './file-ports';
import type { AppPorts } from './ports';
import { attempted } from './storage-refusals';
import { fileName, type NotWritten, writeRecords } from './write-records';

export type BackupPorts = Pick<AppPorts, 'storage' | 'clock' | 'device' | 'filePlaces'> &
  WithRecordFiles;

export async function saveBackup(
  ports: BackupPorts,
  to: 'download' | 'folder',
  onProgress?: ToldProgress,
): Promise<Result<FileWritten, NotWritten | FolderUnavailable>> {
  const { storage, clock, filePlaces } = ports;
  const name = fileName(clock.today(), 'backup');
  const before = await attempted(() => storage.rows());
  if (!before.ok) return before;
  const sink = await sinkFor(ports, to, () => filePlaces.download(name, zipType), name);
  if (!sink.ok) return sink;
  const written = await writeRecords(ports, { withCustomers: true }, sink.value, onProgress);
  if (!written.ok) return written;
  const { records, digest } = written.value;
  const entries = entriesOf(before.value);
  const last: LastBackup = { day: clock.today(), records, entries, root: digest.root };
  const noted = await attempted(() => storage.settings.put({ id: lastSetting, value: last }));
  return noted.ok ? written : noted;
}

export const zipType = 'application/zip';

async function sinkFor(
  { storage, filePlaces }: BackupPorts,
  to: 'download' | 'folder',
  download: () => ReturnType<AppPorts['filePlaces']['download']>,
  name: string,
) {
  if (to === 'download') return ok(download());
  const kept = await attempted(() => storage.settings.get(folderSetting));
  if (!kept.ok) return kept;
  const folder = kept.value?.value as ChosenFolder | undefined; // written below and nowhere else
  return folder === undefined
    ? refuse({ code: 'folder-unavailable' } as const)
    : filePlaces.inFolder(folder, name);
}

/** Asks the person for a folder and remembers it. */
export async function chooseFolder({
  storage,
  filePlaces,
}: BackupPorts): Promise<Result<ChosenFolder, FolderUnavailable | NotWritten>> {
  const chosen = await filePlaces.chooseFolder?.();
  if (chosen === undefined) return refuse({ code: 'folder-unavailable' });
  if (!chosen.ok) return chosen;
  const kept = await attempted(() =>
    storage.settings.put({ id: folderSetting, value: chosen.value }),
  );
  return kept.ok ? chosen : kept;
}
