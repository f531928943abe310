/** What a person is told after verifying: good or not, what was checked, and what could not be. */

import { render, screen } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import type { Entry } from '../../../src/engine/integrity';
import { RecordLog } from '../../../src/screens/records/record-log';
import {
  findingsOfDay,
  findingsOfFile,
  findingsOfSheet,
} from '../../../src/screens/records/verify-findings';
import type { DayCode, FileLooked, SheetCode, SignatureChecked } from '../../../src/state';
import { plainNames, words } from '../../../src/words';

const sheet: SheetCode = {
  kind: 'sheet',
  job: 'j',
  frame: 'F1',
  heads: ['a'.repeat(64)],
  on: '2026-11-25',
  isSignedHere: true,
};
const day: DayCode = {
  kind: 'day',
  shop: 'S',
  root: 'b'.repeat(64),
  count: 3,
  on: '2026-11-25',
  isSignedHere: false,
};
const nameOf = (id: string) => id;

function signed(finding: SignatureChecked['finding']): SignatureChecked {
  return { entry: 'e', meaning: 'built', by: 'p1', name: 'Noor', finding };
}

function whole(signatures: readonly SignatureChecked[]) {
  return { outcome: 'whole', entries: 12, after: 1, beside: 2, signatures } as const;
}

describe('a sheet', () => {
  test('that agrees with its record is good, and what no seal can show is said', () => {
    const found = findingsOfSheet(sheet, whole([signed('good')]), 'here', nameOf);
    expect(found).toMatchObject({ isGood: true, title: words.verify.wholeSincePrinted });
    expect(found.checked).toEqual([
      words.verify.entries(12),
      words.verify.after(1),
      words.verify.beside(2),
      words.verify.signedBy('Built', 'Noor'),
      words.verify.codeSigned,
    ]);
    expect(found.unchecked).toEqual([words.verify.clocks, words.verify.truth]);
  });

  test.each<[SignatureChecked['finding'], boolean, string]>([
    ['good-by-its-file', true, words.verify.signedByFile('Built', 'Noor')],
    ['signer-unknown', true, words.verify.signerUnknown('Built', 'Noor')],
    ['signature-wrong', false, words.verify.signatureWrong('Built', 'Noor')],
    ['signature-of-something-else', false, words.verify.signatureWrong('Built', 'Noor')],
  ])('with a signature that is %s', (finding, isGood, sentence) => {
    const found = findingsOfSheet(sheet, whole([signed(finding)]), 'file', nameOf);
    expect(found.isGood).toBe(isGood);
    expect([...found.checked, ...found.unchecked]).toContain(sentence);
  });

  test.each([
    [{ outcome: 'not-here' } as const, 'here' as const, words.verify.notHere],
    [{ outcome: 'not-here' } as const, 'file' as const, words.verify.notInFile],
    [{ outcome: 'not-what-was-printed' } as const, 'here' as const, words.verify.notWhatWasPrinted],
    [
      { outcome: 'damaged', refusal: { code: 'entry-changed' } } as const,
      'file' as const,
      words.verify.altered,
    ],
  ])('is not good when %o', (verified, from, title) => {
    const found = findingsOfSheet(sheet, verified as never, from, nameOf); // as the verifier answers
    expect(found).toMatchObject({ isGood: false, title });
    expect(found.checked).not.toContain(words.verify.entries(12));
  });

  test('whose code nobody here has signed says so', () => {
    const found = findingsOfSheet({ ...sheet, isSignedHere: false }, whole([]), 'here', nameOf);
    expect(found.unchecked).toContain(words.verify.codeUnsigned);
  });
});

describe('a day’s page', () => {
  test.each<[string, Parameters<typeof findingsOfDay>[1], boolean, string]>([
    ['its own backup', { root: day.root, isFile: true }, true, words.verify.underDay],
    ['another file', { root: 'c'.repeat(64), isFile: true }, false, words.verify.notUnderDay],
    ['the book as it is now', { root: day.root, isFile: false }, true, words.verify.sameAsNow],
    [
      'a book that went on',
      { root: 'c'.repeat(64), isFile: false },
      false,
      words.verify.dayNeedsFile,
    ],
    ['nothing', undefined, false, words.verify.dayNeedsFile],
  ])('against %s', (_, against, isGood, title) => {
    expect(findingsOfDay(day, against)).toMatchObject({ isGood, title });
  });
});

describe('a file', () => {
  const good = {
    job: 'j',
    frameNumber: 'F1',
    make: 'M',
    model: 'N',
    heads: [],
    entries: 12,
    standing: 'new',
    added: 12,
    forks: 0,
    isHandedOver: true,
    signatures: [signed('good')],
    pictures: 2,
    picturesMissing: 1,
  } as const;
  const looked = (changes: Partial<FileLooked>): FileLooked =>
    ({ good: [good], refused: [], newSigners: [], ...changes }) as FileLooked; // its file is not looked into here

  test('that is whole says how much was checked and what was missing', () => {
    const found = findingsOfFile(looked({}), nameOf);
    expect(found).toMatchObject({ isGood: true, title: words.verify.fileWhole(1) });
    expect(found.checked).toContain(words.verify.pictures(2));
    expect(found.unchecked).toContain(words.verify.picturesMissing(1));
  });

  test('with one record that is not says how many, and why', () => {
    const refusal = { code: 'record-log-damaged', damage: { code: 'entry-changed', seq: 4 } };
    const found = findingsOfFile(looked({ refused: [{ job: 'k', refusal }] }), nameOf);
    expect(found).toMatchObject({ isGood: false, title: words.verify.filePartly(1, 2) });
    expect(found.text).toContain('Entry 4');
  });

  test('with a signature that does not hold is not good', () => {
    const forged = { ...good, signatures: [signed('signature-wrong')] };
    expect(findingsOfFile(looked({ good: [good, forged] }), nameOf)).toMatchObject({
      isGood: false,
      title: words.verify.filePartly(1, 2),
    });
  });
});

test('what somebody wrote into a record is shown as letters, whatever it looks like', () => {
  const bite = '<img src=x onerror="document.title=1"><script>document.title=1</script>';
  const entry = {
    id: 'a'.repeat(64),
    at: { claimed: '2026-11-25T10:00:00+00:00', zone: bite },
    by: bite,
    event: { kind: bite, v: 1, text: bite, reason: bite, step: bite },
  } as unknown as Entry; // as it might come out of a file
  const { container } = render(<RecordLog entries={[entry]} names={plainNames} />);
  expect(container.querySelector('script, img, [onerror]')).toBeNull();
  expect(screen.getByRole('listitem')).toHaveTextContent('onerror');
});
