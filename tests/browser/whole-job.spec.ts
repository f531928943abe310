/** One job from its box to its rider, in a browser that loses the network after the first load and never has it again. */

import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { words } from '../../src/words';
import {
  come,
  goTo,
  keptOnDevice,
  newProfile,
  type OwnServer,
  openApp,
  openBrowser,
  openJob,
  type Profile,
  readSeed,
  serveApp,
} from './app-in-a-browser';
import { Hand } from './at-the-stand';
import { changeHands, handOver, putRight, signAs, walkRound } from './from-walk-to-rider';
import { print, saidIn } from './printed-sheet';
import { disturbSteererClamp, showGoodAgain } from './rework';
import { type TypedBike, typeBox } from './typed-box';

const frameNumber = 'LF29-990417';
const customer = 'Ottilie Fenwick';

/** Invented findings, one of each severity, at the third, sixth and ninth point of the walk. */
const wrongs = {
  3: { severity: 'stop-ride', text: 'Oil on the front pads.' },
  6: { severity: 'before-hand-over', text: 'The bell sits askew.' },
  9: { severity: 'tell-customer', text: 'A paint chip inside the chainstay.' },
} as const;

let server: OwnServer;
let profile: Profile;
let browser: BrowserContext;

test.beforeEach(async () => {
  server = await serveApp();
  profile = newProfile();
  browser = await openBrowser(profile);
});

test.afterEach(async () => {
  await browser.close();
  await server.stop();
  profile.erase();
});

test('a mountain bike goes from its box to its rider without a network', async () => {
  test.setTimeout(150_000);
  let page = await firstPage(browser);
  await openApp(page, server.address);
  await keptOnDevice(page);
  await server.stop();
  await browser.setOffline(true);
  const hand = new Hand(page);
  let job = '';
  let digest = '';

  await test.step('a box typed by hand goes on the rack', async () => {
    await come(page, 'noor');
    const { bikes } = readSeed<{ bikes: readonly TypedBike[] }>('demo/bikes.json');
    const like = bikes.find(({ model }) => model === 'Hardtail 29');
    if (like === undefined) throw new Error('the demo has a mountain bike');
    await typeBox(page, { ...like, frameNumber });
    await page.getByRole('link', { name: words.app.rack }).tap();
    job = await openJob(page, frameNumber);
  });

  await test.step('it is built with few taps', async () => {
    await hand.act(); // opens the job
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(words.contents.title);
    hand.startCounting();
    await hand.act(); // the contents, all present
    const { place } = await hand.shown();
    const steps = Number(place.match(/\d+/g)?.at(-1));
    const done = await hand.workUntil(words.stand.finished);
    expect(new Set(done).size).toBe(steps);
    test.info().annotations.push({ type: 'taps', description: hand.counted(steps) });
    process.stdout.write(`${hand.counted(steps)}\n`);
    // The promise of the brief: every tap counted, figures and measured values among them.
    expect(hand.taps).toBeLessThanOrEqual(1.3 * steps);
    expect(hand.besidePasses.size).toBeGreaterThan(15);
    expect(Math.max(...hand.besidePasses.values())).toBeLessThanOrEqual(2);
  });

  await test.step('what is loosened again makes stale what relied on it', async () => {
    const stale = await disturbSteererClamp(page, hand);
    expect(stale.length).toBeGreaterThan(1);
    await goTo(page, `/job/${job}/check`);
    await expect(page.getByText(/steps? to finish/)).toBeVisible();
    await expect(page.getByRole('button', { name: words.sign.builtButton })).toBeHidden();
    await goTo(page, `/job/${job}`);
    await showGoodAgain(hand, stale);
  });

  await test.step('findings block the signature until they are put right and looked at again', async () => {
    await page.getByRole('button', { name: words.stand.startWalk }).tap();
    const names = await walkRound(page, wrongs);
    await hand.act(); // to the signature
    await expect(page.getByText(/findings still open/)).toContainText(wrongs[3].text);
    await expect(page.getByText(/findings still open/)).toContainText(wrongs[6].text);
    await expect(page.getByText(/findings still open/)).not.toContainText(wrongs[9].text);
    await expect(page.getByRole('button', { name: words.sign.builtButton })).toBeHidden();
    await goTo(page, `/job/${job}/walk`);
    await putRight(page, wrongs[3].text, 'New pads, rotor cleaned.');
    await goTo(page, `/job/${job}`);
    await goTo(page, `/job/${job}/walk`);
    expect(await walkRound(page)).toEqual([names[2]]);
    await putRight(page, wrongs[6].text, 'Turned square and tightened.');
    expect(await walkRound(page)).toEqual([names[5]]);
    await hand.act();
  });

  await test.step('the builder signs, and somebody else checks', async () => {
    await signAs(page, 'built', 'noor');
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(words.sign.checkedTitle);
    await expect(page.getByText(/someone else has to check it/)).toContainText('Noor Adeyemi');
    await expect(page.getByRole('button', { name: words.sign.checkedButton })).toBeHidden();
    await changeHands(page, 'petra');
    await signAs(page, 'checked', 'petra');
    await page.getByRole('button', { name: words.handOver.title }).tap();
  });

  await test.step('the customer is told, signs, and the record is sealed', async () => {
    await handOver(page, customer, 'petra');
    await expect(page.getByText(words.records.unaltered)).toBeVisible();
  });

  for (const [paper, size] of [
    ['A4', [210, 297]], // ISO 216
    ['Letter', [215.9, 279.4]], // ANSI/ASME Y14.1, size A: 8½ × 11 in
  ] as const) {
    await test.step(`the sheet on ${paper} says what was done`, async () => {
      const sheet = await print(page, paper);
      expect(sheet.pages).toBeLessThanOrEqual(2);
      for (const side of [0, 1] as const) expect(sheet.size[side]).toBeCloseTo(size[side], 0);
      for (const said of [
        frameNumber,
        'Noor Adeyemi',
        'Petra Lindqvist',
        customer,
        'Larkfell assembly booklet, p. 8',
        'marked on the part',
        wrongs[3].text.slice(0, -1),
        `${words.terms.severities['stop-ride']}: ${wrongs[3].text.slice(0, -1)}; put right`,
        `${words.terms.severities['tell-customer']}: ${wrongs[9].text}`,
        words.sheet.electronically,
        ...(await classAJoints(page)),
      ])
        expect(sheet.text, paper).toContain(said);
      expect(sheet.text).toMatch(/front 2\.\d bar \(\d\d psi\), rear 2\.\d bar \(\d\d psi\)/);
      const said = saidIn(sheet.code ?? '');
      expect(said).toMatchObject({ job, frame: frameNumber });
      digest = String(said.head);
      expect(digest).toMatch(/^[0-9a-f]{64}$/); // SHA-256
      expect(sheet.text).toContain(digest.replaceAll(/(.{8})(?=.)/g, '$1 '));
    });
  }

  await test.step('closed and opened again, still without a network, everything is there', async () => {
    await browser.close();
    browser = await openBrowser(profile);
    await browser.setOffline(true);
    page = await firstPage(browser);
    await openApp(page, server.address);
    await page.getByRole('link', { name: words.app.records, exact: true }).tap();
    await page.getByRole('link', { name: frameNumber }).tap();
    await expect(page.getByText(words.records.unaltered)).toBeVisible();
    const again = await print(page, 'A4');
    expect(again.text).toContain(customer);
    expect(saidIn(again.code ?? '').head).toBe(digest);
  });
});

/** Joint, figure and wrench of each row of the table on the screen: all must be on paper. */
async function classAJoints(page: Page): Promise<readonly string[]> {
  const rows = await page.getByRole('table').getByRole('row').all();
  expect(rows.length).toBeGreaterThan(6);
  return Promise.all(
    rows.map(async (row) => {
      const cells = await row.getByRole('cell').or(row.getByRole('rowheader')).allInnerTexts();
      return cells.join(' ').replaceAll(/\s+/g, ' ');
    }),
  );
}

async function firstPage(context: BrowserContext): Promise<Page> {
  return context.pages()[0] ?? context.newPage();
}
