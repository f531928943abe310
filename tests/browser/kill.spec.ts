/** What the screen has shown as done has reached the disk: the browser is killed the moment the next step appears. */

import { expect, test } from '@playwright/test';
import { words } from '../../src/words';
import { come, newProfile, openApp, openJob, type Profile } from './app-in-a-browser';
import { Hand, type Shown } from './at-the-stand';
import { type OwnBrowser, startBrowser } from './killed-browser';

const onTheStand = 'LF29-204096';
const kills = 8;
const seed = 20_261_125;

let profile: Profile;
let own: OwnBrowser | undefined;

test.beforeEach(() => {
  profile = newProfile();
});

test.afterEach(async () => {
  await own?.kill();
  own = undefined;
  profile.erase();
});

test('a step shown as done is done after the browser was killed, each of eight times', async ({
  baseURL,
}) => {
  test.setTimeout(150_000);
  const random = lehmer(seed);
  let expected: Shown | undefined;
  for (let count = 0; count <= kills; count += 1) {
    own = await startBrowser(profile);
    const hand = new Hand(own.page, 'click');
    await openApp(own.page, baseURL ?? '');
    if (count === 0) await come(own.page, 'noor', 'click');
    await openJob(own.page, onTheStand, 'click');
    await hand.settled();
    // The same step, the same pass: nothing that was shown has been lost.
    if (expected !== undefined)
      expect(await hand.shown(), `kill ${count}, seed ${seed}`).toEqual(expected);
    if (count === kills) break;
    const actions = 1 + Math.floor(random() * 4);
    for (let action = 0; action < actions; action += 1) expected = await hand.goOn();
    await own.kill();
    own = undefined;
  }
  expect(expected?.title).toBeTruthy();
});

test('a reload in the middle of a step keeps the place, the figure and the passes', async ({
  page,
}) => {
  await openApp(page, '/');
  await come(page, 'noor');
  await openJob(page, 'LF29-204118');
  const hand = new Hand(page);
  await hand.act();
  await hand.act();
  const faceplate = 'Bring the faceplate bolts up together';
  await hand.workUntil(faceplate);
  await hand.goOn(); // its figure
  const afterOne = await hand.goOn(); // its first pass
  expect(afterOne.title).toBe(faceplate);
  expect(afterOne.action).toContain(words.torque.risen(2));
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(faceplate);
  expect(await hand.shown()).toEqual(afterOne);
  await expect(page.getByText('4–6 N·m, marked on the part')).toBeVisible();
});

/** Park and Miller's minimal standard generator (CACM 31, 1988): the same moments in every run. */
function lehmer(start: number): () => number {
  let state = start;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}
