import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, firefox, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serve } from '../../.config/serve.mjs';
import { findBrowser } from '../../.config/setup.mjs';
import { DIST, untilKept } from './browser';
import { Maker } from './maker';

/** Firefox as the distribution packages it, driven by WebDriver BiDi. What it keeps lies in a folder, from life to life. */
const profile = mkdtempSync(join(tmpdir(), 'hemling-firefox-'));
let server: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  server = await serve({ folder: DIST });
});
afterAll(async () => {
  await server.close();
  rmSync(profile, { recursive: true, force: true });
});

/** What was still on its way when its page was left (NS_BINDING_ABORTED; no address any more): nothing is wrong with it. */
const LEFT_BEHIND = /download failed .*status=2152398850|Failed to load ‘’\. A ServiceWorker intercepted/;

async function openFirefox(): Promise<{ context: BrowserContext; page: Page; wrong: string[] }> {
  const executablePath = findBrowser('firefox');
  if (!executablePath) throw new Error('no-firefox');
  const viewport = { width: 360, height: 640 };
  const context = await firefox.launchPersistentContext(profile, { channel: 'moz-firefox', executablePath, viewport });
  const page = context.pages()[0] ?? (await context.newPage());
  const wrong: string[] = [];
  page.on('pageerror', ({ message }) => !LEFT_BEHIND.test(message) && wrong.push(message));
  return { context, page, wrong };
}

test('Firefox: a toy’s number kept, its pattern on paper, and all of it there after a restart without a network', async () => {
  const first = await openFirefox();
  const maker = new Maker(first.page, server.address);
  await maker.open();
  await untilKept(first.page);
  await maker.borrow('Bramble');
  await maker.at(`${new URL(first.page.url()).hash.slice(2)}/make`);
  await maker.choose(/hooded top/i);
  await maker.go('print', 'Save the PDF');
  await maker.step('head-girth');
  await maker.type('18');
  await first.page.getByText('saved', { exact: true }).waitFor();
  const step = new URL(first.page.url()).hash;
  expect(first.wrong).toEqual([]);
  await first.context.close();

  await server.close();
  const second = await openFirefox();
  const later = new Maker(second.page, server.address);
  await later.open();
  await later.heading('Your toys');
  await second.page.goto(server.address + step);
  await later.field().waitFor();
  await expect.poll(() => later.field().inputValue()).toBe('18');
  await later.type('18½');
  await second.page.getByText('saved', { exact: true }).waitFor();
  expect(second.wrong).toEqual([]);
  await second.context.close();
  server = await serve({ folder: DIST, port: Number(new URL(server.address).port) });
});
