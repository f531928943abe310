/** `npm run bench [name]`: runs each benchmark of tests/bench in turn and prints what it reports. */

import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { ensureInstalled, projectFolder } from './ensure-installed.mjs';

process.chdir(projectFolder);
ensureInstalled();

const folder = 'tests/bench';
const wanted = process.argv[2] ?? '';
const benchmarks = (existsSync(folder) ? readdirSync(folder) : [])
  .filter((file) => file.endsWith('.bench.ts') && file.includes(wanted))
  .sort();
if (benchmarks.length === 0) {
  console.error(`No benchmark in ${folder} has “${wanted}” in its name.`);
  process.exitCode = 1;
}
for (const benchmark of benchmarks) {
  console.log(`\n── ${benchmark.replace('.bench.ts', '')}`);
  const command = ['node_modules/tsx/dist/cli.mjs', `${folder}/${benchmark}`];
  const { status } = spawnSync(process.execPath, command, { stdio: 'inherit' });
  if (status !== 0) process.exitCode = 1;
}
