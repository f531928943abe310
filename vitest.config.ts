/** The unit side of the suite: pure rooms run in Node, rooms that draw run in jsdom. */

import { defineConfig } from 'vitest/config';

const drawnRooms = ['drawing', 'screens', 'print', 'pwa'].map(
  (room) => `tests/${room}/**/*.test.{ts,tsx}`,
);

export default defineConfig({
  test: {
    passWithNoTests: false,
    projects: [
      {
        extends: true,
        test: { name: 'laws', environment: 'node', include: ['tests/architecture/**/*.test.ts'] },
      },
      {
        extends: true,
        test: {
          name: 'node',
          environment: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: [...drawnRooms, 'tests/architecture/**', 'tests/browser/**', 'tests/bench/**'],
        },
      },
      {
        extends: true,
        test: {
          name: 'jsdom',
          environment: 'jsdom',
          include: drawnRooms,
          setupFiles: ['tests/support/jsdom-setup.ts'],
        },
      },
    ],
  },
});
