import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serve } from '../../.config/serve.mjs';

const root = mkdtempSync(join(tmpdir(), 'hemling-serve-'));
let server: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  mkdirSync(join(root, 'dist/deeper'), { recursive: true });
  writeFileSync(join(root, 'dist/index.html'), 'home');
  writeFileSync(join(root, 'dist/deeper/a b.js'), 'script');
  writeFileSync(join(root, 'secret'), 'secret');
  mkdirSync(join(root, 'distant'));
  writeFileSync(join(root, 'distant/secret'), 'secret');
  server = await serve({ folder: join(root, 'dist'), under: '/shop/' });
});
afterAll(async () => {
  await server.close();
  rmSync(root, { recursive: true });
});

/** The status line to a request whose path no client has tidied. */
const statusOf = (path: string) =>
  new Promise<string>((done, failed) => {
    const { port } = new URL(server.address);
    const socket = connect(Number(port), 'localhost', () =>
      socket.end(`GET ${path} HTTP/1.1\r\nHost: localhost\r\n\r\n`),
    );
    socket.once('data', (data) => done(data.toString().split(' ')[1] ?? ''));
    socket.once('error', failed);
  });

test('serves files below its path, with their types', async () => {
  const home = await fetch(server.address);
  expect(await home.text()).toBe('home');
  expect(home.headers.get('content-type')).toMatch('text/html');
  const script = await fetch(`${server.address}deeper/a%20b.js?query`);
  expect(script.headers.get('content-type')).toMatch('text/javascript');
  expect((await fetch(server.address, { method: 'POST' })).status).toBe(405);
});

test.each(['/', '/shop', '/shop/lost', '/shop/deeper', '/shop/../secret', '/shop/%2e%2e/secret', '/shop/..%2fsecret'])(
  'has nothing at %s',
  async (path) => expect(await statusOf(path)).toBe('404'),
);

test.each(['/shop/../distant/secret', '/shop/..%2fdistant/secret', '/shop/%00', '/shop/%', '/shop//etc/passwd'])(
  'gives nothing away at %s',
  async (path) => expect(await statusOf(path)).toBe('404'),
);

test('takes the next port when one is taken', async () => {
  const port = Number(new URL(server.address).port);
  const next = await serve({ folder: join(root, 'dist'), port });
  expect(Number(new URL(next.address).port)).toBeGreaterThan(port);
  await next.close();
});
