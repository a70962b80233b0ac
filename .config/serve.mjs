// A static server for dist/ on this machine only: for `npm start` and the browser tests.
import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';

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
 * Serves a folder at `http://localhost:PORT` + `under`, trying the next ports when `port` is taken (0: any free one).
 * @param {{ folder: string, port?: number, under?: string }} options `under` begins and ends with a slash
 * @returns {Promise<{ address: string, close: () => Promise<void> }>}
 */
export async function serve({ folder, port = 0, under = '/' }) {
  const server = createServer((request, response) => answer(folder, under, request, response));
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

/** @param {string} folder @param {string} under @param {import('node:http').IncomingMessage} request @param {import('node:http').ServerResponse} response */
function answer(folder, under, request, response) {
  const path = pathOf(request.url ?? '/');
  const file = path?.startsWith(under) ? fileAt(folder, path.slice(under.length)) : undefined;
  if (!file || (request.method !== 'GET' && request.method !== 'HEAD')) {
    response.writeHead(file ? 405 : 404).end();
    return;
  }
  response.writeHead(200, {
    'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
    'content-length': statSync(file).size,
    'cache-control': 'no-cache',
  });
  if (request.method === 'HEAD') response.end();
  else createReadStream(file).pipe(response);
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
