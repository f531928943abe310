/** The power fails while the storage writes: whatever it has acknowledged is there afterwards, in both of Chromium's backends. */

import { readdirSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { findBrowser, findProgram } from '../../scripts/find-browser.mjs';
import { serve } from '../../scripts/serve.mjs';
import { countOfWhole, keptLog } from '../browser/kept-log';
import { seededRandom } from '../support/seeded-random';
import { createDisk, whyNoDisk } from './ext4-disk';
import { bundledSuite, type SuiteBrowser, startSuite } from './suite-in-a-browser';

const rounds = Number(process.env.ROUNDS ?? '20');
const seed = Number(process.env.SEED ?? '20261125');
const job = 'job-1';

const backends = [
  { name: 'LevelDB', flags: ['--disable-features=IdbSqliteBackingStore'] },
  { name: 'SQLite', flags: ['--enable-features=IdbSqliteBackingStore'] },
] as const;

const missing = whyNoDisk();
const program = await findBrowser();
if (missing !== undefined) console.log(`Not run: ${missing}.`);
else if (program === undefined) console.log('Not run: there is no Chromium here.');
else for (const backend of backends) await cutPowerOf(program, backend);
console.log(
  findProgram('firefox') === undefined
    ? 'Not run in Firefox: there is none here.'
    : 'Not run in Firefox: it is not driven here; Playwright’s own build keeps no profile of the installed one.',
);

async function cutPowerOf(
  browser: string,
  { name, flags }: (typeof backends)[number],
): Promise<void> {
  const server = await serve({ root: 'public', port: 0 });
  const address = `http://localhost:${(server.address() as AddressInfo).port}/`; // it listens on TCP
  const bundle = await bundledSuite();
  const random = seededRandom(seed);
  const disk = createDisk();
  const profile = join(disk.folder, 'profile');
  const once = () => startSuite(browser, { profile, flags, address, bundle });
  // A browser that a busy machine does not let come up says nothing about the disk.
  const start = () => once().catch(once).catch(once);
  let acknowledged = 0;
  let most = 0;
  let suite: SuiteBrowser | undefined;
  try {
    suite = await start();
    for (let round = 1; round <= rounds; round += 1) {
      const before = acknowledged;
      await suite.page.exposeFunction('acknowledge', (count: number) => {
        acknowledged = Math.max(acknowledged, count);
      });
      // As text: a function would bring along what the compiler adds to it.
      await suite.page.evaluate(
        `storageSuite.keepAppending('standbook', '${job}', (count) => acknowledge(count))`,
      );
      while (acknowledged === before) await new Promise((done) => setTimeout(done, 5));
      await new Promise((done) => setTimeout(done, random() * 700));
      disk.cutPower();
      await suite.kill();
      disk.powerUp();
      suite = await start();
      const stored = countOfWhole(job, await keptLog(suite.page, job));
      if (stored < acknowledged)
        throw new Error(`round ${round}: ${acknowledged} acknowledged, ${stored} stored`);
      most = Math.max(most, acknowledged - before);
    }
    console.log(
      `${name}: ${rounds} power cuts, ${acknowledged} writes acknowledged (up to ${most} a round), none lost, every log whole (seed ${seed}; ${backendIn(profile)})`,
    );
  } catch (error) {
    process.exitCode = 1;
    console.error(`${name}: ${error instanceof Error ? error.message : String(error)}`);
  } finally {
    await suite?.kill();
    server.closeAllConnections();
    server.close();
    disk.remove();
  }
}

/** What the browser has really used, by the files it has left. */
function backendIn(profile: string): string {
  const files = readdirSync(join(profile, 'Default'), { recursive: true, encoding: 'utf8' });
  const indexed = files.filter((file) => file.startsWith('IndexedDB'));
  if (indexed.some((file) => file.includes('.leveldb/'))) return 'LevelDB files';
  return indexed.length > 0 ? 'SQLite files' : `no files of IndexedDB`;
}
