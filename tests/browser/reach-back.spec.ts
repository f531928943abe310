/** The tool board in a real browser: operations grow with the work, and a wrench found out of tolerance names the bikes it concerns. */

import { expect, type Locator, type Page, test } from '@playwright/test';
import { words } from '../../src/words';
import { come, goTo, openApp, openJob } from './app-in-a-browser';
import { Hand } from './at-the-stand';

const boxedMountainBike = 'LF29-204118';
const gone = { frame: 'LF29-203871', customer: 'Jo Marlowe', contact: '01632 960041' };
const seatClamp = 'Tighten the seat clamp';

test('operations grow while a bike is built, and the board shows them', async ({ page }) => {
  test.setTimeout(90_000);
  await openApp(page, '/');
  await come(page, 'noor');
  const before = await operationsOnTheBoard(page);
  await goTo(page, '/');
  await openJob(page, boxedMountainBike);
  const hand = new Hand(page);
  await hand.act();
  await hand.act();
  await hand.workUntil(seatClamp);
  while ((await hand.shown()).title === seatClamp) await hand.goOn();
  const after = await operationsOnTheBoard(page);
  expect([...after.keys()]).toEqual([...before.keys()]);
  const grown = [...after].filter(([id, used]) => used > (before.get(id) ?? 0));
  expect(grown.length).toBeGreaterThan(0);
  for (const [id, used] of after) expect(used).toBeGreaterThanOrEqual(before.get(id) ?? 0);
});

test('a wrench found out of tolerance cannot go on as it came, and names the bike that has gone home first', async ({
  page,
}) => {
  test.setTimeout(90_000);
  await openApp(page, '/');
  await come(page, 'petra');
  await goTo(page, '/tool-board');
  await page.getByRole('link', { name: 'Click wrench 2–14 N·m' }).tap();
  await page.getByRole('button', { name: words.toolBoard.enterCalibration }).tap();

  // Set 2, 8.4 and 14 N·m, the tester shows this much less: + 17 % and more, where ± 4 % is allowed (ISO 6789-1:2017).
  const came = page.getByRole('region', { name: words.calibration.found });
  await typePoints(came, { 2: '1.7', '8.4': '7.1', 14: '12' });
  await expect(came.getByText(words.calibration.verdict.outside)).toHaveCount(3);
  await expect(page.getByRole('alert')).toContainText('Outside ± 4 % at 2 N·m, 8.4 N·m and 14 N·m');
  await expect(page.getByText(words.calibration.goings['as-it-is'], { exact: true })).toHaveCount(
    0,
  );
  const keep = page.getByRole('button', { name: words.calibration.keep });
  await keep.tap();
  await expect(page.getByText(words.calibration.choose)).toBeVisible();

  await page.getByText(words.calibration.goings.adjusted).tap();
  await page.getByRole('button', { name: words.calibration.howQuick[0], exact: true }).tap();
  const left = page.getByRole('region', { name: words.calibration.left });
  await typePoints(left, { 2: '2.01', '8.4': '8.42', 14: '14.1' });
  await keep.tap();
  await expect(page.getByText(words.toolBoard.noteOutside)).toBeVisible();
  await expect(page.getByText(words.toolBoard.operations(0, 5000))).toBeVisible();

  await page.getByRole('link', { name: words.toolBoard.showBikes }).tap();
  const first = page.getByRole('main').getByRole('listitem').first();
  await expect(first.getByRole('heading')).toContainText(gone.frame);
  await expect(first).toContainText(`${gone.customer}, ${gone.contact}`);
  await expect(first.getByRole('row').nth(1)).toContainText(words.reachBack.classes.A);
  await expect(first.getByRole('row').nth(1)).toContainText(words.reachBack.chanceText(1));

  const said = 'Coming in on Friday, will not ride it until then.';
  await first.getByRole('button', { name: words.reachBack.callBack }).tap();
  const dialog = page.getByRole('dialog', { name: words.reachBack.callBackTitle(gone.frame) });
  await dialog.getByRole('textbox').fill(said);
  await dialog.getByRole('button', { name: words.reachBack.callBackSave }).tap();
  await expect(dialog).toBeHidden();
  await expect(first).toContainText(/Called back: Petra Lindqvist/);

  await first.getByRole('link', { name: words.reachBack.openRecord }).tap();
  await expect(page.getByText(words.records.unaltered)).toBeVisible();
  await expect(page.getByRole('main')).toContainText(said);
});

test('a wrench dropped while it was away from the stand is refused until it is calibrated', async ({
  page,
}) => {
  await openApp(page, '/');
  await come(page, 'petra');
  await goTo(page, '/tool-board/D');
  await page.getByRole('button', { name: words.toolBoard.changeCondition }).tap();
  const dialog = page.getByRole('dialog', { name: words.toolBoard.conditionTitle('D') });
  await dialog.getByText(/^Dropped/).tap();
  await dialog.getByRole('button', { name: words.toolBoard.quickReasons.dropped[0] }).tap();
  await dialog.getByRole('button', { name: words.toolBoard.conditionSave }).tap();
  await expect(dialog).toBeHidden();
  await expect(page.getByText(words.toolBoard.untilCalibrated)).toBeVisible();

  await page.getByRole('button', { name: words.toolBoard.changeCondition }).tap();
  await dialog.getByText(/^In service/).tap();
  await dialog.getByLabel(words.toolBoard.conditionReason).fill('Looks fine');
  await dialog.getByRole('button', { name: words.toolBoard.conditionSave }).tap();
  await expect(dialog.getByRole('alert')).toHaveText(
    words.refusal({ code: 'wrench-needs-calibration', wrench: 'D' }),
  );
});

async function typePoints(region: Locator, shown: Readonly<Record<string, string>>): Promise<void> {
  const pad = region.getByRole('group');
  for (const [at, text] of Object.entries(shown)) {
    const cell = words.calibration.cell(words.calibration.tester('N·m'), at);
    await region.getByRole('button', { name: `${cell}:` }).tap();
    for (const key of text) await pad.getByRole('button', { name: key, exact: true }).tap();
  }
}

async function operationsOnTheBoard(page: Page): Promise<ReadonlyMap<string, number>> {
  await goTo(page, '/tool-board');
  const rows = page.getByRole('link', { name: /\d+ of 5000 operations/ });
  await expect(rows).toHaveCount(7);
  const texts = await rows.allTextContents();
  return new Map(
    texts.map((text) => [text.charAt(0), Number(/(\d+) of 5000/.exec(text)?.[1])] as const),
  );
}
