/** Draws the app's icons from the one mark: `node scripts/icons.mjs` after public/icons/favicon.svg has changed. */

import { readFile, writeFile } from 'node:fs/promises';
import { chromium } from '@playwright/test';
import { browserFlags } from './browser-flags.mjs';
import { findBrowser } from './find-browser.mjs';

const folder = 'public/icons';
/** Launchers cut a maskable icon to a circle of 80 % of its width: the mark must lie inside it. */
const insideCircle = 'transform="translate(256 256) scale(.72) translate(-244 -254)"';

const mark = await readFile(`${folder}/favicon.svg`, 'utf8');
const maskable = mark.replace('<g id="mark">', `<g ${insideCircle}>`);
if (maskable === mark) throw new Error('favicon.svg has no <g id="mark">');

const executablePath = await findBrowser();
if (executablePath === undefined) throw new Error('No Chromium found; set CHROMIUM_PATH.');
const browser = await chromium.launch({ executablePath, args: browserFlags });
try {
  const page = await browser.newPage();
  await draw('icon-192.png', mark, 192);
  await draw('icon-512.png', mark, 512);
  await draw('maskable-192.png', maskable, 192);
  await draw('maskable-512.png', maskable, 512);
  await draw('apple-touch-icon.png', maskable, 180);

  /**
   * @param {string} name
   * @param {string} svg
   * @param {number} size
   */
  async function draw(name, svg, size) {
    await page.setViewportSize({ width: size, height: size });
    await page.setContent(
      `<style>body{margin:0}svg{display:block;width:100vw;height:100vh}</style>${svg}`,
    );
    await writeFile(`${folder}/${name}`, await page.screenshot());
    console.log(`${folder}/${name}`);
  }
} finally {
  await browser.close();
}
