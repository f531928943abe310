/** `npm run faults [name]`: the long trials that are no part of `npm test`; each prints its seeds and what came of it. */

import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { ensureInstalled, projectFolder } from './ensure-installed.mjs';

process.chdir(projectFolder);
ensureInstalled();

const folder = 'tests/faults';
const wanted = process.argv[2] ?? '';
const trials = readdirSync(folder)
  .filter((file) => file.endsWith('.faults.ts') && file.includes(wanted))
  .sort();
if (trials.length === 0) {
  console.error(`No trial in ${folder} has “${wanted}” in its name.`);
  process.exitCode = 1;
}
for (const trial of trials) {
  console.log(`\n── ${trial.replace('.faults.ts', '')}`);
  const command = ['node_modules/tsx/dist/cli.mjs', `${folder}/${trial}`];
  const { status } = spawnSync(process.execPath, command, { stdio: 'inherit' });
  if (status !== 0) process.exitCode = 1;
}
