/** Runs a TypeScript script of this folder: `node scripts/run-typescript.mjs scripts/seeds.ts`. */

import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { ensureInstalled, projectFolder } from './ensure-installed.mjs';

process.chdir(projectFolder);
ensureInstalled();

const [script = '', ...args] = process.argv.slice(2);
if (!existsSync(script)) {
  console.error(`There is no ${script}.`);
  process.exit(1);
}
const command = ['node_modules/tsx/dist/cli.mjs', script, ...args];
const { status } = spawnSync(process.execPath, command, { stdio: 'inherit' });
process.exit(status ?? 1);
