/** What stands between a person and the first screen: the app is built, and the build says it. */

import { spawnSync } from 'node:child_process';

const built = spawnSync(process.execPath, ['scripts/build.mjs', '--quiet'], { stdio: 'inherit' });
if (built.status !== 0) process.exitCode = 1;
