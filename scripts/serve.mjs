/** Serves the built app on this machine, with the headers a real host should send: `node scripts/serve.mjs [--port 4173] [--root dist]`. */

import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { securityHeaders } from './security-headers.mjs';

/** @type {Readonly<Record<string, string>>} */
const contentTypes = {
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
};

/**
 * Starts a server bound to this machine only; rejects with `EADDRINUSE` when the port is taken.
 * @param {{ root: string, port: number }} options
 * @returns {Promise<import('node:http').Server>}
 */
export function serve({ root, port }) {
  const server = createServer((request, response) => {
    answer(resolve(root), request, response).catch(() => {
      if (!response.headersSent) send(response, 500, 'The file could not be read.');
      else response.destroy();
    });
  });
  return new Promise((done, fail) => {
    server.once('error', fail);
    server.listen(port, 'localhost', () => done(server));
  });
}

/**
 * @param {string} root
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 */
async function answer(root, request, response) {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    return send(response, 405, 'Only reading is possible here.', { Allow: 'GET, HEAD' });
  }
  const path = fileFor(root, request.url ?? '/');
  const found = path === undefined ? undefined : await stat(path).catch(() => undefined);
  if (path === undefined || !found?.isFile()) return send(response, 404, 'There is no such file.');

  const tag = `"${found.size.toString(36)}-${Math.round(found.mtimeMs).toString(36)}"`;
  const headers = {
    ...securityHeaders,
    'Cache-Control': cachingFor(root, path),
    'Content-Type': contentTypes[extname(path)] ?? 'application/octet-stream',
    ETag: tag,
  };
  if (request.headers['if-none-match'] === tag) {
    response.writeHead(304, headers).end();
    return;
  }
  response.writeHead(200, { ...headers, 'Content-Length': found.size });
  if (request.method === 'HEAD') {
    response.end();
    return;
  }
  createReadStream(path)
    .on('error', () => response.destroy())
    .pipe(response);
}

/**
 * The file an address means, or nothing when it would leave the root.
 * @param {string} root
 * @param {string} url
 */
function fileFor(root, url) {
  let wanted = '';
  try {
    wanted = decodeURIComponent(url.split(/[?#]/)[0] ?? '/');
  } catch {
    return undefined;
  }
  if (wanted.includes('\0')) return undefined;
  const path = resolve(join(root, wanted.endsWith('/') ? `${wanted}index.html` : wanted));
  return path.startsWith(root + sep) ? path : undefined;
}

/**
 * Files named by their content never change; everything else is asked for anew.
 * @param {string} root
 * @param {string} path
 */
function cachingFor(root, path) {
  const isNamedByContent = path.startsWith(join(root, 'assets') + sep);
  return isNamedByContent ? 'public, max-age=31536000, immutable' : 'no-cache';
}

/**
 * @param {import('node:http').ServerResponse} response
 * @param {number} status
 * @param {string} text
 * @param {Record<string, string>} [headers]
 */
function send(response, status, text, headers = {}) {
  response
    .writeHead(status, {
      ...securityHeaders,
      'Cache-Control': 'no-store',
      'Content-Type': 'text/plain; charset=utf-8',
      ...headers,
    })
    .end(`${text}\n`);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const { values } = parseArgs({
    options: {
      port: { type: 'string', default: '4173' },
      root: { type: 'string', default: 'dist' },
    },
  });
  await serve({ root: values.root, port: Number(values.port) });
  console.log(`Serving ${values.root} at http://localhost:${values.port}/`);
}
