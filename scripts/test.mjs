/** `npm test`: everything that must hold, in stages from the quickest to the slowest; the first that fails ends the run. */

import { existsSync, mkdirSync, rmSync } from 'node:fs';
import { architectureTask, lintTask, typeTasks, vitestTask } from './check-tasks.mjs';
import { countIn } from './count-tests.mjs';
import { ensureBrowser } from './ensure-browser.mjs';
import { ensureInstalled, projectFolder } from './ensure-installed.mjs';
import { nodeTask, run } from './run.mjs';

/** @typedef {{ passed: number, failed: number }} Count */
/** @typedef {{ name: string, run: () => Promise<{ ok: boolean } & Partial<Count>> }} Stage */

process.chdir(projectFolder);
ensureInstalled();

const reports = '.cache/reports';
rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });

/** @type {readonly Stage[]} */
const stages = [
  { name: 'types', run: checkTypes },
  { name: 'lint and format', run: () => run(lintTask, { speak: true }) },
  {
    name: 'laws of the house',
    run: () => runVitest('architecture', (reporters) => architectureTask(reporters)),
  },
  {
    name: 'seeds',
    run: () =>
      run(nodeTask('seeds', 'node_modules/tsx/dist/cli.mjs', ['scripts/seeds.ts']), {
        speak: true,
      }),
  },
  {
    name: 'unit, reference and journeys',
    run: () =>
      runVitest('unit', (reporters) =>
        vitestTask('unit', ['--project=node', '--project=jsdom', ...reporters]),
      ),
  },
  { name: 'build', run: () => run(nodeTask('build', 'scripts/build.mjs', []), { speak: true }) },
  { name: 'browser', run: runBrowserTests },
];

const total = { passed: 0, failed: 0 };
for (const stage of stages) {
  console.log(`\n── ${stage.name}`);
  const started = performance.now();
  const { ok, passed = 0, failed = 0 } = await stage.run();
  total.passed += passed;
  // A stage that fails without a failing test (a type error, a broken build) is itself the failure.
  total.failed += ok ? failed : Math.max(failed, 1);
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  console.log(`── ${stage.name}: ${ok ? 'good' : 'FAILED'} (${seconds} s)`);
  if (!ok) {
    console.log(`\nStopped at: ${stage.name}`);
    break;
  }
}
console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed === 0 && total.passed > 0 ? 0 : 1;

async function checkTypes() {
  const results = await Promise.all(typeTasks.map((task) => run(task)));
  for (const { name, ok, said } of results) if (!ok) console.log(`${name}\n${said.trim()}`);
  return { ok: results.every(({ ok }) => ok) };
}

/**
 * @param {string} name
 * @param {(reporters: readonly string[]) => import('./run.mjs').Task} taskWith
 */
async function runVitest(name, taskWith) {
  const file = `${reports}/${name}.json`;
  const reporters = ['--reporter=dot', '--reporter=json', `--outputFile.json=${file}`];
  const { ok } = await run(taskWith(reporters), { speak: true });
  return { ok, ...countIn('vitest', file) };
}

async function runBrowserTests() {
  const browser = await ensureBrowser();
  if ('missing' in browser) {
    console.error(browser.missing);
    return { ok: false };
  }
  console.log(`Browser: ${browser.path}`);
  const file = `${reports}/browser.json`;
  const task = nodeTask('browser', 'node_modules/@playwright/test/cli.js', [
    'test',
    '--reporter=dot,json',
  ]);
  const env = { CHROMIUM_PATH: browser.path, PLAYWRIGHT_JSON_OUTPUT_FILE: file };
  const { ok } = await run({ ...task, env }, { speak: true });
  if (!existsSync(file)) console.error('The browser tests left no report.');
  return { ok, ...countIn('playwright', file) };
}
