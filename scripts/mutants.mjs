/** `npm run mutants [part of a path] [how many at once]`: changes the code a little, thousands of times, and names each change that no test notices. */

import { readdirSync, readFileSync } from 'node:fs';
import os from 'node:os';
import { relative } from 'node:path';
import { ensureInstalled, projectFolder } from './ensure-installed.mjs';

/** @typedef {import('@stryker-mutator/core').Stryker} MutationRun */
/** @typedef {Awaited<ReturnType<MutationRun['runMutationTest']>>[number]} Mutant */

process.chdir(projectFolder);
ensureInstalled();
os.setPriority(os.constants.priority.PRIORITY_LOW);
const { Stryker } = await import('@stryker-mutator/core');

const rooms = ['units', 'torque'];
const leastScore = 90;
const [wanted = '', atOnce = '1'] = process.argv.slice(2);

for (const room of rooms) {
  const folder = `src/engine/${room}`;
  const files = readdirSync(folder)
    .filter((file) => file.endsWith('.ts') && file !== 'index.ts')
    .map((file) => `${folder}/${file}`)
    .filter((file) => file.includes(wanted));
  if (files.length === 0) continue;
  console.log(`\n── ${room}`);
  if (report(await mutate(room, files)) < leastScore) process.exitCode = 1;
}

/**
 * @param {string} room
 * @param {readonly string[]} files
 */
function mutate(room, files) {
  process.env.MUTATED_ROOM = room; // for the test runner's own process
  return new Stryker({
    mutate: [...files],
    testRunner: 'vitest',
    plugins: ['@stryker-mutator/vitest-runner'],
    vitest: { configFile: 'vitest.mutants.config.ts', related: false },
    // No such file: the paths in the real one need no rewriting, and doing it would need an older compiler.
    tsconfigFile: 'none',
    concurrency: Number(atOnce),
    timeoutMS: 10_000,
    tempDirName: '.cache/mutants',
    ignorePatterns: ['dist', 'docs', 'public', 'seeds'],
    reporters: ['progress-append-only'],
    warnings: false,
    allowConsoleColors: false,
  }).runMutationTest();
}

/**
 * Each file's score, then each survivor; gives the score of all.
 * @param {readonly Mutant[]} mutants
 */
function report(mutants) {
  const files = [...new Set(mutants.map(({ fileName }) => fileName))].sort();
  for (const file of files) {
    const own = mutants.filter(({ fileName }) => fileName === file);
    console.log(`${said(own)}  ${relative(projectFolder, file)}`);
  }
  console.log(`${said(mutants)}  all`);
  for (const { fileName, location, replacement, mutatorName } of mutants.filter(survives)) {
    const { line, column } = location.start;
    console.log(`\n${relative(projectFolder, fileName)}:${line}:${column}  ${mutatorName}`);
    console.log(`  - ${onOneLine(textAt(fileName, location))}`);
    console.log(`  + ${onOneLine(replacement)}`);
  }
  return score(mutants);
}

/** @param {Mutant} mutant */
function survives({ status }) {
  return status === 'Survived' || status === 'NoCoverage';
}

/** @param {Mutant} mutant */
function isKilled({ status }) {
  return status === 'Killed' || status === 'Timeout';
}

/** @param {readonly Mutant[]} mutants */
function score(mutants) {
  const killed = mutants.filter(isKilled).length;
  return (100 * killed) / Math.max(1, killed + mutants.filter(survives).length);
}

/** @param {readonly Mutant[]} mutants */
function said(mutants) {
  const killed = mutants.filter(isKilled).length;
  const all = killed + mutants.filter(survives).length;
  return `${score(mutants).toFixed(1).padStart(5)} %  ${`${killed} of ${all}`.padStart(12)}`;
}

/**
 * @param {string} file
 * @param {Mutant['location']} location
 */
function textAt(file, { start, end }) {
  const lines = readFileSync(file, 'utf8')
    .split('\n')
    .slice(start.line - 1, end.line);
  const last = lines.length - 1;
  return lines
    .map((line, n) =>
      line.slice(n === 0 ? start.column - 1 : 0, n === last ? end.column - 1 : undefined),
    )
    .join(' ');
}

/** @param {string} text */
function onOneLine(text) {
  const line = text.replace(/\s+/g, ' ');
  return line.length > 240 ? `${line.slice(0, 240)} …` : line;
}
