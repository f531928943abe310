/** PINs, and a book that the browser has cleared, in a real browser with its own keys and its own disk. */

import { expect, type Page, test } from '@playwright/test';
import { peopleLabels, words } from '../../src/words';
import { demoPerson, openApp } from './app-in-a-browser';

async function typePin(page: Page, name: string, pin: string): Promise<void> {
  const dialog = page.getByRole('dialog', { name: words.sign.pinOf(name) });
  for (const digit of pin) await dialog.getByRole('button', { name: digit, exact: true }).tap();
}

test('three wrong PINs make the next wait, in words and past a reload; the history says who and when', async ({
  page,
}) => {
  const { name, pin } = demoPerson('petra');
  await openApp(page, '/#/');
  await page.goto('/#/shop');
  await page.getByRole('group', { name: peopleLabels.askPin }).getByText(peopleLabels.yes).tap();
  const hands = page.getByRole('button', { name: words.app.nobody });
  await hands.tap();
  await page.getByRole('dialog').getByRole('button', { name }).tap();
  for (const wrong of ['000001', '000002', '000003']) {
    await typePin(page, name, wrong);
    await expect(page.getByText(/That PIN is not right/)).toBeVisible({ timeout: 15_000 });
  }
  await expect(page.getByText(words.refusal({ code: 'pin-wrong', seconds: 30 }))).toBeVisible();
  await page.reload();
  await page.getByRole('button', { name: words.app.nobody }).tap();
  await page.getByRole('dialog').getByRole('button', { name }).tap();
  await typePin(page, name, pin);
  await expect(page.getByText(/Too many wrong PINs/)).toBeVisible({ timeout: 15_000 });
  await page.getByRole('button', { name: words.app.cancel }).tap();
  await page.getByRole('button', { name: words.app.close }).tap();
  await page.getByRole('button', { name: peopleLabels.historyOf(name) }).tap();
  const history = page.getByRole('dialog', { name: peopleLabels.historyOf(name) });
  await expect(history.getByText(peopleLabels.notes['wrong-pin'])).toHaveCount(3);
});

test('a book that the browser has cleared is missed in plain words, and a new one is begun only when asked', async ({
  page,
  context,
}) => {
  await openApp(page, '/');
  await page.goto('/#/shop');
  await page.getByRole('button', { name: words.shop.ownButton }).tap();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel(words.shop.shopName).fill('Two Bridges');
  await dialog.getByLabel(words.shop.yourName).fill('Marit Sandell');
  for (const digit of '402917')
    await dialog.getByRole('button', { name: digit, exact: true }).tap();
  await dialog.getByRole('button', { name: words.shop.ownConfirm }).tap();
  await expect(page.getByRole('heading', { name: 'Two Bridges' })).toBeVisible({ timeout: 15_000 });

  const origin = new URL(page.url()).origin;
  await page.goto('about:blank');
  const devtools = await context.newCDPSession(page);
  await devtools.send('Storage.clearDataForOrigin', { origin, storageTypes: 'indexeddb' });
  await page.goto(`${origin}/`);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(peopleLabels.lostBook);
  await page.getByRole('button', { name: words.rack.restore }).tap();
  await expect(page).toHaveURL(/#\/shop\/record-file$/);
  await page.goto('about:blank');
  await page.goto(`${origin}/`);
  await page.getByRole('button', { name: peopleLabels.lostBookAnew }).tap();
  await expect(page.getByRole('heading', { level: 1, name: words.rack.title })).toBeVisible({
    timeout: 30_000,
  });
});
