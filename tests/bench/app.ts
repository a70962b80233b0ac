/**
 * How the built app feels on a phone, as a table that is put into README.md: `npm run build`, then
 * `npm run bench -- --app`. A phone is this machine at a quarter of its speed.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { CDPSession, Page } from 'playwright-core';
import { locales } from '../../app/words';
import { openSite, phone, type Site, untilKept } from '../browser/browser';
import { noteWhenUsable, usable, weigh } from '../browser/host';
import { Maker } from '../browser/maker';

const SLOWER = 4;
const README = fileURLToPath(new URL('../../README.md', import.meta.url));
const PLACE = /(<!-- measured by npm run bench -- --app -->\n)[\s\S]*?(<!-- end -->)/;

type Row = { readonly what: string; readonly found: string; readonly most: string };

/** Measures, prints the table, and writes it into README.md. @param runs how often each start is timed */
export async function benchApp(runs: number): Promise<void> {
  const site = await openSite();
  const rows = [await firstBytes(site), await offlineStart(site, runs), ...(await measuring(site))];
  await site.close();
  const table = [
    '| on a phone | measured | at most |',
    '| --- | --- | --- |',
    ...rows.map(({ what, found, most }) => `| ${what} | ${found} | ${most} |`),
  ].join('\n');
  console.log(table);
  writeFileSync(README, readFileSync(README, 'utf8').replace(PLACE, `$1\n${table}\n\n$2`));
}

async function firstBytes({ browser }: Site): Promise<Row> {
  const weights: { readonly locale: string; readonly bytes: number }[] = [];
  for (const locale of locales) {
    const { before } = await weigh(browser, locale);
    weights.push({ locale, bytes: before.reduce((sum, [, each]) => sum + each, 0) });
  }
  const [most] = weights.sort((one, other) => other.bytes - one.bytes);
  if (!most) throw new Error('no languages');
  const named = new Intl.DisplayNames('en', { type: 'language' }).of(most.locale);
  return {
    what: `from the network before the first screen can be used, in the language that weighs most (${named})`,
    found: `${Math.round(most.bytes / 1000)} kB`,
    most: '75 kB',
  };
}

/** From the address opened to the first screen that can be used, with the host gone. */
async function offlineStart(site: Site, runs: number): Promise<Row> {
  const { page, close } = await site.visit(phone);
  await page.addInitScript(noteWhenUsable);
  await page.goto(site.address);
  await untilKept(page);
  await site.stop();
  await slowed(page);
  const times: number[] = [];
  for (let run = 0; run < runs; run++) {
    await page.goto('about:blank');
    await page.goto(site.address);
    times.push(await usable(page));
  }
  await site.restart();
  await close();
  times.sort((one, other) => one - other);
  const at = (share: number) => ((times[Math.floor((times.length - 1) * share)] ?? Number.NaN) / 1000).toFixed(2);
  return {
    what: 'until it can be used, without a network',
    found: `${at(0.5)} s (${at(0)} to ${at(0.9)})`,
    most: '1.0 s',
  };
}

/** From each key to what it changes on the screen, over a whole step; and what moved by itself meanwhile. */
async function measuring(site: Site): Promise<readonly Row[]> {
  const { page, close } = await site.visit(phone);
  await page.addInitScript(watchEvents);
  const maker = new Maker(page, site.address);
  await maker.borrow('Bramble');
  await maker.at(`${new URL(page.url()).hash.slice(2)}/make`);
  await maker.choose(/hooded top/i);
  await maker.step('head-girth');
  await slowed(page);
  await maker.field().fill('');
  for (const text of ['17½', '18 1/4', '305 mm', '44.5 cm']) {
    await maker.field().fill('');
    await maker.field().pressSequentially(text);
    await page.getByText('saved', { exact: true }).first().waitFor();
  }
  const { keys, moved } = await page.evaluate(async () => {
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    return (window as unknown as { watched: { keys: number[]; moved: number } }).watched;
  });
  await close();
  keys.sort((one, other) => one - other);
  const [middle, slowest] = [keys[keys.length >> 1], keys.at(-1)];
  if (middle === undefined) throw new Error('no key was seen');
  return [
    { what: 'from a key to the screen', found: `${middle} ms (up to ${slowest})`, most: '100 ms' },
    { what: 'moved by itself while measuring (layout shift)', found: moved.toFixed(3), most: '0' },
  ];
}

/**
 * In the page: the times from a key to the end of the picture after it, and all layout shifts (Layout
 * Instability). No function in it has a name: what runs this file marks names with a helper that the page lacks.
 */
function watchEvents(): void {
  const watched = Object.assign(window, { watched: { keys: [] as number[], moved: 0 } }).watched;
  addEventListener(
    'keydown',
    ({ timeStamp }) =>
      requestAnimationFrame(() =>
        setTimeout(() => {
          watched.keys.push(Math.round(performance.now() - timeStamp));
        }),
      ),
    true,
  );
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) watched.moved += (entry as PerformanceEntry & { value: number }).value;
  }).observe({ type: 'layout-shift', buffered: true });
}

async function slowed(page: Page): Promise<CDPSession> {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  return devtools;
}
