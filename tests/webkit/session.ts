/**
 * WebKit as Debian packages it (webkit2gtk-driver, xvfb), driven by plain WebDriver (W3C) over fetch: a page that can
 * be opened, read and pressed, by the words on it.
 */
import { spawn } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';

export type Session = {
  readonly version: string;
  readonly open: (address: string) => Promise<void>;
  /** Runs the body of a function in the page. */
  readonly run: <T>(script: string, ...given: readonly unknown[]) => Promise<T>;
  /** Waits until what the script returns is true. */
  readonly until: (script: string, ...given: readonly unknown[]) => Promise<void>;
  /** Presses the first button or link whose words hold these. */
  readonly press: (words: string) => Promise<void>;
  /** Types into the first text field, in place of what is there. */
  readonly type: (text: string) => Promise<void>;
  readonly close: () => Promise<void>;
};

const LIBRARIES = '/usr/lib/x86_64-linux-gnu';
const PATIENCE_MS = 60_000;
const PAUSE_MS = 100;

export async function openWebKit(): Promise<Session> {
  const port = await freePort();
  const driver = spawn('xvfb-run', ['-a', 'WebKitWebDriver', `--port=${port}`, '--host=127.0.0.1'], { detached: true });
  const ask = async <T>(method: string, path: string, body?: unknown): Promise<T> => {
    const sent = body === undefined ? {} : { body: JSON.stringify(body) };
    const answer = await fetch(`http://127.0.0.1:${port}${path}`, { method, ...sent });
    const { value } = (await answer.json()) as { value: T };
    if (!answer.ok) throw new Error(`${path}: ${JSON.stringify(value).slice(0, 400)}`);
    return value;
  };
  await patiently(async () => (await ask<{ ready: boolean }>('GET', '/status')).ready);
  const options = { binary: miniBrowser(), args: ['--automation'] };
  const capabilities = { alwaysMatch: { 'webkitgtk:browserOptions': options } };
  const made = await ask<{ sessionId: string; capabilities: { browserVersion: string } }>('POST', '/session', {
    capabilities,
  });
  const at = `/session/${made.sessionId}`;
  const run: Session['run'] = (script, ...args) => ask('POST', `${at}/execute/sync`, { script, args });
  const until: Session['until'] = (script, ...given) => patiently(() => run<boolean>(script, ...given));
  const clickOn = async (find: string, ...given: readonly unknown[]) => {
    await until(`const given = [...arguments]; return Boolean((() => { ${find} })())`, ...given);
    const element = await run<Record<string, string>>(`const given = [...arguments]; ${find}`, ...given);
    const [id = ''] = Object.values(element);
    await ask('POST', `${at}/element/${id}/click`, {});
    return id;
  };
  return {
    version: made.capabilities.browserVersion,
    open: (url) => ask('POST', `${at}/url`, { url }),
    run,
    until,
    press: async (words) => void (await clickOn(PRESSABLE, words)),
    type: async (text) => {
      const id = await clickOn('return document.querySelector(\'main input[type="text"]\')');
      await ask('POST', `${at}/element/${id}/clear`, {});
      await ask('POST', `${at}/element/${id}/value`, { text });
    },
    close: async () => {
      await ask('DELETE', at).catch(() => undefined);
      if (driver.pid) process.kill(-driver.pid, 'SIGTERM');
    },
  };
}

const PRESSABLE =
  "return [...document.querySelectorAll('button, a')].find((each) => each.textContent.includes(given[0]) && each.checkVisibility())";

/** Tries again, with a pause, until it is true; a failure on the way (a page that is just changing) is passed over. */
async function patiently(isSo: () => Promise<boolean>): Promise<void> {
  const end = Date.now() + PATIENCE_MS;
  while (!(await isSo().catch(() => false))) {
    if (Date.now() > end) throw new Error('never');
    await new Promise((done) => setTimeout(done, PAUSE_MS));
  }
}

function miniBrowser(): string {
  const folder = readdirSync(LIBRARIES).find((name) => /^webkit2gtk-4/.test(name));
  if (!folder) throw new Error('no-webkit');
  return join(LIBRARIES, folder, 'MiniBrowser');
}

const freePort = () =>
  new Promise<number>((done) => {
    const server = createServer();
    server.listen(0, '127.0.0.1', () => {
      const place = server.address();
      server.close(() => done(typeof place === 'object' ? (place?.port ?? 0) : 0));
    });
  });
