/** Installs the project's packages when they are missing or not those of the lock file. Needs nothing but Node. */

import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';

export const projectFolder = fileURLToPath(new URL('..', import.meta.url));
const leastNode = [20, 19];

/** Leaves the process with a plain word when it cannot install. */
export function ensureInstalled() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  const [leastMajor = 0, leastMinor = 0] = leastNode;
  if (major < leastMajor || (major === leastMajor && minor < leastMinor)) {
    console.error(
      `Standbook needs Node ${leastNode.join('.')} or later; this is ${process.version}.`,
    );
    process.exit(1);
  }
  if (isInstalled()) return;
  console.log('Installing packages …');
  const { status } = spawnSync('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: projectFolder,
    stdio: 'inherit',
    shell: process.platform === 'win32', // npm is a script there
  });
  if (status !== 0) {
    console.error('The packages could not be installed: see npm’s message above, then try again.');
    process.exit(1);
  }
}

/** Compared by content: file times say nothing after a clone or a copy. */
function isInstalled() {
  const wanted = packagesIn('package-lock.json');
  const present = packagesIn('node_modules/.package-lock.json');
  if (wanted === undefined || present === undefined) return false;
  return Object.entries(wanted).every(([path, { version, optional }]) => {
    if (path === '') return true;
    const found = present[path];
    return found === undefined ? optional === true : found.version === version;
  });
}

/**
 * @param {string} file
 * @returns {Record<string, { version?: string, optional?: boolean }> | undefined}
 */
function packagesIn(file) {
  try {
    return JSON.parse(readFileSync(new URL(`../${file}`, import.meta.url), 'utf8')).packages;
  } catch {
    return undefined;
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) ensureInstalled();
