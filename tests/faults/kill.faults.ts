/** The browser is killed at two hundred random moments while a bike is built in the app: `KILLS=50` tries fewer. */

import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const kills = process.env.KILLS ?? '200';

if (!existsSync('dist/index.html')) {
  const { status } = spawnSync(process.execPath, ['scripts/build.mjs'], { stdio: 'inherit' });
  if (status !== 0) process.exitCode = 1;
}
if (process.exitCode === undefined) {
  const trial = ['test', 'kill', '--grep', 'kills at random moments', '--reporter=line'];
  const { status } = spawnSync(
    process.execPath,
    ['node_modules/@playwright/test/cli.js', ...trial],
    {
      stdio: 'inherit',
      env: { ...process.env, STANDBOOK_KILLS: kills },
    },
  );
  if (status !== 0) process.exitCode = 1;
}
