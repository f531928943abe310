/** Every importer answers whatever it is given; `npm run faults` tries far more. */

import { expect, test } from 'vitest';
import { fuzzImporters } from '../support/importer-fuzz';

const cases = 3000;
const seed = 20261125;
/** Milliseconds: a busy machine. */
const patience = 120_000;

test(
  `${cases} files from seed ${seed} are read or refused in words, and nothing damaged is kept`,
  async () => {
    const { answers } = await fuzzImporters(seed, cases);
    const codes = [...answers.keys()];
    // Otherwise the fuzzer would not reach what it is there for.
    for (const code of [
      'record file, bytes: file-cut-short',
      'record file, members: record-log-damaged',
      'record file, members: file-manifest-malformed',
      'copy: copy-log-damaged',
      'delivery list: read',
      'delivery list: cell-not-allowed',
      'code: code-not-readable',
    ])
      expect(codes).toContain(code);
    expect(codes.length).toBeGreaterThan(25);
  },
  patience,
);
