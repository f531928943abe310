/** A backup leaves one tablet as a file, restores the shop on a fresh one from its first screen, and verifies there. */

import { readFileSync } from 'node:fs';
import { type Browser, expect, type Page, test } from '@playwright/test';
import { words } from '../../src/words';
import { fileWords } from '../../src/words/file-words';
import { goTo, openApp } from './app-in-a-browser';
import { print } from './printed-sheet';

const pin = '481926';

test('a shop moves to a fresh tablet, and a printed code is verified there without a network', async ({
  page,
  browser,
}) => {
  test.setTimeout(120_000);
  await openApp(page, '/');
  const frames = await framesOf(page);
  expect(frames.length).toBeGreaterThan(3);

  await page.getByRole('link', { name: words.app.records, exact: true }).tap();
  await page.getByRole('main').getByRole('listitem').getByRole('link').first().tap();
  await expect(page.getByText(words.records.unaltered)).toBeVisible({ timeout: 15_000 });
  await expect(page.getByRole('img', { name: words.sheet.qr })).toBeVisible();
  const { code, pages } = await print(page, 'A4');
  expect(code, `code on page ${pages}`).toBeDefined();

  await goTo(page, '#/shop');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: words.backup.save, exact: true }).tap();
  const file = test.info().outputPath('backup.zip');
  await (await saving).saveAs(file);
  await expect(page.getByText(words.backup.inDownloads)).toBeVisible();
  expect(readFileSync(file).subarray(0, 2).toString()).toBe('PK');

  const fresh = await freshTablet(browser);
  await openApp(fresh, '/');
  await fresh.getByRole('link', { name: words.rack.restore }).tap();
  await fresh.getByLabel(fileWords.takeIn.choose).last().setInputFiles(file);
  await expect(fresh.getByText(fileWords.takeIn.restoreText)).toBeVisible({ timeout: 30_000 });
  await fresh.getByRole('button', { name: fileWords.takeIn.restoreDemo }).tap();
  await expect(fresh.getByText(fileWords.takeIn.pinsText)).toBeVisible({ timeout: 30_000 });
  await expect(fresh.getByText(words.app.demo)).toHaveCount(0);

  await fresh.getByRole('button', { name: 'Petra' }).tap();
  const dialog = fresh.getByRole('dialog');
  for (const digit of pin) await dialog.getByRole('button', { name: digit, exact: true }).tap();
  await dialog.getByRole('button', { name: fileWords.takeIn.pinButton }).tap();
  await expect(dialog).toBeHidden({ timeout: 15_000 });
  await fresh.getByRole('button', { name: fileWords.takeIn.toRack }).tap();
  expect(await framesOf(fresh)).toEqual(frames);

  await fresh.context().setOffline(true);
  await goTo(fresh, '#/records/verify');
  await fresh.getByLabel(fileWords.verify.code, { exact: true }).fill(code ?? '');
  await fresh.getByRole('button', { name: fileWords.verify.check }).tap();
  await expect(fresh.getByRole('main').getByRole('status')).toContainText(
    fileWords.verify.wholeSincePrinted,
  );
  await expect(fresh.getByText(fileWords.verify.codeSigned)).toBeVisible();
  await expect(fresh.getByText(fileWords.verify.clocks)).toBeVisible();

  await fresh.getByRole('button', { name: fileWords.verify.another }).tap();
  await fresh.getByLabel(fileWords.verify.file, { exact: true }).last().setInputFiles(file);
  await expect(fresh.getByRole('main').getByRole('status')).toContainText(
    /All \d+ records in this file are unaltered/,
    {
      timeout: 30_000,
    },
  );
  await fresh.context().close();
});

test('a file that was changed is refused in words, and the book stays as it is', async ({
  page,
}) => {
  await openApp(page, '/');
  const frames = await framesOf(page);
  await goTo(page, '#/shop/record-file');
  const picked = page.getByLabel(fileWords.takeIn.choose).last();
  for (const [name, bytes, sentence] of [
    ['letter.zip', Buffer.from('Dear shop'), fileWords.refusal({ code: 'file-not-a-record-file' })],
    [
      'cut.zip',
      Buffer.from('PK\u0003\u0004 and no end'),
      fileWords.refusal({ code: 'file-cut-short' }),
    ],
  ] as const) {
    await picked.setInputFiles({ name, mimeType: 'application/zip', buffer: bytes });
    await expect(page.getByRole('alert')).toContainText(sentence);
  }
  await goTo(page, '#/');
  expect(await framesOf(page)).toEqual(frames);
});

test('the day’s page prints its digest and a code that says the same', async ({ page }) => {
  await openApp(page, '/');
  await goTo(page, '#/shop/day');
  const digest = page.getByText(/^(?:[0-9a-f]{4} ){15}[0-9a-f]{4}$/);
  await expect(digest).toBeVisible({ timeout: 15_000 });
  const root = (await digest.textContent())?.replaceAll(' ', '');
  const { code, text, pages } = await print(page, 'A4');
  expect(pages).toBe(1);
  expect(text).toContain(fileWords.dayPage.title);
  const [, payload = ''] = code?.split('.') ?? [];
  const said = JSON.parse(Buffer.from(payload, 'base64url').toString());
  expect(said).toMatchObject({ root });

  await goTo(page, '#/records/verify');
  await page.getByLabel(fileWords.verify.code, { exact: true }).fill(code ?? '');
  await page.getByRole('button', { name: fileWords.verify.check }).tap();
  await expect(page.getByRole('main').getByRole('status')).toContainText(
    fileWords.verify.sameAsNow,
  );
});

async function freshTablet(browser: Browser): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: 1180, height: 820 },
    hasTouch: true,
    baseURL: `http://localhost:${process.env.STANDBOOK_TEST_PORT}/`,
  });
  return context.newPage();
}

/** As the rack shows them, in its order. */
async function framesOf(page: Page): Promise<readonly string[]> {
  await expect(page.getByRole('heading', { level: 1, name: words.rack.title })).toBeVisible();
  const rows = page.getByRole('main').getByRole('listitem');
  await expect(rows.first()).toBeVisible();
  return rows.allTextContents();
}
