/** What the screen has shown as done has reached the disk: the browser is killed at random moments under the taps. */

import { expect, test } from '@playwright/test';
import { words } from '../../src/words';
import { come, newProfile, openApp, openJob, type Profile } from './app-in-a-browser';
import { Hand, type Shown } from './at-the-stand';
import { countOfWhole, keptLog } from './kept-log';
import { type OwnBrowser, startBrowser } from './killed-browser';

const onTheStand = 'LF29-204096';
/** `npm run faults kill` tries two hundred. */
const kills = Number(process.env.STANDBOOK_KILLS ?? 20);
const seed = Number(process.env.SEED ?? 20_261_125);
/** Milliseconds: a kill comes before, during or after the write of a tap. */
const longestWait = 400;
/** A build has fewer actions than two hundred kills need: then another browser begins with the same box. */
const killsPerProfile = 20;

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

test(`what was shown is kept and the log is whole after each of ${kills} kills at random moments`, async ({
  baseURL,
}) => {
  test.setTimeout(60_000 + kills * 15_000);
  const random = lehmer(seed);
  let lost = 0;
  let between = 0;
  for (let begun = 0; begun < kills; begun += killsPerProfile) {
    if (begun > 0) {
      profile.erase();
      profile = newProfile();
    }
    let before: Acknowledged | undefined;
    for (let count = begun; count <= Math.min(begun + killsPerProfile, kills); count += 1) {
      const where = `kill ${count}, seed ${seed}`;
      own = await startBrowser(profile);
      const { page } = own;
      const hand = new Hand(page, 'click');
      await openApp(page, baseURL ?? '');
      if (before === undefined) await come(page, 'noor', 'click');
      const job = await openJob(page, onTheStand, 'click');
      await hand.settled();
      const kept = countOfWhole(job, await keptLog(page, job));
      if (before !== undefined) {
        expect(kept, where).toBeGreaterThanOrEqual(before.entries);
        if (kept === before.entries) expect(await hand.shown(), where).toEqual(before.shown);
        else between += 1;
        if (kept < before.entries) lost += 1;
      }
      const actions = Math.floor(random() * 4);
      for (let action = 0; action < actions; action += 1) await hand.goOn();
      before = {
        shown: await hand.shown(),
        entries: countOfWhole(job, await keptLog(page, job)),
      };
      const going = hand.goOn().catch(() => undefined); // the browser dies under this tap
      await new Promise((done) => setTimeout(done, random() * random() * longestWait));
      await own.kill();
      await going;
      own = undefined;
    }
  }
  expect(lost).toBe(0);
  // Some kills came after the disk had a tap that the screen had not shown yet: kept all the same.
  process.stdout.write(
    `${kills} kills, ${between} between the disk and the screen, ${lost} lost (seed ${seed})\n`,
  );
});

/** What the screen had shown before the last, unfinished tap, and how many entries its log had then. */
interface Acknowledged {
  readonly shown: Shown;
  readonly entries: number;
}

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
