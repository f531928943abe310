/** `npm run check`: types, lint, format and the laws of the house, side by side; speaks only about what is wrong. */

import { architectureTask, lintTask, typeTasks } from './check-tasks.mjs';
import { ensureInstalled, projectFolder } from './ensure-installed.mjs';
import { run } from './run.mjs';

process.chdir(projectFolder);
ensureInstalled();

const started = performance.now();
const results = await Promise.all(
  [...typeTasks, lintTask, architectureTask(['--reporter=dot'])].map((task) => run(task)),
);
for (const { name, ok, said } of results) {
  console.log(`${ok ? 'good ' : 'WRONG'}  ${name}`);
  if (!ok) console.log(`\n${said.trim()}\n`);
}
console.log(`${((performance.now() - started) / 1000).toFixed(1)} s`);
if (results.some(({ ok }) => !ok)) process.exitCode = 1;
