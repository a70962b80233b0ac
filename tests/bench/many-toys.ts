// What thousands of toys cost against ten, in the built app in a browser.

import { writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { openSite, phone, type Site } from '../browser/browser';
import { Maker } from '../browser/maker';
import { fillRaw } from '../browser/raw-store';

const RUNS = 7;
const MANY = 2_000;
const READINGS = 30;
const HUGE = { toys: 2_000, readings: 50 };

/** Prints medians, ms, and the longest the page stood still while a backup of 100,000 readings was saved and brought back. */
export async function benchToys(): Promise<void> {
  const site = await openSite();
  try {
    const few = await times(site, 10);
    const many = await times(site, MANY);
    for (const [name, ms] of Object.entries(many)) {
      const ten = few[name] ?? Number.NaN;
      console.log(
        `${name}: ${ten.toFixed(0)} ms with 10 toys, ${ms.toFixed(0)} ms with ${MANY}: ${(ms / ten).toFixed(2)} ×`,
      );
    }
    await freezes(site);
  } finally {
    await site.close();
  }
}

async function times(site: Site, toys: number): Promise<Record<string, number>> {
  const { page, close } = await site.visit(phone);
  const maker = new Maker(page, site.address);
  await maker.open();
  await page.evaluate(fillRaw, { toys, readings: READINGS });
  const all: Record<string, number[]> = { opening: [], searching: [], 'a toy': [] };
  for (let run = 0; run < RUNS; run++) {
    await page.reload();
    all.opening?.push(await page.evaluate(untilThere, '.toy-row'));
    await page.getByRole('searchbox').waitFor();
    all.searching?.push(await page.evaluate(untilSought, 'Toy 7'));
    await page.goto(`${site.address}#/`);
    await page.locator('.toy-row').first().waitFor();
    all['a toy']?.push(await page.evaluate(untilOpened, 'details.reading'));
    await page.goto(site.address);
  }
  await close();
  return Object.fromEntries(Object.entries(all).map(([name, took]) => [name, median(took)]));
}

/** In the page: from the start of the page. */
function untilThere(place: string): Promise<number> {
  return new Promise<number>((done) => {
    const look = () => (document.querySelector(place) ? done(performance.now()) : requestAnimationFrame(look));
    look();
  });
}

/** In the page: from a key to the painted answer. */
function untilSought(name: string): Promise<number> {
  return new Promise<number>((done) => {
    const field = document.querySelector<HTMLInputElement>('input[type=search]');
    if (!field) return done(Number.NaN);
    const began = performance.now();
    field.value = name;
    field.dispatchEvent(new Event('input', { bubbles: true }));
    const look = () =>
      document.querySelector('.toy-row b')?.textContent?.startsWith(name)
        ? requestAnimationFrame(() => done(performance.now() - began))
        : requestAnimationFrame(look);
    look();
  });
}

/** In the page: from a tap on the first toy to its numbers. */
function untilOpened(place: string): Promise<number> {
  return new Promise<number>((done) => {
    const began = performance.now();
    document.querySelector<HTMLElement>('.toy-row')?.click();
    const look = () => (document.querySelector(place) ? done(performance.now() - began) : requestAnimationFrame(look));
    look();
  });
}

async function freezes(site: Site): Promise<void> {
  const { page, close } = await site.visit(phone);
  const maker = new Maker(page, site.address);
  await maker.open();
  await page.evaluate(fillRaw, HUGE);
  await maker.at('settings/backup');
  await maker.named('Save a backup').waitFor();
  await page.evaluate(watchFreezes);
  const coming = page.waitForEvent('download', { timeout: 120_000 });
  const began = performance.now();
  await maker.press('Save a backup');
  const file = join(tmpdir(), 'hemling-bench-backup.json');
  await (await coming).saveAs(file);
  await tell(page, 'saving a backup of 100,000 readings', performance.now() - began);
  await page.evaluate(watchFreezes);
  const again = performance.now();
  await page.locator('input[type=file]').setInputFiles(file);
  await maker.named('Add it to what is here').waitFor({ timeout: 120_000 });
  await maker.press('Replace what is here');
  await page.getByText('Everything from the file is here').waitFor({ timeout: 120_000 });
  await tell(page, 'bringing it back', performance.now() - again);
  writeFileSync(file, '');
  await close();
}

/** In the page: the longest time between two turns of the event loop, from now on. */
function watchFreezes(): void {
  const watch = { longest: 0 };
  Object.assign(window, { watch });
  let last = performance.now();
  const turn = new MessageChannel();
  turn.port1.onmessage = () => {
    const now = performance.now();
    watch.longest = Math.max(watch.longest, now - last);
    last = now;
    setTimeout(() => turn.port2.postMessage(0), 4);
  };
  turn.port2.postMessage(0);
}

async function tell(page: Page, name: string, took: number): Promise<void> {
  const longest = await page.evaluate(() => (window as unknown as { watch: { longest: number } }).watch.longest);
  console.log(`${name}: ${(took / 1000).toFixed(1)} s, the page stood still for ${longest.toFixed(0)} ms at most`);
}

function median(took: readonly number[]): number {
  return [...took].sort((a, b) => a - b)[Math.floor(took.length / 2)] ?? Number.NaN;
}
