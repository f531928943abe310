/** What `check` and `test` both look at before any code runs: types in each environment, lint and format, the laws of the house. */

import { nodeTask } from './run.mjs';

const environments = [
  ['engine', 'src/engine'],
  ['app', 'src'],
  ['service worker', 'tsconfig.service-worker.json'],
  ['node side', 'tsconfig.json'],
  ['tests', 'tests'],
];

export const typeTasks = environments.map(([name, project = '']) =>
  nodeTask(`types: ${name}`, 'node_modules/typescript/bin/tsc', ['-p', project]),
);

export const lintTask = nodeTask('lint and format', 'node_modules/@biomejs/biome/bin/biome', [
  'check',
  '--error-on-warnings',
]);

/** @param {readonly string[]} reporters */
export function architectureTask(reporters) {
  return vitestTask('laws of the house', ['--project=laws', ...reporters]);
}

/**
 * @param {string} name
 * @param {readonly string[]} args
 */
export function vitestTask(name, args) {
  return nodeTask(name, 'node_modules/vitest/vitest.mjs', ['run', ...args]);
}
