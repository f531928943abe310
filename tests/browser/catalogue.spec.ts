/** A supervisor makes the catalogue the shop's own, and bikes are built by it: those opened afterwards, and no others. */

import { expect, type Page, test } from '@playwright/test';
import { words } from '../../src/words';
import { catalogueWords } from '../../src/words/catalogue';
import { come, goTo, openApp, openJob } from './app-in-a-browser';
import { Hand } from './at-the-stand';

test.use({ actionTimeout: 10_000 });

const openBefore = 'LF29-204118';
const openAfter = 'OB7-511042';
const unpack = 'Lift everything out of the box';
const { change, form, history, step } = catalogueWords;

async function openStep(page: Page, search: string, title: string): Promise<void> {
  await page.getByRole('link', { name: words.app.catalogue, exact: true }).tap();
  await page.getByRole('searchbox').fill(search);
  await page.getByRole('link', { name: title }).first().tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(title);
}

async function keepBecause(page: Page, reason: string): Promise<void> {
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel(form.reason, { exact: true }).fill(reason);
  await dialog.getByRole('button', { name: form.save }).tap();
}

test('a change and a new step are in the next bike’s plan, and an open job keeps its own', async ({
  page,
}) => {
  await openApp(page, '/');
  await come(page, 'petra');
  await openJob(page, openBefore);
  await new Hand(page).act(); // the plan is frozen
  await goTo(page, '/');

  await openStep(page, 'box carton', unpack);
  const old = (await page.getByRole('main').locator('p').nth(1).textContent()) ?? '';
  await page.getByRole('button', { name: change.words }).tap();
  await page
    .getByRole('dialog')
    .getByLabel(step.how, { exact: true })
    .fill('Two of you lift it out, by the frame.');
  await keepBecause(page, 'A back was hurt in June.');
  await expect(page.getByText(form.kept(1))).toBeVisible();

  await page.getByRole('link', { name: catalogueWords.back }).tap();
  await page.getByRole('button', { name: catalogueWords.addStep }).tap();
  await page.getByLabel(form.title).fill('Hang the job tag on the frame');
  await page.getByLabel(step.how, { exact: true }).fill('Loop it round the top tube.');
  await page.getByLabel(step.why).fill('Two alike bikes are never mixed up.');
  await page.getByLabel(step.right).fill('It stays there until the hand-over.');
  await page.getByLabel(form.after).selectOption({ label: unpack });
  await page.getByLabel(form.reason, { exact: true }).fill('Two town bikes were mixed up.');
  await page.getByRole('button', { name: form.addOwn }).tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Hang the job tag on the frame',
    {
      timeout: 20_000, // tried on some hundred bikes first
    },
  );

  await test.step('a bike opened now is built by it', async () => {
    await page.getByRole('link', { name: words.app.rack, exact: true }).tap();
    await openJob(page, openAfter);
    const hand = new Hand(page);
    await hand.act(); // opens the job
    await hand.act(); // the contents
    await hand.workUntil(unpack);
    await expect(page.getByText('Two of you lift it out, by the frame.')).toBeVisible();
    await hand.workUntil('Hang the job tag on the frame');
    await expect(page.getByText('Loop it round the top tube.')).toBeVisible();
  });

  await test.step('the bike opened before is not', async () => {
    await goTo(page, '/');
    await openJob(page, openBefore);
    const hand = new Hand(page);
    await hand.act(); // the contents
    await hand.workUntil(unpack);
    await expect(page.getByText(old)).toBeVisible();
    expect(old.length).toBeGreaterThan(10);
  });

  await test.step('the history says who, when and why, after the app was started anew', async () => {
    await goTo(page, '/catalogue/changes');
    await page.reload();
    for (const text of ['A back was hurt in June.', 'Two town bikes were mixed up.'])
      await expect(page.getByText(text)).toBeVisible();
    await expect(page.getByText(/Petra Lindqvist/).nth(1)).toBeVisible();
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: history.save }).tap();
    expect((await download).suggestedFilename()).toMatch(/^standbook-catalogue-.*\.json$/);
  });
});

test('a change that would spoil a bike’s plan is refused with that bike, and a mechanic may only read', async ({
  page,
}) => {
  await openApp(page, '/');
  await come(page, 'petra');
  await openStep(page, 'bell', 'Fit the bell');
  await page.getByRole('button', { name: change.off }).tap();
  await keepBecause(page, 'We leave bells off.');
  const refusal = page.getByRole('dialog').getByRole('alert');
  await expect(refusal).toContainText(/plan of a .+ bike \(.*bell/);
  await expect(refusal).toContainText('would stay in its box');
  await page.getByRole('dialog').getByRole('button', { name: words.app.cancel }).tap();
  await goTo(page, '/catalogue/changes');
  await expect(page.getByText(history.none)).toBeVisible();

  await come(page, 'noor');
  await openStep(page, 'faceplate', 'Bring the faceplate bolts up together');
  await expect(page.getByRole('button', { name: change.words })).toHaveCount(0);
  await page.getByRole('button', { name: catalogueWords.apprentice.open }).tap();
  const lesson = page.getByRole('dialog');
  await expect(lesson.getByRole('img', { name: /^Where it is: stem/ })).toBeVisible();
  await expect(lesson.getByText(catalogueWords.apprentice.onPart)).toBeVisible();
});
