/** Refusals of record files, by their codes: what is wrong with the file, and that nothing of it was kept. */

import { damageText } from './other-refusals';

type Facts = Readonly<Record<string, unknown>>;
type Sentences = Readonly<Record<string, (facts: Facts) => string>>;

const unchanged = 'Nothing of it was kept. Fetch the file again, or use an earlier one.';
const recordKept = 'Nothing of this record was kept.';

/** The folder of a member says what it is; the rest of its name only a machine reads. */
function part({ path }: Facts): string {
  const folder = String(path ?? '').split('/')[0];
  const parts: Readonly<Record<string, string>> = {
    logs: 'a log',
    plans: 'a plan',
    pictures: 'a picture',
    'people.json': 'the list of people',
    'customers.json': 'the list of customers',
    'shop.json': 'the tool board',
    'index.csv': 'the index',
    'manifest.json': 'the list of its contents',
  };
  return parts[folder ?? ''] ?? 'something';
}

export const fileRefusals: Sentences = {
  'file-not-a-record-file': () =>
    'This is not a file of records that Standbook has written. Nothing was changed.',
  'file-cut-short': () => `This file is cut short: its end is missing. ${unchanged}`,
  'file-swollen': () =>
    `This file claims to hold far more than it can. It was not opened any further. ${unchanged}`,
  'file-directory-damaged': () => `The list of what this file holds is damaged. ${unchanged}`,
  'file-path-forbidden': () =>
    `This file names something outside itself, which no record file does. ${unchanged}`,
  'file-feature-unknown': () =>
    `This file is packed or locked in a way that Standbook never uses. ${unchanged}`,
  'file-members-overlap': () =>
    `This file holds the same bytes under several names, which no record file does. ${unchanged}`,
  'file-member-damaged': (facts) => `In this file ${part(facts)} is damaged. ${unchanged}`,
  'file-member-too-large': (facts) =>
    `In this file ${part(facts)} is larger than it can be. ${unchanged}`,
  'file-member-missing': (facts) => `In this file ${part(facts)} is missing. ${unchanged}`,
  'file-member-unnamed': () => `This file holds something that it does not tell of. ${unchanged}`,
  'file-member-changed': (facts) =>
    `In this file ${part(facts)} has been changed since it was written. ${unchanged}`,
  'file-of-another-version': () =>
    'This file was written by another version of Standbook. Update this one, then open it again.',
  'file-manifest-malformed': () =>
    `The list of what this file holds says what no list can. ${unchanged}`,
  'file-part-malformed': (facts) => `In this file ${part(facts)} says what it cannot. ${unchanged}`,
  'file-record-twice': () => `This file holds one record twice. ${unchanged}`,
  'file-proof-wrong': () =>
    `A record in this file did not stand under the digest that the file names. ${unchanged}`,
  'file-too-large-to-write': () =>
    'These records do not fit into one file. Save them in several parts.',
  'file-not-written': () =>
    'The file could not be written: the place may be full or gone. Free some space or choose another place, then save again.',
  'file-not-a-backup': () =>
    'This file holds single records, not a whole shop. Take the records in instead.',
  'file-too-large': () => 'This file is too large for a copy of a shop. Nothing was changed.',
  'folder-unavailable': () =>
    'The folder could not be opened. Choose it again, or save into the downloads.',
  'code-not-readable': () =>
    'This is not the code of a hand-over sheet or of a day’s page. Scan it again, or paste the whole of it.',
  ...records(),
};

function records(): Sentences {
  return {
    'record-not-in-file': () => 'This record is not in the file.',
    'record-without-a-bike': () => `This record never received a bike. ${recordKept}`,
    'record-part-changed': (facts) =>
      `Of this record ${part(facts)} has been changed since it was written. ${recordKept}`,
    'record-too-long': () => `This record is longer than any job can be. ${recordKept}`,
    'record-log-damaged': ({ damage }) =>
      `This record is not as it was written. ${[damageText(damage), recordKept].filter(Boolean).join(' ')}`,
    'record-event-malformed': () => `This record says what no record can. ${recordKept}`,
    'record-plan-missing': () => `This record has lost its plan. ${recordKept}`,
    'record-picture-forbidden': () =>
      `A picture of this record is not a picture, or does more than show itself. ${recordKept}`,
  };
}
