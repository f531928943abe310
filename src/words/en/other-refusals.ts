/** Refusals from outside the job (disk, keys, files, tyres, logs), by their codes: what is in the way, and what to do. */

import { toolRefusals } from './tool-refusals';
import { waitText } from './wait-text';
import { figure, listed } from './writing';

type Facts = Readonly<Record<string, unknown>>;

const text = (value: unknown) =>
  Array.isArray(value) ? listed(value.map(String)) : String(value ?? '');
const number = (value: unknown) => (typeof value === 'number' ? figure(value) : text(value));

export const otherRefusals: Readonly<Record<string, (facts: Facts) => string>> = {
  'storage-full': () =>
    'This device is full, so the last tap was not saved. Free some space, then try again; everything saved before is safe.',
  'storage-blocked': () =>
    'Another tab holds an older Standbook open. Close the other tabs, then try again.',
  'storage-outdated': () =>
    'Another tab runs a newer Standbook. Reload this one; everything saved is safe.',
  'storage-failed': ({ cause }) =>
    `The device could not save the last tap (${text(cause)}). Try again; everything saved before is safe.`,
  'nobody-at-the-stand': () => 'Say who is at the stand first.',
  bug: ({ message }) =>
    `Something in Standbook went wrong (${text(message)}). Your saved work is safe. Reload and try again.`,
  'job-missing': () => 'This job is not on this device.',
  'market-unknown': () =>
    'Standbook knows nothing about the place where this shop sells. Choose it again under Shop.',
  'person-unknown': () => 'This person does not work here any more. Choose somebody else.',
  'pin-held-already': () =>
    'This person has a PIN on this device. A supervisor gives a new one under People.',
  'last-supervisor': () =>
    'Nobody else here is a supervisor, and without one nobody can add people or give a new PIN. Add another supervisor first.',
  'not-a-supervisor': () => 'Only a supervisor may do this. Ask one to come to the stand.',
  'shop-catalogue-faulty': () =>
    'The shop’s changes no longer fit the catalogue, so no job can be opened. A supervisor looks at them under Catalogue.',
  'name-missing': () => 'Write the name first.',
  'pin-not-usable': () =>
    'Choose six digits that are not all the same and do not simply count up or down.',
  'pin-wrong': ({ seconds }) =>
    seconds === undefined
      ? 'That PIN is not right. Try again.'
      : `That PIN is not right. It can be tried again in ${waitText(seconds)}.`,
  'pin-waits': ({ seconds }) =>
    `Too many wrong PINs: the next can be tried in ${waitText(seconds)}. The right one works then, and nothing is lost.`,
  'keys-unavailable': ({ cause }) =>
    `This browser will not keep signing keys (${text(cause)}). Leave the private window, or use another browser.`,
  'signature-wrong': () =>
    'This signature does not belong to what it stands under. Do not rely on it; ask who signed.',
  'photo-not-readable': () => 'That picture cannot be read. Take another.',
  'file-not-text': () => 'This file cannot be read as text. Nothing was changed; choose another.',
  ...copies(),
  ...deliveries(),
  ...tyres(),
  ...toolRefusals,
  ...wrenches(),
  ...logs(),
};

function copies(): typeof otherRefusals {
  const unchanged = 'Nothing was changed. Take a new copy, or use an earlier one.';
  return {
    'shop-not-empty': () =>
      'A copy can be read only into an empty shop, so that nothing is mixed or lost.',
    'copy-not-readable': () => 'This file is not a Standbook copy. Nothing was changed.',
    'copy-of-another-version': () =>
      'This copy was written by another version of Standbook. Update this one, then read it again.',
    'copy-malformed': ({ place }) =>
      `This copy is damaged${/^[a-z]+/i.test(text(place)) ? ` among its ${text(place).split('.')[0]}` : ''}. ${unchanged}`,
    'copy-log-damaged': ({ damage }) =>
      `A record in this copy is not as it was written. ${damageText(damage)} ${unchanged}`,
    'copy-event-malformed': () => `A record in this copy says what no record can. ${unchanged}`,
    'copy-plan-missing': () => `A job in this copy has lost its plan. ${unchanged}`,
    'copy-digest-wrong': ({ place }) =>
      `Something among this copy’s ${text(place).split('.')[0]} has been changed since it was written. ${unchanged}`,
  };
}

/** What the verifier found, when the copy carries its answer. */
export function damageText(damage: unknown): string {
  if (typeof damage !== 'object' || damage === null || !('code' in damage)) return '';
  return otherRefusals[String(damage.code)]?.({ ...damage }) ?? '';
}

function deliveries(): typeof otherRefusals {
  return {
    'list-empty': () => 'The file is empty. Nothing was taken in.',
    'list-not-text': () => 'The file is not a text file. Save the delivery list as CSV.',
    'list-too-large': () =>
      'The file is too large for a delivery list. Split it and read the parts.',
    'list-header-missing': () => 'The first line must name the columns. Nothing was taken in.',
    'list-columns-unknown': ({ columns }) =>
      `These columns are not known: ${text(columns)}. Correct their names or leave them out.`,
    'list-columns-missing': ({ columns }) =>
      `These columns are missing: ${text(columns)}. Add them, then read the list again.`,
    'list-columns-twice': ({ columns }) =>
      `These columns stand twice: ${text(columns)}. Leave one of each.`,
    'row-faulty': () => 'This line cannot be taken in as it is.',
    'row-too-long': () => 'The line has more cells than there are columns.',
    'row-too-short': () => 'The line has fewer cells than there are columns.',
    'row-quotes': () => 'The quotation marks on this line do not close.',
    'cell-missing': ({ column }) => `${text(column)} is empty.`,
    'cell-not-allowed': ({ column, value, allowed }) =>
      `${text(column)}: “${text(value)}” is not known. Use one of ${all(allowed)}.`,
    'cell-not-a-number': ({ column, value }) =>
      `${text(column)}: “${text(value)}” is not a number.`,
    'cell-not-a-date': ({ column, value }) =>
      `${text(column)}: “${text(value)}” is not a date. Write it as 2026-11-28.`,
    'cell-not-yes-no': ({ column, value }) =>
      `${text(column)}: write yes or no, not “${text(value)}”.`,
    'cell-not-valid': ({ column, value }) =>
      column === undefined
        ? 'What this line says does not make a bike.'
        : `${text(column)}: “${text(value)}” cannot be on a bike. ${cellShapes[text(column)] ?? 'Write it in 80 signs or fewer.'}`,
    'cell-out-of-bounds': ({ column, value, min, max, unit = '' }) =>
      `${text(column)}: “${text(value)}” cannot be on a bike. Write a number from ${text(min)} to ${`${text(max)} ${text(unit)}`.trim()}.`,
    'cell-no-tyre-size': ({ column, value }) =>
      `${text(column)}: “${text(value)}” cannot be read as a tyre. Write the size as on the side wall, for example 57-622.`,
    'cell-no-pressure': ({ column, value }) =>
      `${text(column)}: “${text(value)}” cannot be read as a pressure. Write the lower figure first, then the higher, then the unit, for example 40-65 psi.`,
    'cell-pressure-unlikely': ({ column, value }) =>
      `${text(column)}: no bicycle tyre has “${text(value)}” for its greatest pressure. Look at the figure and its unit, for example 40-65 psi or 2.5-5 bar.`,
    'cell-tyre-too-narrow': ({ column, value }) =>
      `${text(column)}: the tyre “${text(value)}” is no wider than rim_inner_width_mm. Look at both again.`,
    'cell-pressure-above-rim': ({ column, value }) =>
      `${text(column)}: “${text(value)}” begins above what the rim may hold. Look at tyre and rim again.`,
    'cells-at-odds': ({ column, value, other, otherValue }) =>
      `${text(column)}: no bike has “${text(value)}” together with “${text(otherValue)}” under ${text(other)}. Look at the bike and correct one of the two.`,
    'date-far-away': ({ column, value }) =>
      `${text(column)}: ${text(value)} is more than two years away. Look at the year.`,
    'gtin-check-digit': ({ column, value }) =>
      `${text(column)}: the check digit of ${text(value)} is wrong. Scan it again.`,
    'frame-number-twice': ({ column, value, firstLine }) =>
      `${text(column)}: ${text(value)} stands already on line ${text(firstLine)}.`,
    'frame-number-known': ({ column, value }) =>
      `${text(column)}: ${text(value)} is in the book already.`,
  };
}

/** What to write in a column whose text has a shape of its own. */
const cellShapes: Readonly<Record<string, string>> = {
  frame_number: 'Write three to thirty letters and digits, as stamped on the frame.',
  gtin: 'Write the 8, 12, 13 or 14 digits under the bar code.',
};

/** Choices are never cut short: the right one may be the last. */
function all(choices: unknown): string {
  return Array.isArray(choices) ? choices.join(', ') : text(choices);
}

const pointFaults: Readonly<Record<string, string>> = {
  'beyond-scale': 'it lies beyond the scale',
  deviation: 'no torque wrench is out by so much',
  uncertainty: 'its uncertainty cannot be',
};

function wrenches(): typeof otherRefusals {
  return {
    'test-points-missing': () => 'Enter at least one test point from the certificate.',
    'test-point-impossible': ({ at, because }) =>
      `The test point at ${number(at)} cannot be right: ${pointFaults[text(because)] ?? 'a number is missing'}. Read it again.`,
    'gaps-impossible': ({ because }) =>
      because === 'too-few'
        ? 'Measure the gap on both sides of the clamp first.'
        : 'A gap is a length of 0 mm or more. Measure again.',
    'period-backwards': ({ since, until }) =>
      `The period from ${text(since)} to ${text(until)} ends before it begins. Look at the dates.`,
  };
}

function tyres(): typeof otherRefusals {
  const example = 'Write it as two numbers from the side wall, for example 37-622.';
  return {
    'tyre-size-missing': ({ text: print }) => `“${text(print)}” has no tyre size in it. ${example}`,
    'tyre-size-unknown': ({ size }) => `No tyre size is called “${text(size)}”. ${example}`,
    'tyre-size-ambiguous': ({ text: print, choices }) =>
      `Tyres of different rims carry “${text(print)}” (bead seats ${text(choices)} mm). ${example}`,
    'tyre-sizes-disagree': ({ text: print }) =>
      `The sizes in “${text(print)}” belong to different rims. Look at the side wall again. ${example}`,
    'pressure-units-disagree': () =>
      'The pressures printed in different units do not agree. Read them again; in doubt the lowest greatest pressure holds until the maker is asked.',
    'tyre-maximum-unknown': () =>
      'The greatest pressure of this tyre is not known. Read it from the side wall; do not guess.',
    'inflation-window-empty': ({ min, max }) =>
      `The tyre asks for at least ${number(min)} kPa and may have at most ${number(max)} kPa here. Do not inflate it: fit a tyre and rim that suit each other.`,
  };
}

function logs(): typeof otherRefusals {
  const place = ({ seq }: Facts) => (seq === undefined ? 'An entry' : `Entry ${text(seq)}`);
  return {
    'entry-malformed': () => 'Something in this record is no entry at all.',
    'entry-changed': (facts) => `${place(facts)} has been changed since it was written.`,
    'entry-missing': (facts) => `${place(facts)} of one tablet is missing.`,
    'entry-of-another-job': (facts) => `${place(facts)} belongs to another job.`,
    'parent-missing': (facts) => `What came just before ${lowerFirst(place(facts))} is missing.`,
    'seq-forked': ({ seq }) =>
      `One tablet wrote two different entries numbered ${text(seq)}. It may have been restored from a backup; both are kept.`,
    'lamport-wrong': (facts) => `${place(facts)} does not stand where it says it was written.`,
    'own-past-unseen': (facts) =>
      `${place(facts)} was written without its own tablet’s earlier entries.`,
    'entry-out-of-order': (facts) =>
      `${place(facts)} does not stand in the order in which it was written.`,
    'entry-after-seal': (facts) =>
      `${place(facts)} was written after the bike was handed over, and is no amendment.`,
    'signer-unknown': (facts) =>
      `${place(facts)} is signed with a key that this tablet does not know, so it cannot say who signed.`,
    'head-missing': () => 'The end of this record is missing.',
    'head-unexpected': () => 'This record goes on further than it was signed or written down.',
  };
}

function lowerFirst(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}
