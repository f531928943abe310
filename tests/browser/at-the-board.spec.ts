/** What the stand refuses and how it waits: a missing part, an overdue wrench, a step set aside, a job on hold. */

import { expect, test } from '@playwright/test';
import { words } from '../../src/words';
import { come, openApp, openJob, readSeed } from './app-in-a-browser';
import { Hand } from './at-the-stand';
import { titleOf } from './rework';

const boxedMountainBike = 'LF29-204118';
const pedalsName = partName('pedals');
const boxedTownBike = 'OB7-511042';

test('a missing part stops the steps that need it, says so, and stops nothing else', async ({
  page,
}) => {
  test.setTimeout(90_000);
  await openApp(page, '/');
  await come(page, 'noor');
  await openJob(page, boxedMountainBike);
  const hand = new Hand(page);
  await hand.act();
  await page.getByRole('button', { name: `${pedalsName}: ${words.contents.missing}` }).tap();
  await expect(
    page.getByRole('button', { name: `${pedalsName}: ${words.contents.missing}`, pressed: true }),
  ).toBeVisible();
  await page.getByRole('button', { name: words.contents.noteOn(pedalsName), exact: true }).tap();
  const note = page.getByRole('dialog', { name: words.contents.noteOn(pedalsName) });
  await note.getByLabel(words.contents.noteAsk).fill('Two left ones.');
  await note.getByRole('button', { name: words.contents.keepNote }).tap();
  await expect(page.getByText('Two left ones.')).toBeVisible();
  await hand.act(); // the rest, present
  const done = await hand.workUntil(words.stand.blocked);
  const pedals = ['left-pedal', 'right-pedal'].map((id) => titleOf('drivetrain', id));
  for (const pedal of pedals) {
    expect(done).not.toContain(pedal);
    await expect(page.getByText(pedal, { exact: true })).toBeVisible();
  }
  await expect(
    page.getByText(`${pedalsName} (${words.terms.partStates.missing})`).first(),
  ).toBeVisible();
  expect(done).toContain(titleOf('drivetrain', 'left-crank'));

  await page.getByRole('button', { name: words.stand.missingContents }).tap();
  await page.getByRole('button', { name: `${pedalsName}: ${words.contents.present}` }).tap();
  await page.getByRole('button', { name: words.contents.done }).tap();
  const after = await hand.workUntil(words.stand.finished);
  expect(after).toEqual(expect.arrayContaining(pedals));
});

test('a wrench overdue for calibration, and one that was dropped, are refused with the reason', async ({
  page,
}) => {
  await openApp(page, '/');
  await come(page, 'noor');
  await openJob(page, boxedTownBike);
  const hand = new Hand(page);
  await hand.act();
  await hand.act();
  const wrench = page.getByRole('button', { name: words.torque.change, exact: true });
  for (let count = 0; count < 80 && !(await wrench.isVisible()); count += 1) await hand.goOn();
  await wrench.tap();
  const dialog = page.getByRole('dialog', { name: words.torque.chooseTitle });
  const row = (id: string) => dialog.getByRole('listitem').filter({ hasText: `${id} · ` });
  await expect(row('G')).toContainText(/Wrench G was due for calibration on .+\. Take another/);
  await expect(row('E')).toContainText(/Wrench E is marked dropped/);
  for (const refused of ['G', 'E'])
    await expect(dialog.getByRole('button', { name: words.torque.choose(refused) })).toHaveCount(0);
  await expect(dialog.getByRole('button', { name: /^Take [A-DF]$/ }).first()).toBeVisible();
});

test('a step set aside comes back at the end, and a job on hold waits until it is resumed', async ({
  page,
}) => {
  await openApp(page, '/');
  await come(page, 'noor');
  await openJob(page, boxedMountainBike);
  const hand = new Hand(page);
  await hand.act();
  await hand.act();
  const first = await hand.shown();
  await page.getByRole('button', { name: words.stand.setAside, exact: true }).tap();
  const aside = page.getByRole('dialog', { name: words.stand.setAsideTitle });
  await aside.getByRole('button', { name: words.stand.setAsideButton }).tap();
  await expect(aside.getByRole('alert')).toHaveText(words.refusal({ code: 'reason-missing' }));
  const [reason] = words.stand.quickAside;
  await aside.getByRole('button', { name: reason }).tap();
  await aside.getByRole('button', { name: words.stand.setAsideButton }).tap();
  await expect(aside).toBeHidden();

  const now = await hand.shown();
  await page.getByRole('button', { name: words.stand.hold, exact: true }).tap();
  const hold = page.getByRole('dialog', { name: words.stand.holdTitle });
  await expect(hold.getByRole('button', { name: words.stand.holdButton })).toBeDisabled();
  await hold.getByText(words.terms.holdNames.customer, { exact: true }).tap();
  await hold.getByLabel(words.stand.holdNote).fill('Which colour of grips?');
  await hold.getByRole('button', { name: words.stand.holdButton }).tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(words.stand.heldTitle);
  await expect(
    page.getByText(/for the customer: Which colour of grips\? · Noor Adeyemi/),
  ).toBeVisible();

  await page.getByRole('link', { name: words.app.rack }).first().tap();
  const row = page.getByRole('link', { name: boxedMountainBike });
  await expect(row).toContainText(words.terms.statusNames['on-hold']);
  await expect(row).toContainText('Which colour of grips?');
  await row.tap();
  await page.getByRole('button', { name: words.stand.resume }).tap();
  await expect(page.getByRole('button', { name: words.stand.resume })).toBeHidden();
  expect((await hand.shown()).title).toBe(now.title);
  expect(now.title).toBeTruthy();
  expect(first.title).toBeTruthy();
});

test('the rack shows every open job of the demo by the day somebody wants it, with its state', async ({
  page,
}) => {
  await openApp(page, '/');
  const rows = page.getByRole('main').getByRole('listitem').getByRole('link');
  await expect(rows).toHaveCount(8);
  for (const [frame, state] of [
    ['LF29-204118', 'boxed'],
    ['LF29-204096', 'on-the-stand'],
    ['OB7-511038', 'on-hold'],
    ['OB7-510774', 'to-be-checked'],
  ] as const) {
    const row = page.getByRole('link', { name: frame });
    await expect(row).toContainText(words.terms.statusNames[state]);
  }
  const order = [
    'LF29-204096', // tomorrow 11:00
    'OB7-510774', // tomorrow 14:00
    'OB7-511038', // in two days
    'LF29-204118',
    'OB7-511042',
    'LF27-118402',
    'WT9-60317',
    'LFJ24-7719', // nobody promised a time
  ];
  await expect(rows).toContainText(order);
  await expect(page.getByRole('heading', { name: words.rack.noPromise })).toBeVisible();
});

function partName(wanted: string): string {
  const { parts } = readSeed<{ parts: readonly { id: string; name: string }[] }>('parts.json');
  const part = parts.find(({ id }) => id === wanted);
  if (part === undefined) throw new Error(`the seeds have no part ${wanted}`);
  return part.name;
}
