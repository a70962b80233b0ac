import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import type { MeasureId } from '../../app/body';
import { bodyFrom } from '../../app/measuring';
import { demoCards } from '../../app/measuring/demo';
import { seeded } from '../toys/seeded';
import { beginToy } from './begin-toy';
import { openSite, type Site } from './browser';
import { Maker } from './maker';
import { type Mortal, startMortal } from './mortal';

/** Fewer lives where every push waits for them. */
const LIVES = Number(process.env.LIVES ?? 10);
const MINUTES = 60_000;

type Shown = { readonly steps: string[]; readonly saved: { readonly measure: string; readonly mm: number }[] };

const [card] = demoCards;
if (!card) throw new Error('no demo toys');
const { sizes } = bodyFrom(card);

let site: Site;
let folder: string;
let mortal: Mortal | undefined;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'hemling-mortal-'));
});
afterEach(async () => {
  await mortal?.kill();
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
});

test(`killed ${LIVES} times while measuring, the app loses no number it said was saved, and goes on at its step`, {
  timeout: 15 * MINUTES,
}, async () => {
  const random = seeded(20261122);
  /** What the screen has said, as it said it: steps shown, and numbers with "saved" under them. */
  const shown: Shown = { steps: [], saved: [] };
  for (let life = 0; life < LIVES; life++) {
    mortal = await startMortal(folder);
    const { page } = mortal;
    page.on('console', (message) => {
      const [, step] = /^at (\S+)$/.exec(message.text()) ?? [];
      const [, measure, mm] = /^saved (\S+) (\d+) mm$/.exec(message.text()) ?? [];
      if (step && step !== shown.steps.at(-1)) shown.steps.push(step);
      if (measure && mm) shown.saved.push({ measure, mm: Number(mm) });
    });
    await page.addInitScript(tellWhatIsShown);
    const maker = new Maker(page, site.address);
    await maker.open();
    if (life === 0) await beginToy(maker);
    else await goOn(maker, shown);
    measure(maker, random, shown).catch(() => 'killed');
    await sleep(100 + random() * 2500);
    await mortal.kill();
    mortal = undefined;
  }
  expect(shown.saved.length).toBeGreaterThan(LIVES / 2);
  expect(new Set(shown.saved.map((each) => each.measure)).size).toBeGreaterThan(3);
});

/** In the page: tells each measuring step, and each number under which the word "saved" appears, as they are shown. */
function tellWhatIsShown(): void {
  const tell = () => {
    const [, measure] = /\/measure\/([\w-]+)/.exec(location.hash) ?? [];
    if (!measure || !document.querySelector('#step-status')) return;
    console.log(`at ${measure}`);
    const field = document.querySelector<HTMLInputElement>('main input[type="text"]');
    if (field && document.querySelector('#step-status .saved')?.textContent)
      console.log(`saved ${measure} ${field.value}`);
  };
  document.addEventListener('DOMContentLoaded', () =>
    new MutationObserver(tell).observe(document.body, {
      subtree: true,
      childList: true,
      attributes: true,
      characterData: true,
    }),
  );
}

/** From the first screen back to where she was; nothing said to be saved may be missing. */
async function goOn({ page }: Maker, shown: Shown) {
  await page.getByRole('link', { name: 'Go on with Bramble' }).click();
  await page.getByRole('heading', { level: 1 }).waitFor();
  const step = /\/measure\/([\w-]+)/.exec(page.url())?.[1] ?? '';
  const [before, last] = shown.steps.slice(-2);
  const longAgo = shown.steps.slice(0, -2).filter((each) => each !== before && each !== last);
  expect(longAgo).not.toContain(step);
  const kept = await readingsOnDisk(page);
  for (const { measure, mm } of shown.saved)
    expect(kept).toContainEqual(expect.objectContaining({ measureId: measure, mm }));
}

/** Read without any code of the app. */
const readingsOnDisk = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<{ measureId: string; mm: number }[]>((done, failed) => {
        const opening = indexedDB.open('hemling');
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const reading = opening.result.transaction('readings').objectStore('readings').getAll();
          reading.onsuccess = () => {
            opening.result.close();
            done(reading.result);
          };
        };
      }),
  );

/** Enters one number after another, and all anew when the last is taken, until the end of the world. */
async function measure(maker: Maker, random: () => number, shown: Shown): Promise<never> {
  const { page } = maker;
  for (;;) {
    const id = /\/measure\/([\w-]+)/.exec(page.url())?.[1];
    if (!id) {
      shown.steps.length = 0;
      await maker.step('neck-girth');
      continue;
    }
    const mm = Math.round((sizes[id as MeasureId]?.value ?? 100) * (0.99 + random() * 0.02));
    await maker.type(`${mm} mm`);
    if (random() < 0.7) await page.locator('#step-status .saved').waitFor();
    await page.getByRole('button', { name: /^Next:|^Back to:/ }).click();
    await page.waitForURL((url) => !url.href.endsWith(id), { timeout: 1000 }).catch(() => keepDoubt(maker));
  }
}

const keepDoubt = (maker: Maker) => maker.press(/^Keep/);
