/** A file of catalogue changes: what is written is read back, and what is not as published is refused whole. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCatalogueFile, writeCatalogueFile } from '../../src/exchange/catalogue-file';
import { adding, versionOf } from '../support/shop-versions';

const versions = [
  versionOf(1, [adding({ id: 'own-tag', when: { not: { ask: 'kind', is: 'balance' } } })]),
  versionOf(2, [
    { kind: 'change-words', step: 'unpack', words: { how: 'Lift it out, two of you.' } },
    { kind: 'approve-figure', make: 'Any', model: 'One', joint: 'faceplate', figure: { max: 5 } },
  ]),
];
const text = writeCatalogueFile({
  ...{ versions, catalogue: '1.0', shop: 'Saltmarsh Row Bicycles' },
  at: '2026-11-25T15:00:00+00:00',
});

type Loose = { [name: string]: unknown; versions: Record<string, unknown>[] };

function codeOf(content: string): string {
  const read = readCatalogueFile(content);
  return read.ok ? 'read' : read.refusal.code;
}

function changed(change: (file: Loose) => void): string {
  const file = JSON.parse(text) as Loose; // tests reach into it freely
  change(file);
  return JSON.stringify(file);
}

test('what is written is read back', () => {
  expect(readCatalogueFile(text)).toEqual({ ok: true, value: versions });
});

describe('what is refused', () => {
  const deep = `${'['.repeat(100_000)}${']'.repeat(100_000)}`;
  const nested = Array.from({ length: 60 }).reduce<string>(
    (inner) => `{"not":${inner}}`,
    '{"ask":"kind","is":"town"}',
  );
  test.each<[situation: string, content: string, code: string]>([
    ['nothing', '', 'catalogue-file-not-readable'],
    ['a picture', '\u0089PNG\r\n\u001a', 'catalogue-file-not-readable'],
    ['half a file', text.slice(0, -40), 'catalogue-file-not-readable'],
    ['another JSON file', '{"name":"standbook","version":"1"}', 'catalogue-file-not-readable'],
    ['a list', '[1,2]', 'catalogue-file-not-readable'],
    ['a huge file', ' '.repeat(2_000_001), 'catalogue-file-too-large'],
    ['a file of brackets', deep, 'catalogue-file-malformed'],
    [
      'a condition that never ends',
      changed((file) => Object.assign(file.versions[0] ?? {}, { when: '@' })).replace(
        '"@"',
        nested,
      ),
      'catalogue-file-malformed',
    ],
    [
      'a later version',
      changed((file) => Object.assign(file, { version: 2 })),
      'catalogue-file-of-another-version',
    ],
    [
      'a member too many',
      changed((file) => Object.assign(file, { also: 1 })),
      'catalogue-file-malformed',
    ],
    [
      'a version with a member too many',
      changed((file) => Object.assign(file.versions[0] ?? {}, { approved: true })),
      'catalogue-file-malformed',
    ],
    [
      'a change that nobody knows',
      changed((file) => Object.assign(file.versions[0] ?? {}, { changes: [{ kind: 'erase' }] })),
      'catalogue-file-malformed',
    ],
    [
      'writing that runs backwards',
      changed((file) => Object.assign(file.versions[0] ?? {}, { by: 'Petra\u202e' })),
      'catalogue-file-malformed',
    ],
    [
      'a reason of a book’s length',
      changed((file) => Object.assign(file.versions[0] ?? {}, { reason: 'x'.repeat(401) })),
      'catalogue-file-malformed',
    ],
    [
      'a prototype in disguise',
      text.replace('"format"', '"__proto__": {"admin": true}, "format"'),
      'catalogue-file-malformed',
    ],
  ])('%s', (_, content, code) => {
    expect(codeOf(content)).toBe(code);
  });

  test('the place is said, where the file has one', () => {
    const content = changed((file) => Object.assign(file.versions[1] ?? {}, { version: 0 }));
    expect(readCatalogueFile(content)).toEqual({
      ok: false,
      refusal: { code: 'catalogue-file-malformed', place: 'versions.1.version' },
    });
  });

  test('anything at all is answered, never thrown (seed 20261125)', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.json(),
          fc
            .jsonValue()
            .map((v) => changed((f) => Object.assign(f.versions[0] ?? {}, { changes: v }))),
        ),
        (content) => {
          expect(typeof codeOf(content)).toBe('string');
        },
      ),
      { seed: 20261125, numRuns: 500 },
    );
  });

  test('every single character that is lost or doubled is refused or harmless (seed 20261125)', () => {
    fc.assert(
      fc.property(fc.nat(text.length - 1), fc.boolean(), (at, isLost) => {
        const hurt = isLost
          ? text.slice(0, at) + text.slice(at + 1)
          : text.slice(0, at) + text[at] + text.slice(at);
        const read = readCatalogueFile(hurt);
        if (read.ok) expect(read.value).toHaveLength(versions.length);
      }),
      { seed: 20261125, numRuns: 400 },
    );
  });
});
