/** Runs a program and keeps what it says, or lets it speak. */

import { spawn } from 'node:child_process';

/** @typedef {{ name: string, command: string, args: readonly string[], env?: Record<string, string | undefined> }} Task */

/**
 * Runs to the end; with `speak` its words go straight to the terminal, otherwise they come back.
 * @param {Task} task
 * @param {{ speak?: boolean }} [options]
 * @returns {Promise<{ name: string, ok: boolean, said: string }>}
 */
export function run({ name, command, args, env = {} }, { speak = false } = {}) {
  return new Promise((done) => {
    const child = spawn(command, args, {
      env: { ...process.env, ...env },
      stdio: speak ? 'inherit' : ['ignore', 'pipe', 'pipe'],
    });
    let said = '';
    for (const stream of [child.stdout, child.stderr]) {
      stream?.setEncoding('utf8').on('data', (text) => {
        said += text;
      });
    }
    child.once('error', (error) => done({ name, ok: false, said: error.message }));
    child.once('close', (code) => done({ name, ok: code === 0, said }));
  });
}

/**
 * A task that runs one of the project's packages with this very Node.
 * @param {string} name
 * @param {string} script
 * @param {readonly string[]} args
 * @returns {Task}
 */
export function nodeTask(name, script, args) {
  return { name, command: process.execPath, args: [script, ...args] };
}
