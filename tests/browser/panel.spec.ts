/** The torque panel: what the part says is read, typed as printed, questioned where it cannot be, and confirmed where it is known. */

import { expect, type Page, test } from '@playwright/test';
import { words } from '../../src/words';
import { jointWords } from '../../src/words/joint';
import { come, openApp, openJob } from './app-in-a-browser';
import { Hand } from './at-the-stand';
import { titleOf } from './rework';

const boxedMountainBike = 'LF29-204118';
/** A model whose seat clamp was read before; what it said is in the demo's figure book. */
const boxedTourer = 'WT9-60317';
const seatClamp = titleOf('seat', 'seat-post-clamp');

async function atTheSeatClamp(page: Page, frameNumber: string): Promise<Hand> {
  await openApp(page, '/');
  await come(page, 'noor');
  await openJob(page, frameNumber);
  const hand = new Hand(page);
  await hand.act();
  await hand.act();
  await hand.workUntil(seatClamp);
  return hand;
}

const markings = [
  // lbf·in: 44 × 0.112 985 = 4.97 N·m and 53 × 0.112 985 = 5.99 N·m, from exact SI definitions
  [['4', '4', '–', '5', '3', 'in·lb'], '4.97–5.99 N·m', '44–53 in·lb'],
  [['max', '5', 'N·m'], 'max 5 N·m', 'max 5 N·m'],
  [['4', '–', '6', 'N·m'], '4–6 N·m', '4–6 N·m'],
] as const;

test('a marking is typed as it is printed, read back in N·m, and gives the number to set', async ({
  page,
}) => {
  const hand = await atTheSeatClamp(page, boxedMountainBike);
  const dialog = page.getByRole('dialog', { name: words.torque.enterTitle });
  for (const [keys, readAs, printed] of markings) {
    await hand.action.tap();
    for (const key of keys) await dialog.getByRole('button', { name: key, exact: true }).tap();
    await expect(dialog.getByText(words.torque.readAs(readAs))).toBeVisible();
    await expect(dialog.getByLabel(words.torque.marking).first()).toHaveValue(printed);
    await dialog.getByRole('button', { name: words.app.cancel }).tap();
    await expect(dialog).toBeHidden();
  }
  await hand.typeMarking(markings[2][0]);
  await expect(page.getByText(words.stand.figure, { exact: false }).first()).toBeVisible();
  expect((await hand.shown()).action).toContain(words.torque.clicked[1]);
});

test('a figure far from what such a joint takes is questioned, and kept only when asked again', async ({
  page,
}) => {
  const hand = await atTheSeatClamp(page, boxedMountainBike);
  await hand.action.tap();
  const dialog = page.getByRole('dialog', { name: words.torque.enterTitle });
  for (const key of ['4', '0', 'N·m'])
    await dialog.getByRole('button', { name: key, exact: true }).tap();
  await dialog.getByRole('button', { name: words.torque.use }).tap();
  await expect(dialog.getByRole('alert')).toContainText('Read the part once more');
  await dialog.getByRole('button', { name: words.torque.useAnyway }).tap();
  await expect(dialog).toBeHidden();
  await expect(page.getByText('40 N·m, marked on the part')).toBeVisible();
  await expect(page.getByText('Far from what such a joint usually takes')).toBeVisible();
});

test('what this model said before is shown as such, and confirmed by the pass that is made to it', async ({
  page,
}) => {
  const hand = await atTheSeatClamp(page, boxedTourer);
  await expect(page.getByText(words.torque.lastTime('max 6 N·m'))).toBeVisible();
  const before = await hand.shown();
  expect(before.action).toContain(words.torque.confirmed(words.torque.clicked[1]));
  await page.getByRole('button', { name: words.torque.saysElse }).tap();
  const dialog = page.getByRole('dialog', { name: words.torque.enterTitle });
  await dialog.getByRole('button', { name: words.app.cancel }).tap();
  const after = await hand.act();
  expect(after.title).not.toBe(seatClamp);
});

test('every step of a zone can be reached, done or not, and nothing is lost by looking', async ({
  page,
}) => {
  const hand = await atTheSeatClamp(page, boxedMountainBike);
  const now = await hand.shown();
  await page.getByRole('button', { name: now.place }).tap();
  const dialog = page.getByRole('dialog', {
    name: words.stand.stepsOf(words.terms.zoneNames.seat),
  });
  const rows = dialog.getByRole('listitem');
  await expect(rows.first()).toContainText(words.stand.standings.done);
  await expect(rows.last()).toContainText(words.stand.standings['to-do']);
  const last = (await rows.last().getByRole('button').locator('span').first().textContent()) ?? '';
  await rows.last().getByRole('button').tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(last);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(seatClamp);
});

/** Keys eight milliseconds apart by their own time, as a wrench sends them, however long this machine takes to pass them on. */
async function wrenchTypes(page: Page, text: string): Promise<void> {
  const keyboard = await page.context().newCDPSession(page);
  const began = Date.now() / 1000;
  for (const [index, key] of [...text, 'Enter'].entries()) {
    const at = { key, timestamp: began + index * 0.008 };
    const enter = key === 'Enter' && { code: 'Enter', windowsVirtualKeyCode: 13 };
    const typed = key === 'Enter' ? '\r' : key;
    await keyboard.send('Input.dispatchKeyEvent', {
      type: 'keyDown',
      text: typed,
      ...at,
      ...enter,
    });
    await keyboard.send('Input.dispatchKeyEvent', { type: 'keyUp', ...at, ...enter });
  }
  await keyboard.detach();
}

test('a wrench that types is heard, judged bolt by bolt, kept over a reload, and presses nothing', async ({
  page,
}) => {
  const hand = await atTheSeatClamp(page, boxedMountainBike);
  await hand.typeMarking(['5', '–', '7', 'N·m']);
  await expect(page.getByText('5–7 N·m, marked on the part').first()).toBeVisible();
  const before = await hand.shown();
  const readings = page.getByRole('region', { name: jointWords.reading.title });
  await wrenchTypes(page, '3.02 N.m');
  await expect(readings.getByText(jointWords.reading.outside)).toBeVisible();
  await expect(readings.getByRole('status')).toHaveText(jointWords.reading.bringRight(1));
  await hand.action.tap();
  await expect(page.getByRole('alert')).toContainText(/bolt 1/i); // refused, with the bolt named
  await page.getByRole('button', { name: words.app.close }).tap();
  await wrenchTypes(page, '6.01 N.m');
  await expect(readings.getByText(jointWords.reading.inside)).toBeVisible();
  const read = await hand.shown(); // Enter is the wrench's, not a person's
  expect([read.place, read.title]).toEqual([before.place, before.title]);
  expect(read.action).toContain(jointWords.reading.record(1));
  await page.waitForTimeout(500); // what is typed reaches the disk within a quarter of a second
  await page.reload();
  await expect(readings.getByText(jointWords.reading.row(1, '6.01 N.m'))).toBeVisible();
  const after = await hand.act();
  expect(after.title).not.toBe(seatClamp);
});
