/** From the tap to durable, in real Chromium on a real disk, against a bare put with the same durability in the same run. */

import { mkdtempSync, rmSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import { build } from 'vite';
import { browserFlags } from '../../scripts/browser-flags.mjs';
import { findBrowser } from '../../scripts/find-browser.mjs';
import { serve } from '../../scripts/serve.mjs';
import { demoToolsSchema } from '../../src/exchange/demo.schema';
import { readDemo, wrenchesOn } from '../support/demo-files';
import { readGolden } from './golden-log';
import type { TapTimed } from './page/time-taps';
import { medianOf, said } from './quantiles';

const aim = 1.5;
const jobs = 4;
/** Until the browser has compiled what is hot. */
const warmUp = 40;

const folder = mkdtempSync(join(tmpdir(), 'standbook-bench-'));
try {
  report(await measure());
} finally {
  rmSync(folder, { recursive: true, force: true });
}

async function measure(): Promise<readonly TapTimed[]> {
  const page = join(folder, 'page');
  await build({
    configFile: false,
    root: fileURLToPath(new URL('./page', import.meta.url)),
    logLevel: 'error',
    build: { outDir: page, target: 'chrome111' },
  });
  const server = await serve({ root: page, port: 0 });
  const { port } = server.address() as AddressInfo; // it listens on a port
  const executablePath = await findBrowser();
  // A profile on the disk: an incognito window keeps its databases in memory, where durable means nothing.
  const browser = await chromium.launchPersistentContext(join(folder, 'profile'), {
    headless: true,
    args: browserFlags,
    ...(executablePath && { executablePath }),
  });
  try {
    const tab = await browser.newPage();
    await tab.goto(`http://localhost:${port}/`);
    const { plan } = readGolden('mountain-bike');
    const today = new Date().toISOString().slice(0, 10);
    const { wrenches } = demoToolsSchema.parse(readDemo('tools.json'));
    return await tab.evaluate((asked) => window.timeTaps(asked), {
      plan,
      wrenches: wrenchesOn(today, wrenches),
      jobs,
    });
  } finally {
    await browser.close();
    server.close();
  }
}

function report(all: readonly TapTimed[]): void {
  const timed = all.slice(warmUp);
  const times = (name: Exclude<keyof TapTimed, 'entries'>) => timed.map((row) => row[name]);
  const taps = times('tap');
  const entries = all.reduce((sum, row) => sum + row.entries, 0);
  console.log(`${jobs} whole mountain bikes, ${entries} entries; first ${warmUp} taps left out`);
  console.log(said('tap to durable (perform: decide, seal, keep)', taps));
  console.log(said('  of this, decide, seal and fold', times('engine')));
  console.log(said('bare put of one entry, strict', times('put')));
  console.log(said('bare get, add and put of the same rows, strict', times('append')));
  const ratio = medianOf(taps) / medianOf(times('put'));
  const verdict = ratio <= aim ? 'within' : 'over';
  console.log(`tap : bare put ${ratio.toFixed(2)}, ${verdict} the aim of ${aim}`);
  console.log(`tap : same rows ${(medianOf(taps) / medianOf(times('append'))).toFixed(2)}`);
}
