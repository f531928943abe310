/** The tests that answer for one mutated room, and no others. */

import { defineConfig } from 'vitest/config';

const references: Readonly<Record<string, string>> = {
  units: 'units',
  torque: '{torque-*,guard-bands}',
};

const room = process.env.MUTATED_ROOM ?? 'units';

export default defineConfig({
  test: {
    environment: 'node',
    include: [`tests/engine/${room}/**/*.test.ts`, `tests/reference/${references[room]}.test.ts`],
    // Modules are loaded anew for each mutant, but once for all test files: several times as quick.
    isolate: false,
    testTimeout: 60_000, // it runs behind everything else
  },
});
