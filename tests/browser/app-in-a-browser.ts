/** The built app for one browser test: a server that can be stopped, a browser that keeps its disk, and somebody at the stand. */

import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, expect, type Page } from '@playwright/test';
import { browserFlags } from '../../scripts/browser-flags.mjs';
import { findBrowser } from '../../scripts/find-browser.mjs';
import { serve } from '../../scripts/serve.mjs';
import { words } from '../../src/words';

export interface OwnServer {
  readonly address: string;
  stop(): Promise<void>;
}

/** A server of this test alone, so that it can be stopped while the app is at work. */
export async function serveApp(): Promise<OwnServer> {
  const server: Server = await serve({ root: 'dist', port: 0 });
  return {
    address: `http://localhost:${(server.address() as AddressInfo).port}/`, // it listens on TCP
    async stop() {
      if (!server.listening) return;
      server.closeAllConnections();
      await new Promise((done) => server.close(done));
    },
  };
}

export interface Profile {
  readonly folder: string;
  erase(): void;
}

/** A folder where a browser keeps its disk from one start to the next. */
export function newProfile(): Profile {
  const folder = mkdtempSync(join(tmpdir(), 'standbook-profile-'));
  return {
    folder,
    erase: () => rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 }),
  };
}

/** The tablet beside the stand, with what it has kept. */
export async function openBrowser({ folder }: Profile): Promise<BrowserContext> {
  const executablePath = await findBrowser();
  const browser = await chromium.launchPersistentContext(folder, {
    args: browserFlags,
    viewport: { width: 1180, height: 820 },
    hasTouch: true,
    ...(executablePath !== undefined && { executablePath }),
  });
  browser.setDefaultTimeout(10_000);
  return browser;
}

/** Opens the app on its rack; the very first time the demo shop is set up on the way. */
export async function openApp(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await expect(page.getByRole('heading', { level: 1, name: words.rack.title })).toBeVisible({
    timeout: 30_000,
  });
}

/** Waits until every file of the app is on the device and the service worker answers for them. */
export async function keptOnDevice(page: Page): Promise<void> {
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
}

/** A browser without a touch screen is clicked. */
export type Gesture = 'tap' | 'click';

export type DemoName = 'noor' | 'tomasz' | 'ines' | 'petra';

export interface DemoPerson {
  readonly id: DemoName;
  readonly name: string;
  readonly pin: string;
}

export function demoPerson(wanted: DemoName): DemoPerson {
  const { people } = readSeed<{ people: readonly DemoPerson[] }>('demo/people.json');
  const person = people.find(({ id }) => id === wanted);
  if (person === undefined) throw new Error(`the demo has nobody called ${wanted}`);
  return person;
}

export function readSeed<T>(file: string): T {
  return JSON.parse(readFileSync(join('seeds', file), 'utf8'));
}

/** Somebody comes to the stand, from whichever screen is open. */
export async function come(
  page: Page,
  who: DemoName,
  gesture: Gesture = 'tap',
): Promise<DemoPerson> {
  const person = demoPerson(who);
  const asked = page.getByRole('dialog', { name: words.hands.title });
  if (!(await asked.isVisible())) {
    const somebody = new RegExp(`^${words.app.nobody}$|${words.app.atStand('')}`);
    await page.getByRole('button', { name: somebody }).first()[gesture]();
  }
  await asked.getByRole('button', { name: person.name })[gesture]();
  await expect(asked).toBeHidden();
  return person;
}

/** Opens a job from the rack by its frame number. */
export async function openJob(
  page: Page,
  frameNumber: string,
  gesture: Gesture = 'tap',
): Promise<string> {
  await page.getByRole('link', { name: frameNumber })[gesture]();
  await page.waitForURL(/#\/job\//);
  await expect(page.getByRole('heading', { level: 1 }).first()).not.toHaveText(words.app.opening);
  return jobAt(page);
}

export function jobAt(page: Page): string {
  return new URL(page.url()).hash.split('/')[2] ?? '';
}

/** Goes to a place of the app without loading the page anew. */
export async function goTo(page: Page, place: string): Promise<void> {
  await page.evaluate(async (hash) => {
    window.location.hash = hash;
    for (let frame = 0; frame < 2; frame += 1) await new Promise(requestAnimationFrame);
  }, place);
  await expect(page.getByRole('heading', { level: 1 }).first()).not.toHaveText(words.app.opening);
}

/** Types a PIN on its pad, as its owner would. */
export async function signWith(page: Page, { name, pin }: DemoPerson): Promise<void> {
  const dialog = page.getByRole('dialog', { name: words.sign.pinOf(name) });
  for (const digit of pin) await dialog.getByRole('button', { name: digit, exact: true }).tap();
  await expect(dialog).toBeHidden({ timeout: 15_000 });
}
