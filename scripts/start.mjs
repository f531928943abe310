/** `npm start`: installs, builds and serves the app on this machine, from nothing but Node. */

import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { ensureInstalled, projectFolder } from './ensure-installed.mjs';
import { serve } from './serve.mjs';

const firstPort = 4173;
const portsToTry = 50;

process.chdir(projectFolder);
ensureInstalled();

console.log('Building …');
const build = spawnSync(process.execPath, ['scripts/build.mjs', '--quiet'], { encoding: 'utf8' });
if (build.status !== 0) {
  console.error(`${build.stdout}${build.stderr}`);
  console.error('The app could not be built: see the message above.');
  process.exit(1);
}

const port = await serveOnFreePort();
console.log(`\n  Standbook is open at http://localhost:${port}/  (Ctrl-C stops it)\n`);
for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM'])) {
  process.on(signal, () => process.exit(0));
}

async function serveOnFreePort() {
  for (let port = firstPort; port < firstPort + portsToTry; port += 1) {
    try {
      await serve({ root: join(projectFolder, 'dist'), port });
      return port;
    } catch (error) {
      const isTaken = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
      if (!isTaken) throw error;
    }
  }
  console.error(`No free port between ${firstPort} and ${firstPort + portsToTry - 1}.`);
  return process.exit(1);
}
