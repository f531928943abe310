/** What comes after the build: the walk, findings, the two signatures, and the bike in its rider's hands. */

import { expect, type Page } from '@playwright/test';
import type { Severity } from '../../src/engine/inspection';
import { words } from '../../src/words';
import { come, type DemoName, demoPerson, signWith } from './app-in-a-browser';
import { Hand } from './at-the-stand';

/** What is wrong at the points of the walk, by their turn: the first is 1. */
export type Wrongs = Readonly<
  Record<number, { readonly severity: Severity; readonly text: string }>
>;

/** Goes round the bike to the last point; answers the names of the points in their order. */
export async function walkRound(page: Page, wrongs: Wrongs = {}): Promise<readonly string[]> {
  const hand = new Hand(page);
  const names: string[] = [];
  await expect.poll(async () => (await hand.shown()).place).toContain(words.walk.title);
  for (;;) {
    const now = await hand.shown();
    if (now.title === words.walk.done) return names;
    names.push(now.title);
    const wrong = wrongs[names.length];
    if (wrong === undefined) await lookAt(hand);
    else await writeFinding(page, hand, wrong);
  }
}

async function lookAt(hand: Hand): Promise<void> {
  const now = await hand.shown();
  if (now.action.startsWith(words.stand.enterValue)) await hand.enterValue(now);
  else await hand.act();
  await leftPlace(hand, now.place);
}

/** A dialog that opens or closes changes the screen as well: the next point is there only when the place says so. */
async function leftPlace(hand: Hand, place: string): Promise<void> {
  await expect.poll(async () => (await hand.shown()).place).not.toBe(place);
}

async function writeFinding(page: Page, hand: Hand, wrong: Wrongs[number]): Promise<void> {
  const before = await hand.shown();
  await page.getByRole('button', { name: words.walk.wrong, exact: true }).tap();
  const dialog = page.getByRole('dialog', { name: words.walk.wrongTitle });
  await dialog.getByText(words.terms.severityDetails[wrong.severity]).tap();
  await dialog.getByLabel(words.walk.what).fill(wrong.text);
  await dialog.getByRole('button', { name: words.walk.write }).tap();
  await expect(dialog).toBeHidden();
  await leftPlace(hand, before.place);
}

/** Says of an open finding what was done about it. */
export async function putRight(page: Page, text: string, how: string): Promise<void> {
  const row = page.getByRole('listitem').filter({ hasText: text });
  await row.getByRole('button', { name: words.walk.close }).tap();
  const dialog = page.getByRole('dialog', { name: words.walk.closeTitle });
  await dialog.getByRole('textbox', { name: words.walk.closeTitle }).fill(how);
  await dialog.getByRole('button', { name: words.walk.closeButton }).tap();
  await expect(dialog).toBeHidden();
}

/** Signs with the bar's one action, under the name of who is at the stand. */
export async function signAs(page: Page, meaning: 'built' | 'checked', who: DemoName) {
  const label = meaning === 'built' ? words.sign.builtButton : words.sign.checkedButton;
  await page.getByRole('button', { name: label }).tap();
  await signWith(page, demoPerson(who));
}

/** Another person comes, on the screen where the signature is asked for. */
export async function changeHands(page: Page, who: DemoName): Promise<void> {
  await page.getByRole('button', { name: words.sign.changeHands }).tap();
  await come(page, who);
}

/** Milliseconds: twice the pause after which typed words go to the disk. */
const longerThanTyping = 500;

/** Names the customer, tells everything, is interrupted by a reload that loses none of it, lets them sign, and seals. */
export async function handOver(page: Page, customer: string, witness: DemoName): Promise<void> {
  await expect(
    page.getByRole('heading', { level: 1, name: words.handOver.title, exact: true }),
  ).toBeVisible();
  await page.getByLabel(words.handOver.customer).fill(customer);
  const topics = page.getByRole('group', { name: words.handOver.tell }).getByRole('checkbox');
  for (const topic of await topics.all()) await topic.tap();
  for (const topic of await topics.all()) await expect(topic).toBeChecked();
  await page.waitForTimeout(longerThanTyping);
  await page.reload();
  await expect(page.getByLabel(words.handOver.customer)).toHaveValue(customer);
  for (const topic of await topics.all()) await expect(topic).toBeChecked();
  await drawSignature(page);
  await page.getByRole('button', { name: words.handOver.button }).tap();
  await signWith(page, demoPerson(witness));
  await page.waitForURL(/#\/record\//);
}

async function drawSignature(page: Page): Promise<void> {
  const canvas = page.getByRole('img', { name: words.handOver.sign });
  // The bar lies over the foot of the screen: what stands there is in view and cannot be touched.
  await canvas.evaluate((element) => element.scrollIntoView({ block: 'center' }));
  const box = await canvas.boundingBox();
  if (box === null) throw new Error('there is nowhere to sign');
  const at = (x: number, y: number) => [box.x + box.width * x, box.y + box.height * y] as const;
  await page.mouse.move(...at(0.2, 0.7));
  await page.mouse.down();
  for (let turn = 1; turn <= 12; turn += 1)
    await page.mouse.move(...at(0.2 + turn * 0.05, turn % 2 === 0 ? 0.7 : 0.3), { steps: 3 });
  await page.mouse.up();
}
