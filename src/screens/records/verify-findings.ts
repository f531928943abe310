/** What verifying has shown, in words: whether it is good, what was checked, and what could not be. */

import type {
  DayCode,
  FileLooked,
  GoodRecord,
  PrintedCode,
  SheetCode,
  SignatureChecked,
  Verified,
} from '../../state';
import { fileWords } from '../../words/file-words';

export interface Findings {
  readonly isGood: boolean;
  readonly title: string;
  readonly text?: string;
  readonly checked: readonly string[];
  readonly unchecked: readonly string[];
}

type NameOf = (person: string) => string;

const always = [fileWords.verify.clocks, fileWords.verify.truth];

/** A sheet's code held against one record, on this tablet or in a file. */
export function findingsOfSheet(
  code: SheetCode,
  verified: Verified,
  from: 'here' | 'file',
  nameOf: NameOf,
): Findings {
  const by = signerOfCode(code);
  if (verified.outcome === 'not-here')
    return open(from === 'here' ? fileWords.verify.notHere : fileWords.verify.notInFile, by);
  if (verified.outcome === 'not-what-was-printed')
    return {
      isGood: false,
      title: fileWords.verify.notWhatWasPrinted,
      text: fileWords.verify.notWhatWasPrintedText,
      checked: by.checked,
      unchecked: by.unchecked,
    };
  if (verified.outcome === 'damaged') return altered(verified.refusal, by);
  const { entries, after, beside, signatures } = verified;
  const signed = signaturesSaid(signatures, nameOf);
  return {
    isGood: signed.isGood,
    title: signed.isGood ? fileWords.verify.wholeSincePrinted : fileWords.verify.altered,
    checked: [
      fileWords.verify.entries(entries),
      fileWords.verify.endPrinted,
      ...(after > 0 ? [fileWords.verify.after(after)] : []),
      ...(beside > 0 ? [fileWords.verify.beside(beside)] : []),
      ...signed.checked,
      ...by.checked,
    ],
    unchecked: [...signed.unchecked, ...by.unchecked, ...always],
  };
}

/** A file by itself. */
export function findingsOfFile({ good, refused }: FileLooked, nameOf: NameOf): Findings {
  const [only] = good;
  const signed = good.map(({ signatures }) => signaturesSaid(signatures, nameOf));
  const bad = refused.length + signed.filter(({ isGood }) => !isGood).length;
  const isGood = bad === 0;
  const entries = sum(good, (record) => record.entries);
  const missing = sum(good, (record) => record.picturesMissing);
  const pictures = sum(good, (record) => record.pictures);
  const known = sum(good, ({ signatures }) => signatures.filter(isKnown).length);
  const said = good.length === 1 ? signed : signed.filter((record) => !record.isGood);
  return {
    isGood,
    title: isGood
      ? fileWords.verify.fileWhole(good.length)
      : fileWords.verify.filePartly(bad, good.length + refused.length),
    ...(refused[0] && { text: fileWords.refusal({ ...refused[0].refusal }) }),
    checked: [
      fileWords.verify.entries(entries),
      fileWords.verify.end,
      ...(pictures > 0 ? [fileWords.verify.pictures(pictures)] : []),
      ...besideHeld(good),
      ...(good.length > 1 && known > 0 ? [fileWords.verify.signatures(known)] : []),
      ...said.flatMap(({ checked }) => checked),
    ],
    unchecked: [
      ...(only !== undefined && good.length === 1 ? (signed[0]?.unchecked ?? []) : unsure(good)),
      ...(missing > 0 ? [fileWords.verify.picturesMissing(missing)] : []),
      fileWords.verify.endUnknown,
      ...always,
    ],
  };
}

/** A day's page against a file: what the page proves is where each log ended, which no file can prove of itself. */
export function findingsOfDayInFile(code: DayCode, looked: FileLooked, nameOf: NameOf): Findings {
  const by = signerOfCode(code);
  const file = findingsOfFile(looked, nameOf);
  if (!file.isGood) return file;
  if (looked.file.manifest.digest.root !== code.root)
    return {
      isGood: false,
      title: fileWords.verify.notUnderDay,
      checked: [],
      unchecked: by.unchecked,
    };
  return {
    isGood: true,
    title: fileWords.verify.underDay,
    checked: [...file.checked, fileWords.verify.endPrinted, ...by.checked],
    unchecked: [
      ...by.unchecked,
      ...file.unchecked.filter((sentence) => sentence !== fileWords.verify.endUnknown),
    ],
  };
}

/** A day's page against what this tablet holds now, where that could be read. */
export function findingsOfDay(code: DayCode, rootNow: string | undefined): Findings {
  const by = signerOfCode(code);
  if (rootNow !== code.root) return open(fileWords.verify.dayNeedsFile, by);
  return {
    isGood: true,
    title: fileWords.verify.sameAsNow,
    checked: by.checked,
    unchecked: [...by.unchecked, ...always],
  };
}

interface Said {
  readonly checked: readonly string[];
  readonly unchecked: readonly string[];
}

function open(title: string, { checked, unchecked }: Said): Findings {
  return { isGood: false, title, checked, unchecked };
}

function altered(refusal: { readonly code: string }, by: Said): Findings {
  const text = fileWords.refusal({ ...refusal });
  return { isGood: false, title: fileWords.verify.altered, text, ...by };
}

function signerOfCode({ isSignedHere }: PrintedCode): Said {
  return isSignedHere
    ? { checked: [fileWords.verify.codeSigned], unchecked: [] }
    : { checked: [], unchecked: [fileWords.verify.codeUnsigned] };
}

function signaturesSaid(
  signatures: readonly SignatureChecked[],
  nameOf: NameOf,
): Said & { readonly isGood: boolean } {
  const checked: string[] = [];
  const unchecked: string[] = [];
  let isGood = true;
  for (const { meaning, by, name, finding } of signatures) {
    const what = fileWords.verify.meanings[meaning];
    const who = name ?? nameOf(by);
    if (finding === 'good') checked.push(fileWords.verify.signedBy(what, who));
    else if (finding === 'good-by-its-file')
      unchecked.push(fileWords.verify.signedByFile(what, who));
    else if (finding === 'signer-unknown')
      unchecked.push(fileWords.verify.signerUnknown(what, who));
    else {
      isGood = false;
      checked.push(fileWords.verify.signatureWrong(what, who));
    }
  }
  return { isGood, checked, unchecked };
}

/** Of many records only who signed is told, once each. */
function unsure(good: readonly GoodRecord[]): readonly string[] {
  const said = new Set<string>();
  for (const { meaning, by, name, finding } of good.flatMap(({ signatures }) => signatures)) {
    const what = fileWords.verify.meanings[meaning];
    if (finding === 'good-by-its-file') said.add(fileWords.verify.signedByFile(what, name ?? by));
    if (finding === 'signer-unknown') said.add(fileWords.verify.signerUnknown(what, name ?? by));
  }
  return [...said];
}

function isKnown({ finding }: SignatureChecked): boolean {
  return finding === 'good';
}

/** How the file's records stand to those that this tablet holds itself. */
function besideHeld(good: readonly GoodRecord[]): readonly string[] {
  const same = good.filter(({ standing }) => standing === 'same').length;
  const other = good.filter(({ standing }) => standing !== 'same' && standing !== 'new').length;
  return [
    ...(same > 0 ? [fileWords.verify.heldSame(same)] : []),
    ...(other > 0 ? [fileWords.verify.heldOther(other)] : []),
  ];
}

function sum(records: readonly GoodRecord[], count: (record: GoodRecord) => number): number {
  return records.reduce((total, record) => total + count(record), 0);
}
