/** Every screen, by day and by night, against the rules of axe (WCAG 2.2 A and AA), and its targets against a gloved hand. */

import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { words } from '../../src/words';
import { boardWords } from '../../src/words/board-words';
import { catalogueWords } from '../../src/words/catalogue';
import { fileWords } from '../../src/words/file-words';
import { come, goTo, openApp, openJob } from './app-in-a-browser';
import { Hand } from './at-the-stand';

// The app's own policy refuses every script it did not ship, and axe is one. Only this file looks away.
test.use({ bypassCSP: true, actionTimeout: 10_000 });

const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const boxed = 'LF29-204118';
const toBeChecked = 'OB7-510774';
const themes = ['day', 'night'] as const;

/** CSS pixels: what a hand in a glove finds at arm's length. WCAG 2.2 (2.5.8) asks for 24. */
const glove = 56;
/** Rows of a list that is only glanced at and seldom tapped, one under the other. */
const row = 40;

for (const theme of themes) {
  test(`places and their dialogs by ${theme}`, async ({ page }) => {
    test.setTimeout(120_000);
    await openIn(page, theme);
    await looksGood(page, 'shop');
    await page.getByRole('button', { name: words.shop.ownButton }).tap();
    await looksGood(page, 'own shop');
    await page.getByRole('dialog').getByRole('button', { name: words.app.cancel }).tap();

    await visit(page, words.app.rack);
    await looksGood(page, 'rack');
    await visit(page, words.app.toolBoard);
    await looksGood(page, 'tool board');
    await page.getByRole('button', { name: boardWords.toolBoard.addAdapter }).tap();
    await looksGood(page, 'adapter form');
    await page.getByRole('dialog').getByRole('button', { name: words.app.cancel }).tap();
    await page.getByRole('link', { name: 'Torque screwdriver' }).tap();
    await looksGood(page, 'one wrench');
    for (const button of [boardWords.toolBoard.correct, boardWords.toolBoard.changeCondition]) {
      await page.getByRole('button', { name: button }).tap();
      await looksGood(page, button);
      await page.getByRole('dialog').getByRole('button', { name: words.app.cancel }).tap();
    }
    await page.getByRole('button', { name: boardWords.toolBoard.enterCalibration }).tap();
    await looksGood(page, 'calibration');
    await visit(page, words.app.toolBoard);
    await page.getByRole('link', { name: boardWords.toolBoard.showBikes }).first().tap();
    await looksGood(page, 'bikes to look into');

    await visit(page, words.app.goodsIn);
    await looksGood(page, 'goods-in, one box');
    await page.getByRole('button', { name: words.goodsIn.take }).tap();
    await looksGood(page, 'goods-in, with complaints');
    await page.getByText(words.goodsIn.list, { exact: true }).tap();
    await page
      .getByLabel(words.goodsIn.chooseFile)
      .last()
      .setInputFiles('tests/support/delivery-list-with-mistakes.csv');
    await expect(page.getByText(words.goodsIn.good(3))).toBeVisible();
    await looksGood(page, 'goods-in, delivery list');

    await visit(page, words.app.records);
    await looksGood(page, 'records');
    await page.getByRole('main').getByRole('listitem').getByRole('link').first().tap();
    await expect(page.getByText(words.records.unaltered)).toBeVisible();
    await page.getByRole('button', { name: words.records.showLog }).tap();
    await looksGood(page, 'record');

    await goTo(page, '#/records/verify');
    await page.getByRole('button', { name: fileWords.verify.check }).tap();
    await expect(page.getByRole('main').getByRole('alert')).toBeVisible();
    await looksGood(page, 'verify');
    await goTo(page, '#/shop/record-file');
    await looksGood(page, 'record file');
    await goTo(page, '#/shop/day');
    await expect(page.getByText(fileWords.dayPage.digest, { exact: true })).toBeVisible();
    await looksGood(page, 'the day’s page');
  });

  test(`the catalogue by ${theme}`, async ({ page }) => {
    test.setTimeout(120_000);
    await openIn(page, theme);
    await come(page, 'petra');
    await visit(page, words.app.catalogue);
    await page.getByRole('searchbox').fill('faceplate');
    await looksGood(page, 'catalogue');
    await page.getByRole('link', { name: 'Bring the faceplate bolts up together' }).tap();
    await looksGood(page, 'one step of the catalogue');
    await page.getByRole('button', { name: catalogueWords.change.words }).tap();
    await looksGood(page, catalogueWords.change.words);
    await page.getByRole('dialog').getByRole('button', { name: words.app.cancel }).tap();
    await page.getByRole('button', { name: catalogueWords.apprentice.open }).tap();
    await expect(page.getByRole('dialog').getByRole('img').first()).toBeVisible();
    await looksGood(page, 'apprentice view');
    await page.getByRole('dialog').getByRole('button', { name: words.app.close }).tap();
    await goTo(page, '/catalogue/own');
    await looksGood(page, 'a step of our own');
    await goTo(page, '/catalogue/changes');
    await looksGood(page, 'changes of the catalogue');
  });

  test(`the stand and its dialogs by ${theme}`, async ({ page }) => {
    test.setTimeout(120_000);
    await openIn(page, theme);
    await visit(page, words.app.rack);
    await openJob(page, boxed);
    await looksGood(page, 'opening');
    await page.getByRole('button', { name: new RegExp(` ${words.app.atStand('')}`) }).tap();
    await looksGood(page, 'who is here');
    await page.getByRole('dialog').getByRole('button', { name: words.app.close }).tap();
    const hand = new Hand(page);
    await hand.act();
    await looksGood(page, 'contents');
    await hand.act();
    await looksGood(page, 'step');
    for (const button of [words.stand.setAside, words.stand.hold]) {
      await page.getByRole('button', { name: button, exact: true }).tap();
      await looksGood(page, button);
      await page.getByRole('dialog').getByRole('button', { name: words.app.cancel }).tap();
    }
    await hand.workUntil('Tighten the seat clamp');
    await hand.action.tap();
    await looksGood(page, 'figure dialog');
    await page.getByRole('dialog').getByRole('button', { name: words.app.cancel }).tap();
    await hand.goOn();
    await looksGood(page, 'torque step');
    await page.getByRole('button', { name: words.torque.change, exact: true }).tap();
    await looksGood(page, 'wrench dialog');
    await page.getByRole('dialog').getByRole('button', { name: words.app.close }).tap();
    await hand.act();
    await looksGood(page, 'measure step');
  });

  test(`walk, second check and hand-over by ${theme}`, async ({ page }) => {
    test.setTimeout(120_000);
    await openIn(page, theme);
    await visit(page, words.app.rack);
    const job = await openJob(page, toBeChecked);
    await come(page, 'petra');
    await looksGood(page, 'second check');
    await page.getByRole('button', { name: words.sign.checkedButton }).tap();
    await looksGood(page, 'PIN');
    await page.getByRole('dialog').getByRole('button', { name: words.app.cancel }).tap();
    await page.getByRole('button', { name: words.sign.sendBack }).tap();
    await looksGood(page, 'send back');
    await page.getByRole('dialog').getByRole('button', { name: words.app.cancel }).tap();
    await goTo(page, `/job/${job}/hand-over`);
    await looksGood(page, 'hand-over');
    await goTo(page, `/job/${job}/walk`);
    await looksGood(page, 'walk, all looked at');
    await page.getByRole('button', { name: words.walk.back }).tap();
    await looksGood(page, 'walk, one point');
    await page.getByRole('button', { name: words.walk.wrong, exact: true }).tap();
    await looksGood(page, 'finding dialog');
  });
}

/** Opens the app with this paper, and somebody at the stand. */
async function openIn(page: Page, theme: (typeof themes)[number]): Promise<void> {
  await openApp(page, '/');
  await come(page, 'noor');
  await visit(page, words.app.shop);
  await page.getByText(words.shop.themes[theme], { exact: true }).tap();
  await expect(page.locator('html')).toHaveAttribute('data-theme', theme);
}

async function visit(page: Page, place: string): Promise<void> {
  await page.getByRole('navigation').getByRole('link', { name: place, exact: true }).tap();
  await expect(page.getByRole('heading', { level: 1 })).not.toHaveText(words.app.opening);
}

async function looksGood(page: Page, screen: string): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(rules)
    .disableRules('target-size') // a row cut by the edge of a list that scrolls counts as small; measured below
    .analyze();
  const said = violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join('\n')}`,
  );
  expect.soft(said, screen).toEqual([]);
  expect.soft(await tooSmall(page), `targets on: ${screen}`).toEqual([]);
}

/** Buttons a glove would miss, on the top layer only. */
async function tooSmall(page: Page): Promise<readonly string[]> {
  return page.evaluate(
    ([leastButton = 0, leastRow = 0]) => {
      const least = (button: Element) => (button.matches('li > button') ? leastRow : leastButton);
      const top = document.querySelector('dialog[open]') ?? document;
      return [...top.querySelectorAll('button')]
        .filter((button) => button.checkVisibility())
        .filter((button) => Math.round(button.getBoundingClientRect().height) < least(button))
        .map((button) => `${button.textContent} ${button.getBoundingClientRect().height}`);
    },
    [glove, row],
  );
}
