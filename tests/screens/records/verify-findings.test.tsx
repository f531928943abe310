/** What a person is told after verifying: good or not, what was checked, and what could not be. */

import { render, screen } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import type { Entry } from '../../../src/engine/integrity';
import { emptyJob } from '../../../src/engine/job';
import { RecordLog } from '../../../src/screens/records/record-log';
import {
  findingsOfDay,
  findingsOfDayInFile,
  findingsOfFile,
  findingsOfSheet,
} from '../../../src/screens/records/verify-findings';
import type { DayCode, FileLooked, SheetCode, SignatureChecked } from '../../../src/state';
import { plainNames } from '../../../src/words';
import { fileWords } from '../../../src/words/file-words';

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
    expect(found).toMatchObject({ isGood: true, title: fileWords.verify.wholeSincePrinted });
    expect(found.checked).toEqual([
      fileWords.verify.entries(12),
      fileWords.verify.endPrinted,
      fileWords.verify.after(1),
      fileWords.verify.beside(2),
      fileWords.verify.signedBy('Built', 'Noor'),
      fileWords.verify.codeSigned,
    ]);
    expect(found.unchecked).toEqual([fileWords.verify.clocks, fileWords.verify.truth]);
  });

  test.each<[SignatureChecked['finding'], boolean, string]>([
    ['good-by-its-file', true, fileWords.verify.signedByFile('Built', 'Noor')],
    ['signer-unknown', true, fileWords.verify.signerUnknown('Built', 'Noor')],
    ['signature-wrong', false, fileWords.verify.signatureWrong('Built', 'Noor')],
    ['signature-of-something-else', false, fileWords.verify.signatureWrong('Built', 'Noor')],
  ])('with a signature that is %s', (finding, isGood, sentence) => {
    const found = findingsOfSheet(sheet, whole([signed(finding)]), 'file', nameOf);
    expect(found.isGood).toBe(isGood);
    expect([...found.checked, ...found.unchecked]).toContain(sentence);
  });

  test.each([
    [{ outcome: 'not-here' } as const, 'here' as const, fileWords.verify.notHere],
    [{ outcome: 'not-here' } as const, 'file' as const, fileWords.verify.notInFile],
    [
      { outcome: 'not-what-was-printed' } as const,
      'here' as const,
      fileWords.verify.notWhatWasPrinted,
    ],
    [
      { outcome: 'damaged', refusal: { code: 'entry-changed' } } as const,
      'file' as const,
      fileWords.verify.altered,
    ],
  ])('is not good when %o', (verified, from, title) => {
    const found = findingsOfSheet(sheet, verified as never, from, nameOf); // as the verifier answers
    expect(found).toMatchObject({ isGood: false, title });
    expect(found.checked).not.toContain(fileWords.verify.entries(12));
  });

  test('whose code nobody here has signed says so', () => {
    const found = findingsOfSheet({ ...sheet, isSignedHere: false }, whole([]), 'here', nameOf);
    expect(found.unchecked).toContain(fileWords.verify.codeUnsigned);
  });
});

describe('a day’s page', () => {
  test.each<[string, string | undefined, boolean, string]>([
    ['the book as it is now', day.root, true, fileWords.verify.sameAsNow],
    ['a book that went on', 'c'.repeat(64), false, fileWords.verify.dayNeedsFile],
    ['nothing', undefined, false, fileWords.verify.dayNeedsFile],
  ])('against %s', (_, root, isGood, title) => {
    expect(findingsOfDay(day, root)).toMatchObject({ isGood, title });
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
    ({
      file: { manifest: { digest: { root: day.root, count: 3 } } },
      good: [good],
      refused: [],
      newSigners: [],
      ...changes,
    }) as unknown as FileLooked; // of its file no more is looked at here

  test('that is whole says how much was checked and what was missing', () => {
    const found = findingsOfFile(looked({}), nameOf);
    expect(found).toMatchObject({ isGood: true, title: fileWords.verify.fileWhole(1) });
    expect(found.checked).toContain(fileWords.verify.pictures(2));
    expect(found.unchecked).toContain(fileWords.verify.picturesMissing(1));
    expect(found.unchecked).toContain(fileWords.verify.endUnknown);
  });

  test('held against the page of its day is known to be whole to its end', () => {
    const found = findingsOfDayInFile(day, looked({}), nameOf);
    expect(found).toMatchObject({ isGood: true, title: fileWords.verify.underDay });
    expect(found.checked).toContain(fileWords.verify.endPrinted);
    expect(found.unchecked).not.toContain(fileWords.verify.endUnknown);
  });

  test('held against the page of another day, or damaged itself, is not', () => {
    const other = { ...day, root: 'c'.repeat(64) };
    expect(findingsOfDayInFile(other, looked({}), nameOf)).toMatchObject({
      isGood: false,
      title: fileWords.verify.notUnderDay,
    });
    const refused = [{ job: 'k', refusal: { code: 'record-plan-missing' } }];
    expect(findingsOfDayInFile(day, looked({ refused }), nameOf).isGood).toBe(false);
  });

  test('says how it stands to what is held here, and counts signatures of many', () => {
    const same = { ...good, standing: 'same' } as const;
    const ahead = { ...good, standing: 'ahead' } as const;
    const found = findingsOfFile(looked({ good: [same, same, ahead] }), nameOf);
    expect(found.checked).toEqual(
      expect.arrayContaining([
        fileWords.verify.heldSame(2),
        fileWords.verify.heldOther(1),
        fileWords.verify.signatures(3),
      ]),
    );
  });

  test('with one record that is not says how many, and why', () => {
    const refusal = { code: 'record-log-damaged', damage: { code: 'entry-changed', seq: 4 } };
    const found = findingsOfFile(looked({ refused: [{ job: 'k', refusal }] }), nameOf);
    expect(found).toMatchObject({ isGood: false, title: fileWords.verify.filePartly(1, 2) });
    expect(found.text).toContain('Entry 4');
  });

  test('with a signature that does not hold is not good', () => {
    const forged = { ...good, signatures: [signed('signature-wrong')] };
    expect(findingsOfFile(looked({ good: [good, forged] }), nameOf)).toMatchObject({
      isGood: false,
      title: fileWords.verify.filePartly(1, 2),
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
  const { container } = render(
    <RecordLog entries={[entry]} state={emptyJob()} names={plainNames} />,
  );
  expect(container.querySelector('script, img, [onerror]')).toBeNull();
  expect(screen.getByRole('listitem')).toHaveTextContent('onerror');
});
