/** Makes sure the browser tests have a Chromium and a PDF reader: finds them, or installs them where that is possible. */

import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { findBrowser, findProgram } from './find-browser.mjs';

/**
 * The browser's path, or why there is none and what a person can do about it.
 * @returns {Promise<{ path: string } | { missing: string }>}
 */
export async function ensureBrowser() {
  const named = process.env.CHROMIUM_PATH;
  const found = await findBrowser();
  if (named && found === undefined) {
    return {
      missing: `CHROMIUM_PATH says ${named}, but that cannot be run. Correct it or unset it.`,
    };
  }
  const lacking = [
    ...(found === undefined ? ['chromium'] : []),
    ...(findProgram('pdftotext') === undefined ? ['poppler-utils'] : []),
  ];
  if (lacking.length > 0) await install(lacking);
  if (findProgram('pdftotext') === undefined) {
    console.log(
      'pdftotext is missing: tests that read a printed sheet will fail. Install poppler.',
    );
  }
  const path = found ?? (await findBrowser());
  if (path !== undefined) return { path };
  return {
    missing:
      'No Chromium was found and none could be installed. Install Chromium or Chrome, ' +
      'or set CHROMIUM_PATH to one, then run npm test again.',
  };
}

/** @param {readonly string[]} packages by their Debian names */
async function install(packages) {
  const isDebianAsRoot = existsSync('/usr/bin/apt-get') && process.getuid?.() === 0;
  if (isDebianAsRoot) {
    console.log(`Installing ${packages.join(' and ')} …`);
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    spawnSync('apt-get', ['update', '-qq'], { stdio: 'inherit', env });
    for (const one of packages) {
      const quietly = ['install', '-y', '-qq', '--no-install-recommends', one];
      spawnSync('apt-get', quietly, { stdio: ['ignore', 'ignore', 'inherit'], env });
    }
  }
  // Also where the system's package only points elsewhere, as on Ubuntu.
  if (packages.includes('chromium') && (await findBrowser()) === undefined) {
    console.log('Installing Chromium through Playwright …');
    const withSystemLibraries = isDebianAsRoot ? ['--with-deps'] : [];
    const command = ['node_modules/@playwright/test/cli.js', 'install', ...withSystemLibraries];
    spawnSync(process.execPath, [...command, 'chromium'], { stdio: 'inherit' });
  }
}
