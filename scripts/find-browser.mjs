/** Finds a Chromium on this machine. */

import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/**
 * The path of a browser, or nothing: what CHROMIUM_PATH names, one of the system's, or Playwright's own.
 * @returns {Promise<string | undefined>}
 */
export async function findBrowser() {
  const named = process.env.CHROMIUM_PATH;
  if (named) return isRunnable(named) ? named : undefined;
  const ofSystem = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable']
    .map(findProgram)
    .find((path) => path !== undefined && answers(path));
  return ofSystem ?? (await ofPlaywright());
}

/**
 * Where a program lies, searched as a shell would.
 * @param {string} name
 */
export function findProgram(name) {
  const folders = [...(process.env.PATH ?? '').split(delimiter), '/usr/bin'];
  return folders.map((folder) => join(folder, name)).find(isRunnable);
}

async function ofPlaywright() {
  try {
    const { chromium } = await import('@playwright/test');
    const path = chromium.executablePath();
    return existsSync(path) ? path : undefined;
  } catch {
    return undefined; // Playwright does not know this system, or is not installed
  }
}

/**
 * Some systems have a program of that name that only says what to install instead.
 * @param {string} path
 */
function answers(path) {
  return spawnSync(path, ['--version'], { stdio: 'ignore', timeout: 20_000 }).status === 0;
}

/** @param {string} path */
function isRunnable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
