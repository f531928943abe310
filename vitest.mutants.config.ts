/** The tests that answer for one mutated room, and no others: tables first, properties when no table has noticed. */

import { readFileSync } from 'node:fs';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const references: Readonly<Record<string, string>> = {
  units: 'units',
  torque: '{torque-*,guard-bands}',
};

const room = process.env.MUTATED_ROOM ?? 'units';

class QuickestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files))
      .map((file) => ({ file, effort: effortOf(file.moduleId) }))
      .sort((a, b) => a.effort - b.effort)
      .map(({ file }) => file);
  }
}

/** A property tries a hundred cases, mathjs takes a second to load, and some properties fill a file of their own. */
function effortOf(path: string): number {
  const text = readFileSync(path, 'utf8');
  const hasProperties = text.includes("from 'fast-check'");
  if (text.includes("from 'mathjs'") || (hasProperties && /\.\w+\.test\.ts$/.test(path))) return 2;
  return hasProperties ? 1 : 0;
}

export default defineConfig({
  test: {
    environment: 'node',
    include: [`tests/engine/${room}/**/*.test.ts`, `tests/reference/${references[room]}.test.ts`],
    sequence: { sequencer: QuickestFirst },
    // Modules are loaded anew for each mutant, but once for all test files: several times as quick.
    isolate: false,
    testTimeout: 60_000, // it runs behind everything else
  },
});
