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
  [8, /^Line 8 · front_pressure: “50-30 psi”.+the lower figure first/],
  [8, /^Line 8 · rear_pressure: “50-30 psi”/],
  [9, /post_diameter_mm: “309”.+from 22 to 36 mm/],
  [10, /front_tyre: “big”.+for example 57-622/],
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
    const named = page.getByRole('listitem').filter({ hasText: `${words.goodsIn.line(line)} ` });
    await expect(named.filter({ hasText: reason })).toHaveCount(1);
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

test('a box typed by hand is refused beside its field, and taken once that is right', async ({
  page,
}) => {
  await openApp(page, '/');
  await come(page, 'tomasz');
  await page.getByRole('link', { name: words.app.goodsIn }).tap();
  const text = words.goodsIn;
  const field = (label: string) => page.getByLabel(label, { exact: true });
  await field(text.make).fill('Larkfell');
  await field(text.model).fill('Hardtail 29');
  await field(text.frameNumber).fill('LF29-777001');
  await field(`${text.wheel.front}: ${text.tyre}`).fill('57-622');
  const wrongs = [
    [text.pressure, '65-40 psi', '40-65 psi'],
    [text.post, '309', '30,9'],
    [text.speeds, '99', '11'],
    [text.scan, '6291041500214', '6291041500213'],
  ] as const;
  for (const [label, wrong] of wrongs) await field(label).fill(wrong);
  await page.getByRole('button', { name: text.take }).tap();
  for (const [label] of wrongs) await expect(field(label)).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByText('Write a number from 22 to 36 mm, for example 27.2.')).toBeVisible();
  for (const [label, , right] of wrongs) await field(label).fill(right);
  await expect(field(text.frameMaterial)).toHaveValue('unknown');
  await page.getByRole('button', { name: text.take }).tap();
  await expect(page.getByText(text.taken('LF29-777001'))).toBeVisible();
});
