/** Labels of backups, in English; those of record files come with the places that need them. */

import { plural } from './writing';

export const backupLabels = {
  backup: {
    title: 'Backup',
    text: 'One file with every record, photo and person of this shop, to keep on another device. It holds customers’ names: keep it where such things belong.',
    save: 'Save a backup',
    saveInto: (folder: string) => `Save a backup into ${folder}`,
    choose: 'Choose a folder',
    chooseAnother: 'Choose another folder',
    chosen: (folder: string) => `Backups go into the folder ${folder}.`,
    saving: (done: number, of: number) => `Writing record ${done} of ${of}`,
    starting: 'Writing the backup',
    saved: (records: number, size: string) =>
      `${plural(records, 'record')} in one file of ${size}.`,
    inDownloads: 'It is in your downloads.',
    last: (when: string, records: number) =>
      `Last backup: ${when}, with ${plural(records, 'record')}.`,
    never: 'No backup has been taken yet.',
    dueAfter: (days: number) =>
      `The last backup is ${plural(days, 'day')} old, and work has been done since.`,
    open: 'Open a record file',
    day: 'The day’s page',
    unfinished:
      'A backup was being restored and the work was broken off. Open the same file again to finish it.',
    toBackup: 'To the backup',
  },
} as const;
