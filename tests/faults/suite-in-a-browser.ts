/** The real storage in a browser of its own, whose profile lies where a trial wants it. */

import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium, type Page } from '@playwright/test';
import { build } from 'vite';
import { browserFlags } from '../../scripts/browser-flags.mjs';

export interface SuiteBrowser {
  readonly page: Page;
  /** Ends every process of it at once. */
  kill(): Promise<void>;
}

export async function bundledSuite(): Promise<string> {
  const entry = fileURLToPath(new URL('../browser/fixtures/storage-suite.ts', import.meta.url));
  const built = await build({
    configFile: false,
    logLevel: 'error',
    build: { write: false, lib: { entry, formats: ['iife'], name: 'suite' } },
  });
  const [first] = Array.isArray(built) ? built : [built];
  if (first === undefined || !('output' in first)) throw new Error('nothing was built');
  return first.output[0].code;
}

export async function startSuite(
  program: string,
  {
    profile,
    flags,
    address,
    bundle,
  }: {
    readonly profile: string;
    readonly flags: readonly string[];
    readonly address: string;
    readonly bundle: string;
  },
): Promise<SuiteBrowser> {
  const portFile = join(profile, 'DevToolsActivePort');
  rmSync(portFile, { force: true });
  const own = ['--headless', '--remote-debugging-port=0', `--user-data-dir=${profile}`];
  const started = spawn(program, [...browserFlags, ...flags, ...own], {
    detached: true,
    stdio: 'ignore',
  });
  try {
    const browser = await chromium.connectOverCDP(`http://127.0.0.1:${await portIn(portFile)}`);
    const [context] = browser.contexts();
    if (context === undefined) throw new Error('the browser opened without a window');
    const page = context.pages()[0] ?? (await context.newPage());
    await page.goto(`${address}robots.txt`);
    await page.evaluate(bundle);
    return {
      page,
      async kill() {
        await killed(started);
        await browser.close().catch(() => undefined); // only the connection is left to close
      },
    };
  } catch (error) {
    await killed(started);
    throw error;
  }
}

async function portIn(file: string): Promise<string> {
  for (let tries = 0; tries < 600; tries += 1) {
    const [port = ''] = existsSync(file) ? readFileSync(file, 'utf8').split('\n') : [];
    if (port !== '') return port;
    await new Promise((done) => setTimeout(done, 50));
  }
  throw new Error('the browser did not open its port');
}

async function killed(started: ChildProcess): Promise<void> {
  if (started.pid === undefined || started.exitCode !== null || started.signalCode !== null) return;
  const ended = once(started, 'exit');
  process.kill(-started.pid, 'SIGKILL');
  await ended;
}
