/** `npm run pictures`: takes the README's pictures from the built app with the demo shop, at the size of the tablet beside the stand. */

import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { browserFlags } from './browser-flags.mjs';
import { ensureInstalled, projectFolder } from './ensure-installed.mjs';
import { findBrowser, findProgram } from './find-browser.mjs';
import { serve } from './serve.mjs';

process.chdir(projectFolder);
ensureInstalled();

const folder = 'docs/pictures';
/** The demo counts its days back from today: a fixed morning makes the same pictures on any day. */
const morning = new Date('2026-11-25T09:40:00Z');
const mostTaps = 80;
const doneLabel = /^(Done|Record|Gauge shows|Pass \d made|.*[Cc]licked|Enter the (value|figure))/;
/** What is printed beside the bolts on the way, as such parts say it. */
const printed = /^(4–6 N·m|44–53 in·lb|max 6 N·m)$/;

const executablePath = await findBrowser();
if (executablePath === undefined) throw new Error('No Chromium found; set CHROMIUM_PATH.');
const pdftoppm = findProgram('pdftoppm');
if (pdftoppm === undefined) throw new Error('pdftoppm is missing. Install poppler.');

const build = spawnSync(process.execPath, ['scripts/build.mjs', '--quiet'], { stdio: 'inherit' });
if (build.status !== 0) throw new Error('The app could not be built: see the message above.');

mkdirSync(folder, { recursive: true });
const server = await serve({ root: 'dist', port: 0 });
const bound = server.address();
const port = typeof bound === 'object' && bound !== null ? bound.port : 0;
const address = `http://localhost:${port}/`;
const browser = await chromium.launch({ executablePath, args: browserFlags });
try {
  const page = await browser.newPage({
    viewport: { width: 1180, height: 820 },
    hasTouch: true,
    serviceWorkers: 'block',
    timezoneId: 'Europe/London',
  });
  await page.clock.setFixedTime(morning);
  await page.goto(address);
  await page.getByRole('button', { name: 'Nobody at the stand' }).click({ timeout: 60_000 });
  await page.getByRole('button', { name: 'Noor Adeyemi' }).click();
  await page.getByRole('link', { name: /on the stand/ }).waitFor();
  await take('rack');

  await page.getByRole('link', { name: /Hardtail 29.*boxed/ }).click();
  await tap('Open the job');
  await page.getByRole('button', { name: /^All \d+ present/ }).waitFor();
  await page.reload(); // as after any interruption: what was done is still there
  await tap(/^All \d+ present/);
  await workTo(/faceplate/);
  await tap(printed);
  await tap(/^Pass 1 made/);
  await page.getByRole('button', { name: /^Pass 1 made/ }).waitFor({ state: 'hidden' });
  await take('stand');

  await goTo('/');
  await page.getByRole('link', { name: /to be checked/ }).click();
  await page.waitForURL(/\/check$/);
  await goTo(page.url().replace(/^.*#(.*)\/check$/, '$1/walk'));
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  await take('walk');

  await goTo('/records');
  await page.getByRole('link', { name: /Hardtail/ }).click();
  await page.getByRole('img', { name: 'Code of this record' }).waitFor();
  takeSheet(await page.pdf({ format: 'A4', preferCSSPageSize: true, printBackground: true }));

  /** @param {string} name */
  async function take(name) {
    await page.screenshot({ path: join(folder, `${name}.png`), animations: 'disabled' });
    console.log(join(folder, `${name}.png`));
  }

  /** @param {string} hash */
  async function goTo(hash) {
    await page.goto(`${address}#${hash}`);
  }

  async function titleNow() {
    return (await page.getByRole('heading', { level: 1 }).textContent()) ?? '';
  }

  /** @param {string | RegExp} name */
  async function tap(name) {
    await page.getByRole('button', { name }).click();
  }

  /** @param {string} key */
  function exactly(key) {
    return new RegExp(`^${key}$`);
  }

  /**
   * One of the values inside the limit, from the middle.
   * @param {RegExp} name
   */
  function offered(name) {
    return page.getByRole('main').getByRole('button', { name }).nth(2);
  }

  /**
   * Does step after step, as a mechanic would, until one with this title is there.
   * @param {RegExp} title
   */
  async function workTo(title) {
    await page.getByText(/· step \d+ of/).waitFor();
    for (let taps = 0; taps < mostTaps; taps += 1) {
      const heading = await titleNow();
      if (title.test(heading)) return;
      const done = page.getByRole('button', { name: doneLabel }).last(); // the bar stands last
      const label = await done.textContent();
      if (label?.startsWith('Enter the value')) await offered(/^Record \d/).click();
      else if (label?.startsWith('Enter the figure')) await tap(printed);
      else {
        // Where only the part knows the limit, the pad waits in the panel.
        if (/^Record(?! \d)/.test(label ?? '')) for (const key of '70') await tap(exactly(key));
        await done.click();
      }
      while ((await titleNow()) === heading && (await done.textContent()) === label)
        await page.waitForTimeout(50);
    }
    throw new Error(`no step of this build is called ${title}`);
  }
} finally {
  await browser.close();
  server.closeAllConnections();
  server.close();
}

/** @param {Buffer} pdf */
function takeSheet(pdf) {
  const file = join(folder, 'sheet.pdf');
  writeFileSync(file, pdf);
  const args = ['-png', '-r', '100', '-f', '1', '-singlefile', file, join(folder, 'sheet')];
  const { status } = spawnSync(pdftoppm ?? '', args, { stdio: 'inherit' });
  rmSync(file);
  if (status !== 0) throw new Error('The sheet could not be drawn from its PDF.');
  console.log(join(folder, 'sheet.png'));
}
