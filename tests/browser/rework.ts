/** Something is loosened again: what goes stale by it, and how it is shown good again. */

import { readFileSync } from 'node:fs';
import { expect, type Page } from '@playwright/test';
import { words } from '../../src/words';
import type { Hand } from './at-the-stand';

const steererClamp = titleOf('cockpit', 'steerer-clamp');

/** Goes back to the steerer clamp and reopens it; answers the steps that it makes stale, as they were listed. */
export async function disturbSteererClamp(page: Page, hand: Hand): Promise<readonly string[]> {
  await goBackTo(page, hand, steererClamp);
  await page.getByRole('button', { name: words.stand.reopen, exact: true }).tap();
  const dialog = page.getByRole('dialog', { name: words.stand.reopenTitle });
  await expect(dialog.getByText(words.stand.reopenWarns)).toBeVisible();
  const stale = await dialog.getByRole('listitem').allInnerTexts();
  await dialog.getByRole('button', { name: words.stand.quickReopen[0] }).tap();
  await dialog.getByRole('button', { name: words.stand.reopenButton }).tap();
  await expect(dialog).toBeHidden();
  await expect(
    page.getByText(words.stand.reopenedBecause(words.stand.quickReopen[0])),
  ).toBeVisible();
  return stale;
}

/** The reopened step and each stale one comes by itself; one action each, in the order of the plan. */
export async function showGoodAgain(hand: Hand, stale: readonly string[]): Promise<void> {
  const done = await hand.workUntil(words.stand.finished);
  expect(done).toEqual([steererClamp, ...stale]);
}

export async function goBackTo(page: Page, hand: Hand, title: string): Promise<void> {
  for (let count = 0; count < 80; count += 1) {
    const now = await hand.shown();
    if (now.title === title) return;
    await page.getByRole('button', { name: words.stand.back, exact: true }).tap();
    await hand.changedFrom(now);
  }
  throw new Error(`“${title}” is not behind this step`);
}

export function titleOf(zone: string, id: string): string {
  const file: { steps: readonly { id: string; title: string }[] } = JSON.parse(
    readFileSync(`seeds/steps/${zone}.json`, 'utf8'),
  );
  const step = file.steps.find((candidate) => candidate.id === id);
  if (step === undefined) throw new Error(`the seeds have no step ${id}`);
  return step.title;
}
