/** The tool board in a real browser: operations grow with the work, and a wrench found out of tolerance names the bikes it concerns. */

import { expect, type Locator, type Page, test } from '@playwright/test';
import { words } from '../../src/words';
import { boardWords } from '../../src/words/board-words';
import { come, goTo, openApp, openJob } from './app-in-a-browser';
import { Hand } from './at-the-stand';

const boxedMountainBike = 'LF29-204118';
/** The demo's bikes that have gone home, and whom the list has to name. */
const gone = {
  'LF29-203871': 'Jo Marlowe, 01632 960041',
  'OB7-509926': 'Henrike Osgood, 01632 960117',
} as const;
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
  await page.getByRole('button', { name: boardWords.toolBoard.enterCalibration }).tap();

  // Set 2, 8.4 and 14 N·m, the tester shows this much less: + 17 % and more, where ± 4 % is allowed (ISO 6789-1:2017).
  const came = page.getByRole('region', { name: boardWords.calibration.found });
  await typePoints(came, { 2: '1.7', '8.4': '7.1', 14: '12' });
  await expect(came.getByText(boardWords.calibration.verdict.outside)).toHaveCount(3);
  await expect(page.getByRole('alert')).toContainText('Outside ± 4 % at 2 N·m, 8.4 N·m and 14 N·m');
  await expect(
    page.getByText(boardWords.calibration.goings['as-it-is'], { exact: true }),
  ).toHaveCount(0);
  const keep = page.getByRole('button', { name: boardWords.calibration.keep });
  await keep.tap();
  await expect(page.getByText(boardWords.calibration.choose)).toBeVisible();

  await page.getByText(boardWords.calibration.goings.adjusted).tap();
  await page.getByRole('button', { name: boardWords.calibration.howQuick[0], exact: true }).tap();
  const left = page.getByRole('region', { name: boardWords.calibration.left });
  await typePoints(left, { 2: '2.01', '8.4': '8.42', 14: '14.1' });
  await keep.tap();
  await expect(page.getByText(boardWords.toolBoard.noteOutside)).toBeVisible();
  await expect(page.getByText(boardWords.toolBoard.operations(0, 5000))).toBeVisible();

  await page.getByRole('link', { name: boardWords.toolBoard.showBikes }).tap();
  const first = page.getByRole('main').getByRole('listitem').first();
  await expect(first.getByRole('heading')).toContainText(/LF29-203871|OB7-509926/);
  const text = (await first.textContent()) ?? '';
  const frame = text.includes('LF29-203871') ? 'LF29-203871' : 'OB7-509926';
  expect(text).toContain(gone[frame]);
  await expect(first.getByRole('row').nth(1)).toContainText(boardWords.reachBack.classes.A);
  await expect(first.getByRole('row').nth(1)).toContainText(boardWords.reachBack.chanceText(1));

  const said = 'Coming in on Friday, will not ride it until then.';
  await first.getByRole('button', { name: boardWords.reachBack.callBack }).tap();
  const dialog = page.getByRole('dialog', { name: boardWords.reachBack.callBackTitle(frame) });
  await dialog.getByRole('textbox').fill(said);
  await dialog.getByRole('button', { name: boardWords.reachBack.callBackSave }).tap();
  await expect(dialog).toBeHidden();
  await expect(first).toContainText(/Called back: Petra Lindqvist/);
  await expect(first).toContainText(boardWords.reachBack.agreed(said));

  await first.getByRole('link', { name: boardWords.reachBack.openRecord }).tap();
  await expect(page.getByText(words.records.unaltered)).toBeVisible();
  await expect(page.getByRole('main')).toContainText(said);
});

test('a wrench dropped while it was away from the stand is refused until it is calibrated', async ({
  page,
}) => {
  await openApp(page, '/');
  await come(page, 'petra');
  await goTo(page, '/tool-board/D');
  await page.getByRole('button', { name: boardWords.toolBoard.changeCondition }).tap();
  const dialog = page.getByRole('dialog', { name: boardWords.toolBoard.conditionTitle('D') });
  await dialog.getByText(/^Dropped/).tap();
  await dialog.getByRole('button', { name: boardWords.toolBoard.quickReasons.dropped[0] }).tap();
  await dialog.getByRole('button', { name: boardWords.toolBoard.conditionSave }).tap();
  await expect(dialog).toBeHidden();
  await expect(page.getByText(boardWords.toolBoard.untilCalibrated)).toBeVisible();

  await page.getByRole('button', { name: boardWords.toolBoard.changeCondition }).tap();
  await dialog.getByText(/^In service/).tap();
  await dialog.getByLabel(boardWords.toolBoard.conditionReason).fill('Looks fine');
  await dialog.getByRole('button', { name: boardWords.toolBoard.conditionSave }).tap();
  await expect(dialog.getByRole('alert')).toHaveText(
    words.refusal({ code: 'wrench-needs-calibration', wrench: 'D' }),
  );
});

async function typePoints(region: Locator, shown: Readonly<Record<string, string>>): Promise<void> {
  const pad = region.getByRole('group');
  for (const [at, text] of Object.entries(shown)) {
    const cell = boardWords.calibration.cell(boardWords.calibration.tester('N·m'), at);
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
