/** Browser tests: the built app in real Chromium, at the size of the tablet beside the stand, touched and not clicked. */

import { defineConfig } from '@playwright/test';
import { browserFlags } from './scripts/browser-flags.mjs';
import { findBrowser } from './scripts/find-browser.mjs';

// One port for the whole run: workers read this file again and inherit what the first reading chose.
process.env.STANDBOOK_TEST_PORT ??= String(20_000 + Math.floor(Math.random() * 20_000));
const address = `http://localhost:${process.env.STANDBOOK_TEST_PORT}/`;
const executablePath = await findBrowser();

export default defineConfig({
  testDir: 'tests/browser',
  testMatch: '**/*.spec.ts',
  outputDir: 'test-results',
  forbidOnly: true,
  fullyParallel: true,
  workers: 2,
  timeout: 60_000,
  use: {
    baseURL: address,
    viewport: { width: 1180, height: 820 },
    hasTouch: true,
    screenshot: 'only-on-failure',
    trace: 'off',
    launchOptions: { args: browserFlags, ...(executablePath ? { executablePath } : {}) },
  },
  projects: [{ name: 'chromium', use: { browserName: 'chromium' } }],
  webServer: {
    command: `node scripts/serve.mjs --port ${process.env.STANDBOOK_TEST_PORT}`,
    url: address,
    reuseExistingServer: false,
    timeout: 15_000,
  },
});
