// A static server for dist/ on this machine only: for `npm start` and the browser tests.
import { readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { headersOf } from './headers.mjs';

/** @type {Record<string, string>} */
const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.ttf': 'font/ttf',
};
const TRIES = 20;

/**
 * What a bad network puts in a file's place: given the path below the app's address and the request, and told the true
 * content; nothing leaves the file as it is. For tests.
 * @typedef {(path: string, request: import('node:http').IncomingMessage, content: Buffer) => Buffer | string | undefined} Instead
 */

/**
 * Serves a folder at `http://localhost:PORT` + `under`, trying the next ports when `port` is taken (0: any free one).
 * @param {{ folder: string, port?: number, under?: string, instead?: Instead }} options `under` begins and ends with a slash
 * @returns {Promise<{ address: string, close: () => Promise<void> }>}
 */
export async function serve({ folder, port = 0, under = '/', instead = () => undefined }) {
  const server = createServer((request, response) => answer({ folder, under, instead }, request, response));
  const taken = await listen(server, port, port === 0 ? 1 : TRIES);
  return {
    address: `http://localhost:${taken}${under}`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

/** @param {import('node:http').Server} server @param {number} port @param {number} tries @returns {Promise<number>} */
function listen(server, port, tries) {
  return new Promise((done, failed) => {
    server.once('error', (/** @type {NodeJS.ErrnoException} */ error) => {
      if (error.code !== 'EADDRINUSE' || tries <= 1) failed(error);
      else done(listen(server, port + 1, tries - 1));
    });
    server.listen(port, 'localhost', () => {
      const address = server.address();
      done(address && typeof address === 'object' ? address.port : port);
    });
  });
}

/** @param {{ folder: string, under: string, instead: Instead }} how @param {import('node:http').IncomingMessage} request @param {import('node:http').ServerResponse} response */
function answer({ folder, under, instead }, request, response) {
  const path = pathOf(request.url ?? '/');
  const below = path?.startsWith(under) ? path.slice(under.length) : undefined;
  const file = below === undefined ? undefined : fileAt(folder, below);
  if (!file || below === undefined || (request.method !== 'GET' && request.method !== 'HEAD')) {
    response.writeHead(file ? 405 : 404).end();
    return;
  }
  const content = readFileSync(file);
  const body = instead(below, request, content) ?? content;
  response.writeHead(200, {
    ...headersOf(below),
    'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
    'content-length': Buffer.byteLength(body),
  });
  response.end(request.method === 'HEAD' ? undefined : body);
}

/** @param {string} url */
function pathOf(url) {
  try {
    return decodeURIComponent(new URL(url, 'http://localhost').pathname);
  } catch {
    return undefined;
  }
}

/** @param {string} folder @param {string} path */
function fileAt(folder, path) {
  const wanted = join(folder, normalize(path === '' || path.endsWith('/') ? `${path}index.html` : path));
  const stays = wanted.startsWith(folder.endsWith(sep) ? folder : folder + sep);
  return stays && !path.includes('\0') && statSync(wanted, { throwIfNoEntry: false })?.isFile() ? wanted : undefined;
}
