/** Labels of record files, the day's page and the place where records are verified, in English. */

import { plural } from './writing';

const entry = (count: number) => plural(count, 'entry', 'entries');

export const recordFileLabels = {
  takeIn: {
    title: 'Record file',
    text: 'Records from another tablet, or a backup. Everything in the file is verified before anything is kept.',
    choose: 'Choose the file',
    looking: (done: number, of: number) => `Verifying record ${done} of ${of}`,
    opening: 'Opening the file',
    from: (shop: string, when: string) => `Written by ${shop} on ${when}.`,
    fromNobody: 'a shop without a name',
    good: (count: number) => `${plural(count, 'record')} verified`,
    bad: (count: number) => `${plural(count, 'record')} refused`,
    standing: {
      new: (added: number) => `new here, ${entry(added)}`,
      same: () => 'held here already, the same',
      behind: () => 'held here already, and further on',
      ahead: (added: number) => `goes on: ${entry(added)} more`,
      apart: (added: number) => `written apart: ${entry(added)} to join`,
    },
    newSigners: (names: string) =>
      `The file brings public keys that this tablet has not seen before: ${names}. Take it in only if you know where the file comes from.`,
    ofADevice: 'another tablet',
    take: (count: number) => `Take in ${plural(count, 'record')}`,
    nothing: 'Everything in this file is here already.',
    taking: (done: number, of: number) => `Taking in record ${done} of ${of}`,
    taken: (fresh: number, grown: number, known: number) =>
      `${plural(fresh, 'record')} new, ${grown} grown, ${known} known already.`,
    refusedNow: (count: number) => `${plural(count, 'record')} could not be joined:`,
    restore: 'Restore this shop here',
    restoreDemo: 'Erase the demo and restore this shop here',
    restoreText:
      'The file is a whole shop, and this book has no records of its own. Restoring brings its people, tools and customers as well.',
    restored: (records: number) => `${plural(records, 'record')} restored.`,
    pins: 'Who works at this tablet?',
    pinsText:
      'Private keys and PINs never leave a tablet, so each person chooses a PIN here once. Everything signed before stays good.',
    pinFor: (name: string) => `PIN of six digits for ${name}`,
    pinButton: 'Keep the PIN',
    pinKept: 'PIN chosen',
    toRack: 'To the rack',
    older: 'This is a copy from an earlier Standbook, in one piece.',
    olderText:
      'It is verified, then takes the place of the demo or of a book without records; people entered here so far are replaced by those of the copy.',
  },
  verify: {
    title: 'Verify a record',
    text: 'Scan the code of a hand-over sheet or a day’s page, or paste it. Open a record file to verify what is in it. Nothing is sent anywhere.',
    link: 'Verify a sheet or a file',
    code: 'The code',
    codeHint: 'A scanner can type it here. Spaces and line breaks do not matter.',
    picture: 'Read it from a photo',
    noCode: 'There is no code to be read in this picture.',
    check: 'Verify the code',
    file: 'Open a record file',
    another: 'Begin again',
    checking: 'Verifying',
    sheetSays: (frame: string, when: string) =>
      `The sheet is for frame ${frame}, printed on ${when}.`,
    daySays: (shop: string, count: number, when: string) =>
      `The day’s page is of ${shop}, ${when}, over ${plural(count, 'record')}.`,
    whole: 'This record is unaltered.',
    wholeSincePrinted: 'This record is unaltered since the sheet was printed.',
    fileWhole: (count: number) =>
      count === 1
        ? 'The record in this file is unaltered.'
        : `All ${count} records in this file are unaltered.`,
    filePartly: (bad: number, of: number) => `${bad} of ${of} records in this file are altered.`,
    altered: 'This record has been altered.',
    notWhatWasPrinted: 'This record is not what the sheet was printed from.',
    notWhatWasPrintedText:
      'Either the sheet or the record is not genuine, or they belong to different bikes.',
    notHere:
      'This tablet does not hold the record, so the code alone proves nothing. Open the record file as well.',
    notInFile: 'The file does not hold the record of this sheet.',
    underDay:
      'Every record in the file stood exactly like this under the digest of the day’s page.',
    notUnderDay:
      'The file was written under another digest than the day’s page. Open the backup of that day.',
    dayNeedsFile:
      'A day’s page is held against a file: open the backup of that day, or a record saved on it.',
    sameAsNow: 'It is also the digest of everything this tablet holds now.',
    checked: 'What was checked',
    unchecked: 'What could not be checked',
    entries: (count: number) =>
      `Every digest and link of ${entry(count)}: nothing was changed, left out, moved or slipped in.`,
    end: 'Each log ends where the file says it does.',
    endUnknown:
      'That no end was cut off before the file was written: only a code that was printed earlier, of a sheet or a day’s page, can show that.',
    endPrinted: 'Everything that stood in the record when the code was printed stands in it still.',
    signatures: (count: number) =>
      `${plural(count, 'signature')}, each with a key that this tablet knows.`,
    heldSame: (count: number) =>
      count === 1
        ? 'It is the same as the record held here.'
        : `${count} records are the same as those held here.`,
    heldOther: (count: number) =>
      count === 1
        ? 'The record held here is further on, or not as far; nothing in them contradicts the other.'
        : `${count} records held here are further on, or not as far; nothing in them contradicts the others.`,
    after: (count: number) => `${entry(count)} came after the sheet was printed.`,
    beside: (count: number) =>
      `${entry(count)} from another tablet, which the printing one had not seen.`,
    signedBy: (what: string, name: string) => `${what}: signed by ${name}.`,
    signedByFile: (what: string, name: string) =>
      `${what}: the signature holds with the key that came with the file. This tablet does not know that it is ${name}’s.`,
    signerUnknown: (what: string, name: string) =>
      `${what}: no key of ${name} is known here, so the signature could not be checked.`,
    signatureWrong: (what: string, name: string) =>
      `${what}: the signature under the name of ${name} does not hold.`,
    pictures: (count: number) => `${plural(count, 'picture')}, byte for byte.`,
    picturesMissing: (count: number) =>
      `${plural(count, 'picture')} that the record names ${count === 1 ? 'is' : 'are'} not in the file.`,
    codeSigned: 'The code was signed by a tablet of this shop.',
    codeUnsigned:
      'The code is not signed by a tablet that this one knows, so anybody could have made it.',
    clocks: 'Dates and times are what the tablets’ clocks claimed.',
    truth:
      'That what was written down is what was done: a seal shows no more than that nobody changed it.',
    meanings: { built: 'Built', checked: 'Checked', received: 'Handed over' },
    save: 'Save this record',
    saved: 'The record is in your downloads. It holds no customer’s name.',
  },
  dayPage: {
    title: 'The day’s page',
    text: 'One digest over every record as it stands now. Print it, sign it, and keep it where nobody can change it: any later change to any of these records would give another digest.',
    print: 'Print the page',
    digest: 'Digest',
    over: (count: number, time: string) => `over ${plural(count, 'record')}, at ${time}`,
    worked: 'Worked on today',
    none: 'Nothing was worked on today.',
    frame: 'Frame number',
    bike: 'Bike',
    record: 'Record',
    state: 'State',
    end: 'Ends with',
    how: 'SHA-256, Merkle tree after RFC 9162. Each backup and each saved record carries the proof that it stood under such a digest; “Verify” under Records holds them against this page.',
    code: 'Code of this page',
    signed: 'Printed name, signature',
  },
} as const;
