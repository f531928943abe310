/** What needs a supervisor asks for their PIN, and a step can be taught whole where it is done. */

import { expect, test } from '@playwright/test';
import { peopleLabels, words } from '../../src/words';
import { catalogueWords } from '../../src/words/catalogue';
import { come, demoPerson, goTo, openApp, openJob, signWith } from './app-in-a-browser';
import { Hand } from './at-the-stand';

const toBeChecked = 'OB7-510774';
const boxed = 'LF29-204118';

test('a finding is let go only in a supervisor’s name and by their PIN', async ({ page }) => {
  await openApp(page, '/');
  await come(page, 'noor');
  const job = await openJob(page, toBeChecked);
  await goTo(page, `/job/${job}/walk`);
  await page.getByRole('button', { name: words.walk.raise }).tap();
  const raising = page.getByRole('dialog', { name: words.walk.wrongTitle });
  await raising.getByText(words.terms.severityDetails['stop-ride']).tap();
  await raising.getByLabel(words.walk.what).fill('Fork leg scored.');
  await raising.getByRole('button', { name: words.walk.write }).tap();
  await expect(raising).toBeHidden();
  const row = page.getByRole('listitem').filter({ hasText: 'Fork leg scored.' });
  await expect(row.getByRole('button', { name: words.walk.allow })).toHaveCount(0);

  const petra = await come(page, 'petra');
  await row.getByRole('button', { name: words.walk.allow }).tap();
  const allowing = page.getByRole('dialog', { name: words.walk.allowTitle });
  await allowing.getByLabel(words.walk.allowReason).fill('Paint only, measured.');
  await allowing.getByRole('button', { name: words.walk.allowButton }).tap();
  await expect(row).toContainText(words.walk.open);
  await signWith(page, petra);
  await expect(row).toContainText('Petra Lindqvist');
  await expect(row).toContainText('Paint only, measured.');
});

test('people are added by a supervisor, with their PIN', async ({ page }) => {
  await openApp(page, '/');
  await come(page, 'ines');
  await page.getByRole('link', { name: words.app.shop, exact: true }).tap();
  await page.getByRole('button', { name: words.shop.addPerson }).tap();
  const adding = page.getByRole('dialog', { name: words.shop.addPerson });
  await adding.getByLabel(words.shop.personName).fill('Rowan Ashby');
  for (const digit of '482915')
    await adding.getByRole('button', { name: digit, exact: true }).tap();
  const petra = demoPerson('petra');
  await expect(adding.getByRole('button', { name: /adds them$/ })).toHaveCount(1);
  await adding.getByRole('button', { name: peopleLabels.addBy(petra.name) }).tap();
  await signWith(page, petra);
  const row = page.getByRole('listitem').filter({ hasText: 'Rowan Ashby' });
  await expect(row).toContainText(words.terms.roleNames.mechanic);

  await row.getByRole('button', { name: words.shop.retire }).tap();
  await page
    .getByRole('dialog', { name: peopleLabels.retireTitle('Rowan Ashby') })
    .getByRole('button', { name: peopleLabels.retireBy(petra.name) })
    .tap();
  await signWith(page, petra);
  await expect(row).toContainText(words.shop.left);
});

test('a step can be taught whole at the stand', async ({ page }) => {
  await openApp(page, '/');
  await come(page, 'ines');
  await openJob(page, boxed);
  const hand = new Hand(page);
  await hand.act();
  await hand.act();
  await page.getByRole('button', { name: words.stand.teach }).tap();
  const title = (await page.locator('h1').textContent()) ?? '';
  const dialog = page.getByRole('dialog', { name: title });
  await expect(dialog.getByText(catalogueWords.apprentice.number)).toBeVisible();
  await dialog.getByRole('button', { name: words.app.close }).tap();
  await expect(dialog).toBeHidden();
});
