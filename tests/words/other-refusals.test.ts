/** Every refusal from outside the job has a sentence that a person can act on. */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { catalogueWords } from '../../src/words/catalogue';
import { fileRefusals } from '../../src/words/en/file-refusals';
import { otherRefusals } from '../../src/words/en/other-refusals';
import { refusals } from '../../src/words/en/refusals';
import { fileWords as words } from '../../src/words/file-words';

/** Rooms whose refusals reach a screen without passing the job's own gates. */
const rooms = [
  'src/state',
  'src/storage',
  'src/exchange',
  'src/platform',
  'src/engine/integrity',
  'src/engine/tyres',
];

/** Files of a room whose other refusals pass the job's gates or have their words elsewhere. */
const files = ['calibration-result', 'gaps', 'reach-back'].map(
  (name) => `src/engine/torque/${name}.ts`,
);

const sentences = { ...otherRefusals, ...fileRefusals };

const digest = '5f3a9c0e'.repeat(8);
const uuid = '018f3e2a-77aa-7c3e-9d51-0a1b2c3d4e5f';

/** Facts as the rooms give them, all at once: each sentence takes what it needs. */
const facts = {
  cause: 'the disk answered nothing',
  message: 'a step without a plan',
  columns: ['colour_code', 'weight'],
  column: 'front_axle',
  value: 'bolted',
  allowed: ['quick-release', 'thru-axle', 'nutted'],
  line: 4,
  firstLine: 2,
  size: '12 × 9',
  text: '700 x',
  choices: [622, 584],
  printed: [],
  min: 350,
  max: 300,
  limitedBy: 'rim',
  unit: 'mm',
  other: 'rear_axle',
  otherValue: 'nutted',
  seq: 12,
  at: 15,
  since: '2026-02-01',
  until: '2026-01-31',
  index: 3,
  version: 7,
  path: `pictures/${digest}.jpg`,
  limit: 4096,
  records: 3,
  market: 'zz',
  jobs: 3,
  lamport: 9,
  expectedLamport: 8,
  place: `plans.${digest}`,
  id: digest,
  contentId: digest,
  ids: [digest, digest],
  entry: digest,
  before: digest,
  parent: digest,
  head: digest,
  device: uuid,
  job: uuid,
  expectedJob: uuid,
  damage: { code: 'entry-changed', id: digest, contentId: digest, device: uuid, seq: 12 },
};

function sourcesIn(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => readFileSync(join(folder, name), 'utf8'));
}

/** Codes as they are written: `code: 'a' | 'b'`, on one line or many, and the integrity room's `Of<'a', …>`. */
function codesIn(source: string): readonly string[] {
  const unions = source.matchAll(/\bcode:\s*\|?\s*('[a-z-]+'(?:\s*\|\s*'[a-z-]+')*)/g);
  const faults = source.matchAll(/\bOf<('[a-z-]+'),/g);
  return [...unions, ...faults].flatMap(([, found = '']) =>
    [...found.matchAll(/'([a-z-]+)'/g)].map(([, code = '']) => code),
  );
}

const sources = [...rooms.flatMap(sourcesIn), ...files.map((file) => readFileSync(file, 'utf8'))];
const codes = [...new Set(sources.flatMap(codesIn))].sort();

describe('every code of these rooms', () => {
  test('is found in their source', () => {
    expect(codes.length).toBeGreaterThan(55);
    expect(codes).toEqual(
      expect.arrayContaining([
        'storage-full', // alone on its line
        'list-header-missing', // the last of a union on one line
        'frame-number-known', // the last of a union over many lines
        'own-past-unseen', // written as Of<…>
      ]),
    );
  });

  test.each(codes)('%s has a sentence', (code) => {
    const tables = [sentences, refusals, catalogueWords.refusals];
    expect(tables.some((table) => Object.hasOwn(table, code))).toBe(true);
  });

  test('is the only reason for a sentence: none is left over', () => {
    expect(Object.keys(sentences).filter((code) => !codes.includes(code))).toEqual([]);
  });
});

describe.each(Object.keys(sentences))('the sentence for %s', (code) => {
  const full = words.refusal({ ...facts, code });
  const bare = words.refusal({ code });

  test('is a whole sentence, calm, and says nothing that only a machine knows', () => {
    for (const sentence of [full, bare]) {
      expect(sentence).not.toMatch(/undefined|null|\[object|NaN|!/);
      expect(sentence.at(-1)).toBe('.');
    }
    expect(full).not.toMatch(/ {2}|\( *\)/);
    expect(full).toMatch(/^[A-Z“]|^front_axle/); // a column is named as it stands in the file
    expect(full).not.toMatch(/[0-9a-f]{8,}/);
    expect(full).not.toContain(code === 'bug' ? 'bug:' : code);
  });

  test('is not the sentence for what nobody foresaw', () => {
    expect(full).not.toContain('could not be done');
  });
});

test('a code that nobody foresaw is still answered, and says that the work is safe', () => {
  expect(words.refusal({ code: 'moon-too-bright' })).toMatch(/moon-too-bright.*safe/);
});

describe('what a sentence must tell', () => {
  test.each([
    ['which cell and what may stand there', 'cell-not-allowed', ['front_axle', 'nutted', 'bolted']],
    ['between which numbers it lies', 'cell-out-of-bounds', ['front_axle', '350 to 300 mm']],
    ['what it does not go with', 'cells-at-odds', ['front_axle', '“nutted” under rear_axle']],
    ['on which line it stood first', 'frame-number-twice', ['line 2', 'bolted']],
    ['which bead seats a print may mean', 'tyre-size-ambiguous', ['622 and 584 mm', '37-622']],
    ['both ends of an empty window', 'inflation-window-empty', ['350 kPa', '300 kPa']],
    ['which entry was changed', 'entry-changed', ['Entry 12', 'changed']],
    [
      'what is wrong inside a damaged copy',
      'copy-log-damaged',
      ['Entry 12', 'Nothing was changed'],
    ],
    ['where a copy was changed, by its part', 'copy-digest-wrong', ['plans']],
    ['what is wrong with a record in a file', 'record-log-damaged', ['Entry 12', 'Nothing of']],
    ['which part of a record was changed', 'record-part-changed', ['a picture']],
  ])('%s', (_, code, parts) => {
    const sentence = words.refusal({ ...facts, code });
    for (const part of parts) expect(sentence).toContain(part);
  });

  test('a choice is never cut short, however long the list', () => {
    const allowed = ['one', 'two', 'three', 'four', 'five', 'six', 'seven'];
    expect(words.refusal({ ...facts, code: 'cell-not-allowed', allowed })).toContain('seven');
  });
});
