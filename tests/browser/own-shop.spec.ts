/** The plain way from the demo to a shop of one's own: an empty book and one supervisor. */

import { expect, test } from '@playwright/test';
import { words } from '../../src/words';
import { boardWords } from '../../src/words/board-words';
import { openApp } from './app-in-a-browser';

const owner = 'Hanne Villadsen';
const pin = '481926';

test('a shop of one’s own starts empty, with one supervisor who can sign', async ({ page }) => {
  await openApp(page, '/');
  await page.getByRole('link', { name: words.app.shop, exact: true }).tap();
  await expect(page.getByText(words.shop.demoText)).toBeVisible();
  await page.getByRole('button', { name: words.shop.ownButton }).tap();
  const dialog = page.getByRole('dialog', { name: words.shop.ownTitle });
  await expect(dialog.getByText(words.shop.ownWarning)).toBeVisible();

  await dialog.getByRole('button', { name: words.shop.ownConfirm }).tap();
  await expect(dialog.getByRole('alert')).toBeVisible(); // nothing is erased for a shop without a name

  await dialog.getByLabel(words.shop.shopName).fill('Two Bridges Cycles');
  await dialog.getByLabel(words.shop.yourName).fill(owner);
  for (const digit of pin) await dialog.getByRole('button', { name: digit, exact: true }).tap();
  await dialog.getByRole('button', { name: words.shop.ownConfirm }).tap();
  await expect(dialog).toBeHidden({ timeout: 15_000 });

  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Two Bridges Cycles');
  await expect(page.getByText(words.app.demo)).toHaveCount(0);
  await expect(page.getByText(words.shop.demoText)).toHaveCount(0);
  const people = page.getByRole('main').getByRole('listitem');
  await expect(people).toHaveCount(1);
  await expect(people).toContainText(owner);
  await expect(people).toContainText(words.terms.roleNames.supervisor);
  await expect(page.getByText(/Demo PIN/)).toHaveCount(0);

  for (const [place, sentence] of [
    [words.app.rack, words.rack.empty],
    [words.app.toolBoard, boardWords.toolBoard.empty],
    [words.app.records, words.records.empty],
  ] as const) {
    await page.getByRole('link', { name: place, exact: true }).tap();
    await expect(page.getByText(sentence)).toBeVisible();
  }

  await page.reload();
  await expect(page.getByText(words.records.empty)).toBeVisible();
  await expect(page.getByText(words.app.demo)).toHaveCount(0);
});
