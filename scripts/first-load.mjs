/** Says how much JavaScript stands between a person and the first screen, against the aim. Run after a build. */

import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { parseSync } from 'vite';

const aim = 160_000;
const root = 'dist';

const page = readFileSync(join(root, 'index.html'), 'utf8');
const starts = [
  ...page.matchAll(/<script\b[^>]*\bsrc="([^"]+\.js)"/g),
  ...page.matchAll(/<link\b[^>]*\brel="modulepreload"[^>]*\bhref="([^"]+\.js)"/g),
].map(([, address]) => posix.normalize(address ?? ''));
if (starts.length === 0) throw new Error('index.html loads no script: was the app built?');

const rows = [...withStaticImports(starts)].map((file) => {
  const text = readFileSync(join(root, file));
  return { file, plain: text.length, gzip: gzipSync(text, { level: 9 }).length };
});
const total = rows.reduce((sum, { gzip }) => sum + gzip, 0);
const width = Math.max(...rows.map(({ file }) => file.length), 'before the first screen'.length);

console.log('\nJavaScript before the first screen');
for (const { file, plain, gzip } of rows) console.log(line(file, plain, gzip));
console.log(
  line(
    'before the first screen',
    rows.reduce((sum, { plain }) => sum + plain, 0),
    total,
  ),
);
console.log(
  total <= aim
    ? `  within the aim of ${kilobytes(aim)} gzip`
    : `  ${kilobytes(total - aim)} over the aim of ${kilobytes(aim)} gzip: load something later`,
);

/** @param {readonly string[]} first */
function withStaticImports(first) {
  const reached = new Set(first);
  for (const file of reached) {
    const { module } = parseSync(file, readFileSync(join(root, file), 'utf8'));
    const reExported = module.staticExports.flatMap(({ entries }) =>
      entries.flatMap(({ moduleRequest }) => moduleRequest ?? []),
    );
    for (const { value } of [
      ...module.staticImports.map(({ moduleRequest }) => moduleRequest),
      ...reExported,
    ]) {
      reached.add(posix.join(posix.dirname(file), value));
    }
  }
  return reached;
}

/**
 * @param {string} name
 * @param {number} plain
 * @param {number} gzip
 */
function line(name, plain, gzip) {
  return `  ${name.padEnd(width)}  ${kilobytes(plain).padStart(9)}  ${kilobytes(gzip).padStart(9)} gzip`;
}

/** @param {number} bytes */
function kilobytes(bytes) {
  return `${(bytes / 1000).toFixed(1)} kB`;
}
