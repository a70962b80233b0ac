/**
 * A Chromium that can be killed as a phone's system kills it: every process at once, with nothing said before. What
 * it kept lies in a folder, so that the next one begins where this one ended.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { chromium, type Page } from 'playwright-core';
import { findBrowser } from '../../.config/setup.mjs';
import { FLAGS } from './browser';

export type Mortal = { readonly page: Page; kill: () => Promise<void> };

/** @param folder of the browser's profile, kept between lives */
export async function startMortal(folder: string): Promise<Mortal> {
  const command = findBrowser();
  if (!command) throw new Error('no-browser');
  const flags = [...FLAGS, '--headless', '--remote-debugging-port=0', `--user-data-dir=${folder}`, 'about:blank'];
  const body = spawn(command, flags, { detached: true, stdio: ['ignore', 'ignore', 'pipe'] });
  const gone = new Promise((done) => body.once('exit', done));
  const browser = await chromium.connectOverCDP(await endpointOf(body));
  const context = browser.contexts()[0];
  if (!context) throw new Error('no-context');
  return {
    page: context.pages()[0] ?? (await context.newPage()),
    kill: async () => {
      if (body.pid) process.kill(-body.pid, 'SIGKILL');
      await gone;
      await browser.close();
    },
  };
}

/** Chromium tells on its error stream where it listens. */
const endpointOf = (body: ChildProcess) =>
  new Promise<string>((done, failed) => {
    let told = '';
    body.stderr?.on('data', (text) => {
      told += text;
      const [, address] = /listening on (ws:\S+)/.exec(told) ?? [];
      if (address) done(address);
    });
    body.once('exit', () => failed(new Error(told)));
  });
