/** Fails when the service worker would not keep the whole app: every file of the build must be in its list, none too large. Run after a build. */

import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';

const root = 'dist';
const largest = 2 * 1024 * 1024; // browsers and workbox leave larger files out without a word
const notKept = new Set(['robots.txt', 'service-worker.js']);

const worker = readFileSync(join(root, 'service-worker.js'), 'utf8');
const files = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .filter((file) => statSync(join(root, file)).isFile())
  .map((file) => file.split(sep).join('/'))
  .filter((file) => !notKept.has(file));

const faults = files.flatMap((file) => {
  const { size } = statSync(join(root, file));
  if (size > largest) return [`${file} has ${size} bytes, more than the 2 MiB that are kept`];
  const isListed = ['"', "'", '`'].some((quote) => worker.includes(`${quote}${file}${quote}`));
  return isListed ? [] : [`${file} is not in the service worker's list`];
});

if (faults.length > 0) {
  console.error('The app would not open whole without a network:');
  for (const fault of faults) console.error(`  ${fault}`);
  process.exitCode = 1;
} else {
  console.log(`\nKept on the device: ${files.length} files, whole app.`);
}
