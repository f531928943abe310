/** A pallet from a file: bad lines are named by line and reason, good ones taken in together. */

import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { words } from '../../src/words';
import { come, openApp } from './app-in-a-browser';

const file = 'tests/support/delivery-list-with-mistakes.csv';

/** What is wrong with the invented list, by line as a text editor counts: the header is line 1. */
const mistakes = [
  [3, /frame_number: “LF#2”/],
  [5, /front_brake: “spoon”/],
  [7, /LF29-204131 stands already on line 2/],
] as const;
const good = ['LF29-204131', 'OB7-511077', 'WT9-60344'];

test('bad lines of a delivery list are named, and good ones go on the rack together', async ({
  page,
}) => {
  await openApp(page, '/');
  await come(page, 'tomasz');
  await page.getByRole('link', { name: words.app.goodsIn }).tap();
  await page.getByText(words.goodsIn.list, { exact: true }).tap();
  await page.getByLabel(words.goodsIn.chooseFile).last().setInputFiles(file);

  await expect(
    page.getByRole('heading', { name: words.goodsIn.bad(mistakes.length) }),
  ).toBeVisible();
  for (const [line, reason] of mistakes) {
    await expect(
      page.getByRole('listitem').filter({ hasText: `${words.goodsIn.line(line)} ` }),
    ).toHaveText(reason);
  }
  await expect(page.getByRole('heading', { name: words.goodsIn.good(good.length) })).toBeVisible();

  await page.getByRole('button', { name: words.goodsIn.takeAll(good.length) }).tap();
  await expect(page.getByText(words.goodsIn.allTaken(good.length))).toBeVisible();
  await page.getByRole('link', { name: words.app.rack }).tap();
  for (const frame of good) await expect(page.getByRole('link', { name: frame })).toHaveCount(1);
  await expect(page.getByRole('link', { name: 'OB7-511078' })).toHaveCount(0);
});

test('a list read twice takes nothing in again', async ({ page }) => {
  await openApp(page, '/');
  await come(page, 'tomasz');
  await page.getByRole('link', { name: words.app.goodsIn }).tap();
  await page.getByText(words.goodsIn.list, { exact: true }).tap();
  const picker = page.getByLabel(words.goodsIn.chooseFile).last();
  await picker.setInputFiles(file);
  await page.getByRole('button', { name: words.goodsIn.takeAll(good.length) }).tap();
  await expect(page.getByText(words.goodsIn.allTaken(good.length))).toBeVisible();
  await picker.setInputFiles(file);
  await expect(page.getByText(words.goodsIn.noneGood)).toBeVisible();
  for (const frame of good)
    await expect(
      page
        .getByText(
          words.refusal({ code: 'frame-number-known', column: 'frame_number', value: frame }),
        )
        .first(),
    ).toBeVisible();
});

test('a file that is no delivery list changes nothing and says why', async ({ page }) => {
  await openApp(page, '/');
  await come(page, 'tomasz');
  await page.getByRole('link', { name: words.app.goodsIn }).tap();
  await page.getByText(words.goodsIn.list, { exact: true }).tap();
  const picture = readFileSync('public/icons/icon-192.png');
  await page
    .getByLabel(words.goodsIn.chooseFile)
    .last()
    .setInputFiles({ name: 'list.csv', mimeType: 'text/csv', buffer: picture });
  await expect(page.getByRole('alert')).toContainText(words.refusal({ code: 'file-not-text' }));
  await expect(page.getByRole('button', { name: words.goodsIn.takeAll(1) })).toHaveCount(0);
});
