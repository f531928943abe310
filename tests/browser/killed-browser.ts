/** A browser that this test owns as a process, so that it can be killed as a crash or an empty battery would. */

import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium, expect, type Page } from '@playwright/test';
import { browserFlags } from '../../scripts/browser-flags.mjs';
import { findBrowser } from '../../scripts/find-browser.mjs';
import type { Profile } from './app-in-a-browser';

export interface OwnBrowser {
  readonly page: Page;
  /** Ends every process of it at once, without a word to any of them. */
  kill(): Promise<void>;
}

export async function startBrowser({ folder }: Profile): Promise<OwnBrowser> {
  const program = (await findBrowser()) ?? chromium.executablePath();
  const portFile = join(folder, 'DevToolsActivePort');
  rmSync(portFile, { force: true });
  const flags = ['--headless', '--remote-debugging-port=0', '--window-size=1180,820'];
  const started = spawn(program, [...browserFlags, ...flags, `--user-data-dir=${folder}`], {
    detached: true, // its own process group, so that no part of it is left behind
    stdio: 'ignore',
  });
  const browser = await connectedTo(portFile);
  const [context] = browser.contexts();
  if (context === undefined) throw new Error('the browser opened without a window');
  context.setDefaultTimeout(10_000);
  const page = context.pages()[0] ?? (await context.newPage());
  await page.setViewportSize({ width: 1180, height: 820 });
  return {
    page,
    async kill() {
      await killed(started);
      await browser.close().catch(() => undefined); // only the connection is left to close
    },
  };
}

async function killed(started: ChildProcess): Promise<void> {
  if (started.pid === undefined || started.exitCode !== null) return;
  const ended = once(started, 'exit');
  process.kill(-started.pid, 'SIGKILL');
  await ended;
}

/** The browser writes the port it has chosen into its own folder. */
async function connectedTo(portFile: string): Promise<Browser> {
  let port = '';
  await expect
    .poll(
      () => {
        try {
          [port = ''] = readFileSync(portFile, 'utf8').split('\n');
        } catch {
          return ''; // not yet
        }
        return port;
      },
      { intervals: [50], timeout: 20_000 },
    )
    .toMatch(/^\d+$/);
  return connected(`http://127.0.0.1:${port}`, 3);
}

/** A browser that has just written its port may let the first call hang: it is asked again, not waited for. */
async function connected(address: string, tries: number): Promise<Browser> {
  try {
    return await chromium.connectOverCDP(address, { timeout: 10_000 });
  } catch (error) {
    if (tries <= 1) throw error;
    return connected(address, tries - 1);
  }
}
