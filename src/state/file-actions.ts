/** What people do with record files: save, look at, take in, restore, verify. */

import { refuse } from '../engine/base';
import { chooseFolder, saveBackup, zipType } from './backup';
import { dayPage } from './day-page';
import type { WithRecordFiles } from './file-ports';
import { lookAtFile } from './look-at-file';
import type { AppPorts } from './ports';
import { readCode } from './read-code';
import { restoreBackup, restoreOlderCopy } from './restore-backup';
import type { FileActions } from './services';
import type { ShopStore } from './shop';
import { takeInRecords } from './take-in-records';
import { verifyHeld, verifyInFile } from './verify-record';
import { fileName, writeRecords } from './write-records';

export function createFileActions(ports: AppPorts & WithRecordFiles, shop: ShopStore): FileActions {
  return {
    saveBackup: (to, onProgress) => saveBackup(ports, to, onProgress),
    chooseBackupFolder: () => chooseFolder(ports),
    saveRecords(jobs, { name, withCustomers }, onProgress) {
      const sink = ports.filePlaces.download(fileName(ports.clock.today(), name), zipType);
      return writeRecords(ports, { jobs, withCustomers }, sink, onProgress);
    },
    lookAtFile: (file, onProgress) => lookAtFile(ports, file, onProgress),
    takeInRecords: (looked, onProgress) => takeInRecords(ports, looked, onProgress),
    restoreBackup: (looked, onProgress) => restoreBackup(ports, looked, onProgress),
    async restoreOlderCopy(file) {
      if (file.size > largestCopy) return refuse({ code: 'file-too-large' });
      const content = await ports.readTextFile(file);
      return content.ok ? restoreOlderCopy(ports, content.value) : content;
    },
    readCode: (text) => readCode(ports.keys, text),
    verifyHeld: (code) => verifyHeld(ports, code),
    verifyInFile,
    dayPage: () => dayPage(ports, shop.getState().name),
  };
}

/** A copy in one piece of JSON is held in memory whole. */
const largestCopy = 200 * 2 ** 20;
