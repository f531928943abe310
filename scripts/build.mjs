/** `npm run build`: builds the app, makes sure all of it is kept on the device, and says what the first screen costs. */

import { spawnSync } from 'node:child_process';
import { ensureInstalled, projectFolder } from './ensure-installed.mjs';

process.chdir(projectFolder);
ensureInstalled();

const isQuiet = process.argv.includes('--quiet');
const steps = [
  ['node_modules/vite/bin/vite.js', 'build', '--logLevel', isQuiet ? 'error' : 'warn'],
  ['scripts/check-precache.mjs'],
  ['scripts/first-load.mjs'],
];
for (const step of steps) {
  const { status } = spawnSync(process.execPath, step, { stdio: 'inherit' });
  if (status !== 0) process.exit(status ?? 1);
}
