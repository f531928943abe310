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
import { words } from '../../words';

export interface Findings {
  readonly isGood: boolean;
  readonly title: string;
  readonly text?: string;
  readonly checked: readonly string[];
  readonly unchecked: readonly string[];
}

type NameOf = (person: string) => string;

const always = [words.verify.clocks, words.verify.truth];

/** A sheet's code held against one record, on this tablet or in a file. */
export function findingsOfSheet(
  code: SheetCode,
  verified: Verified,
  from: 'here' | 'file',
  nameOf: NameOf,
): Findings {
  const by = signerOfCode(code);
  if (verified.outcome === 'not-here')
    return open(from === 'here' ? words.verify.notHere : words.verify.notInFile, by);
  if (verified.outcome === 'not-what-was-printed')
    return {
      isGood: false,
      title: words.verify.notWhatWasPrinted,
      text: words.verify.notWhatWasPrintedText,
      checked: by.checked,
      unchecked: by.unchecked,
    };
  if (verified.outcome === 'damaged') return altered(verified.refusal, by);
  const { entries, after, beside, signatures } = verified;
  const signed = signaturesSaid(signatures, nameOf);
  return {
    isGood: signed.isGood,
    title: signed.isGood ? words.verify.wholeSincePrinted : words.verify.altered,
    checked: [
      words.verify.entries(entries),
      ...(after > 0 ? [words.verify.after(after)] : []),
      ...(beside > 0 ? [words.verify.beside(beside)] : []),
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
  const said = good.length === 1 ? signed : signed.filter((record) => !record.isGood);
  return {
    isGood,
    title: isGood
      ? words.verify.fileWhole(good.length)
      : words.verify.filePartly(bad, good.length + refused.length),
    ...(refused[0] && { text: words.refusal({ ...refused[0].refusal }) }),
    checked: [
      words.verify.entries(entries),
      words.verify.end,
      ...(pictures > 0 ? [words.verify.pictures(pictures)] : []),
      ...said.flatMap(({ checked }) => checked),
    ],
    unchecked: [
      ...(only !== undefined && good.length === 1 ? (signed[0]?.unchecked ?? []) : unsure(good)),
      ...(missing > 0 ? [words.verify.picturesMissing(missing)] : []),
      ...always,
    ],
  };
}

/** A day's page against a file, or against what this tablet holds now. */
export function findingsOfDay(
  code: DayCode,
  against: { readonly root: string; readonly isFile: boolean } | undefined,
): Findings {
  const by = signerOfCode(code);
  const isSame = against?.root === code.root;
  if (!isSame && against?.isFile)
    return { isGood: false, title: words.verify.notUnderDay, checked: [], unchecked: by.unchecked };
  if (!isSame) return open(words.verify.dayNeedsFile, by);
  return {
    isGood: true,
    title: against.isFile ? words.verify.underDay : words.verify.sameAsNow,
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
  const text = words.refusal({ ...refusal });
  return { isGood: false, title: words.verify.altered, text, ...by };
}

function signerOfCode({ isSignedHere }: PrintedCode): Said {
  return isSignedHere
    ? { checked: [words.verify.codeSigned], unchecked: [] }
    : { checked: [], unchecked: [words.verify.codeUnsigned] };
}

function signaturesSaid(
  signatures: readonly SignatureChecked[],
  nameOf: NameOf,
): Said & { readonly isGood: boolean } {
  const checked: string[] = [];
  const unchecked: string[] = [];
  let isGood = true;
  for (const { meaning, by, name, finding } of signatures) {
    const what = words.verify.meanings[meaning];
    const who = name ?? nameOf(by);
    if (finding === 'good') checked.push(words.verify.signedBy(what, who));
    else if (finding === 'good-by-its-file') unchecked.push(words.verify.signedByFile(what, who));
    else if (finding === 'signer-unknown') unchecked.push(words.verify.signerUnknown(what, who));
    else {
      isGood = false;
      checked.push(words.verify.signatureWrong(what, who));
    }
  }
  return { isGood, checked, unchecked };
}

/** Of many records only who signed is told, once each. */
function unsure(good: readonly GoodRecord[]): readonly string[] {
  const said = new Set<string>();
  for (const { meaning, by, name, finding } of good.flatMap(({ signatures }) => signatures)) {
    const what = words.verify.meanings[meaning];
    if (finding === 'good-by-its-file') said.add(words.verify.signedByFile(what, name ?? by));
    if (finding === 'signer-unknown') said.add(words.verify.signerUnknown(what, name ?? by));
  }
  return [...said];
}

function sum(records: readonly GoodRecord[], count: (record: GoodRecord) => number): number {
  return records.reduce((total, record) => total + count(record), 0);
}
