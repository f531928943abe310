/** The shell of the app on a plain static host: strict policy, sub-path, no network, an update that waits to be asked for. */

import { appendFileSync, cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { contentSecurityPolicy } from '../../scripts/security-headers.mjs';
import { serve } from '../../scripts/serve.mjs';

const subPath = 'shop/book';
let folder: string;
let server: Server;
let address: string;

test.beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'standbook-'));
  cpSync('dist', join(folder, subPath), { recursive: true });
  server = await serve({ root: folder, port: 0 });
  address = `http://localhost:${(server.address() as AddressInfo).port}/${subPath}/`;
});

test.afterEach(async () => {
  await stopServer();
  rmSync(folder, { recursive: true, force: true });
});

test('the page loads with nothing refused by its own security policy, and asks no third party', async ({
  page,
}) => {
  const complaints: string[] = [];
  const foreign: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('request', (request) => {
    if (!request.url().startsWith(new URL(address).origin)) foreign.push(request.url());
  });
  await openAndKeep(page);
  await page.reload();
  await expect(page.locator('#app')).not.toBeEmpty();
  expect(complaints).toEqual([]);
  expect(foreign).toEqual([]);
});

test('the built page carries the policy itself, for hosts that send no headers', () => {
  const page = readFileSync('dist/index.html', 'utf8').replaceAll('&#39;', "'");
  expect(page).toContain(`content="${contentSecurityPolicy}"`);
});

test('the policy stops an inline script and an address of another origin', async ({ page }) => {
  await openAndKeep(page);
  const refused = await page.evaluate(async () => {
    const directives: string[] = [];
    document.addEventListener('securitypolicyviolation', (event) => {
      directives.push(event.effectiveDirective);
    });
    const script = document.createElement('script');
    try {
      script.text = 'window.name = "ran"';
      document.head.append(script);
    } catch {
      // a browser with trusted types throws here already
    }
    await fetch('http://127.0.0.1:9/').catch(() => undefined);
    await new Promise((done) => setTimeout(done, 100));
    return { directives, ran: window.name === 'ran' };
  });
  expect(refused.ran).toBe(false);
  expect(refused.directives).toContain('require-trusted-types-for');
  expect(refused.directives).toContain('connect-src');
});

test('after the first visit the app opens with the server gone, whatever hash it is opened at', async ({
  page,
}) => {
  await openAndKeep(page);
  await stopServer();
  await page.goto('about:blank');
  await page.goto(`${address}#/anywhere`);
  await expect(page.locator('#app')).not.toBeEmpty();
});

test('a new version waits until it is asked for, and the page is not reloaded meanwhile', async ({
  page,
}) => {
  await openAndKeep(page);
  await page.evaluate(() => {
    window.name = 'same page';
  });
  appendFileSync(join(folder, subPath, 'service-worker.js'), '\n// a later version\n');
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
  });
  await page.waitForFunction(async () => (await navigator.serviceWorker.ready).waiting !== null);
  await page.waitForTimeout(500);
  expect(await page.evaluate(() => window.name)).toBe('same page');

  const took = await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    const waiting = registration.waiting;
    const changed = new Promise((done) => {
      navigator.serviceWorker.addEventListener('controllerchange', done, { once: true });
    });
    waiting?.postMessage({ type: 'SKIP_WAITING' });
    await changed;
    return navigator.serviceWorker.controller === waiting;
  });
  expect(took).toBe(true);
});

test('the manifest offers an app that can be installed, with icons that exist', async ({
  page,
}) => {
  const response = await page.request.get(`${address}manifest.webmanifest`);
  const manifest = await response.json();
  expect(manifest).toMatchObject({ name: 'Standbook', display: 'standalone', orientation: 'any' });
  for (const icon of manifest.icons as { src: string; sizes: string }[]) {
    const picture = await page.request.get(`${address}${icon.src}`);
    const width = (await picture.body()).readUInt32BE(16); // PNG: the width stands at byte 16
    expect(`${width}x${width}`, icon.src).toBe(icon.sizes);
  }
});

/** Opens the app and waits until it is on the device and in charge of the page. */
async function openAndKeep(page: Page) {
  await page.goto(address);
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
}

async function stopServer() {
  if (!server.listening) return;
  server.closeAllConnections();
  await new Promise((done) => server.close(done));
}
