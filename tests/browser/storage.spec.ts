/** Storage keeps its contract in a real browser, and tabs of one device see each other. */

import { fileURLToPath } from 'node:url';
import { expect, type Page, test } from '@playwright/test';
import { build } from 'vite';
import { storageContract } from '../support/storage-contract';
import type { StorageSuite } from './fixtures/storage-suite';

declare const storageSuite: StorageSuite; // set inside the page by the bundle

let bundle: string;

test.beforeAll(async () => {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      lib: {
        entry: fileURLToPath(new URL('./fixtures/storage-suite.ts', import.meta.url)),
        formats: ['iife'],
        name: 'suite',
      },
    },
  });
  const [first] = Array.isArray(built) ? built : [built];
  if (first === undefined || !('output' in first)) throw new Error('nothing was built');
  bundle = first.output[0].code;
});

/** Any page of the server has the origin; the bundle is put in from outside, past the page's security policy. */
async function openSuite(page: Page): Promise<void> {
  await page.goto('robots.txt');
  await page.evaluate(bundle);
}

for (const { title } of storageContract) {
  test(title, async ({ page }) => {
    await openSuite(page);
    const fault = await page.evaluate((name) => storageSuite.runCase(name, 'contract'), title);
    expect(fault).toBeUndefined();
  });
}

test('a change in one tab reaches the other, and both append to one chain', async ({ context }) => {
  const [here, there] = [await context.newPage(), await context.newPage()];
  await openSuite(here);
  await openSuite(there);
  await here.evaluate(() => storageSuite.watch('tabs'));
  await there.evaluate(() => storageSuite.appendTo('tabs', 'job-1'));
  await expect.poll(() => here.evaluate(() => storageSuite.rowCounts().at(-1))).toBe(1);
  const turns = Array.from({ length: 10 }, (_, n) => (n % 2 ? here : there));
  const counts = await Promise.all(
    turns.map((page) => page.evaluate(() => storageSuite.appendTo('tabs', 'job-1'))),
  );
  expect(counts.sort((a, b) => a - b)).toEqual([2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
});
