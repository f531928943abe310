/** What reads and writes record files, fetched from the device at the first file: the rack shows without it. */

import type { FileActions } from './services';

export function filesWhenNeeded(load: () => Promise<FileActions>): FileActions {
  let loaded: Promise<FileActions> | undefined;
  const files = () => {
    loaded ??= load();
    return loaded;
  };
  return {
    saveBackup: async (...asked) => (await files()).saveBackup(...asked),
    chooseBackupFolder: async () => (await files()).chooseBackupFolder(),
    saveRecords: async (...asked) => (await files()).saveRecords(...asked),
    lookAtFile: async (...asked) => (await files()).lookAtFile(...asked),
    takeInRecords: async (...asked) => (await files()).takeInRecords(...asked),
    restoreBackup: async (...asked) => (await files()).restoreBackup(...asked),
    restoreOlderCopy: async (file) => (await files()).restoreOlderCopy(file),
    readCode: async (text) => (await files()).readCode(text),
    verifyHeld: async (code) => (await files()).verifyHeld(code),
    verifyInFile: async (...asked) => (await files()).verifyInFile(...asked),
    dayPage: async () => (await files()).dayPage(),
  };
}
