/** Refusals from outside the engine (disk, keys, files), by their codes: what is in the way, and what to do. */

type Facts = Readonly<Record<string, unknown>>;

const text = (value: unknown) => (Array.isArray(value) ? value.join(', ') : String(value ?? ''));

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
  'pin-wrong': () => 'That PIN is not right. Try again.',
  'pin-too-short': () => 'A PIN has six digits.',
  'keys-unavailable': ({ cause }) =>
    `This browser will not keep signing keys (${text(cause)}). Leave the private window, or use another browser.`,
  'person-without-key': () =>
    'This person has no signing key on this device. Add them again in Shop.',
  'heads-moved': () => 'Something was added to the job meanwhile. Look at it, then sign again.',
  'photo-not-readable': () => 'That picture cannot be read. Take another.',
  'shop-not-empty': () =>
    'A copy can be read only into an empty shop, so that nothing is mixed or lost.',
  'copy-not-readable': () => 'This file is not a Standbook copy. Nothing was changed.',
  'list-empty': () => 'The file is empty. Nothing was taken in.',
  'list-not-text': () => 'The file is not a text file. Save the delivery list as CSV.',
  'list-too-large': () => 'The file is too large for a delivery list. Split it and read the parts.',
  'list-header-missing': () => 'The first line must name the columns. Nothing was taken in.',
  'list-columns-unknown': ({ columns }) =>
    `These columns are not known: ${text(columns)}. Correct their names or leave them out.`,
  'list-columns-missing': ({ columns }) => `These columns are missing: ${text(columns)}.`,
  'list-columns-twice': ({ columns }) => `These columns stand twice: ${text(columns)}.`,
  'cell-missing': ({ column }) => `${text(column)} is empty.`,
  'cell-not-allowed': ({ column, value, allowed }) =>
    `${text(column)}: “${text(value)}” is not known. Use one of ${text(allowed)}.`,
  'cell-not-a-number': ({ column, value }) => `${text(column)}: “${text(value)}” is not a number.`,
  'cell-not-a-date': ({ column, value }) =>
    `${text(column)}: “${text(value)}” is not a date. Write 2026-11-28 or 2026-11-28T11:00.`,
  'cell-not-yes-no': ({ column, value }) =>
    `${text(column)}: write yes or no, not “${text(value)}”.`,
  'cell-too-long': ({ column }) => `${text(column)} is too long.`,
  'cell-not-valid': ({ column, value }) => `${text(column)}: “${text(value)}” is not valid.`,
  'gtin-check-digit': ({ value }) =>
    `gtin: the check digit of ${text(value)} is wrong. Scan it again.`,
  'frame-number-twice': ({ value, firstLine }) =>
    `frame_number: ${text(value)} stands already on line ${text(firstLine)}.`,
  'frame-number-known': ({ value }) => `frame_number: ${text(value)} is in the book already.`,
  'row-too-long': () => 'The line has more cells than there are columns.',
  'row-quotes': () => 'The quotation marks on this line do not close.',
  'entry-changed': ({ entry }) => `Entry ${text(entry).slice(0, 12)} has been changed.`,
  'entry-missing': ({ device, seq }) => `Entry ${text(seq)} of device ${text(device)} is missing.`,
  'parent-missing': ({ entry }) => `An entry before ${text(entry).slice(0, 12)} is missing.`,
};
