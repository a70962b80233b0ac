import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { seeded } from '../toys/seeded';
import { beginToy } from './begin-toy';
import { DIST, openSite, type Site } from './browser';
import { Maker } from './maker';
import { type Mortal, startMortal } from './mortal';
import { makeNewer } from './newer-build';
import { backToVersion1, readingsNow } from './raw-store';

/** Fewer lives where every push waits for them; all that the app does comes by in turn. */
const LIVES = Number(process.env.LIVES ?? 5);
const MINUTES = 60_000;
/** What stood in the field this long before the end is on the disk. */
const WRITTEN_MS = 1_000;

const work = mkdtempSync(join(tmpdir(), 'hemling-lives-'));
const folder = join(work, 'profile');
const build = join(work, 'build');
const backup = join(work, 'backup.json');

let site: Site;
let mortal: Mortal | undefined;
beforeAll(async () => {
  cpSync(DIST, build, { recursive: true });
  site = await openSite({ folder: build });
});
afterEach(async () => {
  await mortal?.kill();
});
afterAll(async () => {
  await site.close();
  rmSync(work, { recursive: true, force: true, maxRetries: 5 });
});

/** What must be there in the next life: readings said to be saved, and what stood in a field. */
type Owed = { readonly saved: Map<string, string>; typed: string | null; restored: readonly string[] };
type Deed = (maker: Maker, owed: Owed, random: () => number) => Promise<void>;

const deeds: Readonly<Record<string, Deed>> = {
  typing: async (maker, owed, random) => {
    await toStep(maker);
    const mm = `${100 + Math.floor(random() * 300)} mm`;
    await maker.type(mm);
    if (random() < 0.8) {
      await maker.page.locator('#step-status .saved').waitFor();
      for (const [id, row] of await readingsNow(maker.page)) owed.saved.set(id, row);
    }
    void maker.press(/^Next:/).catch(() => 'killed');
    await sleep(random() * 300);
  },
  journalling: async (maker, owed, random) => {
    await toStep(maker);
    owed.typed = `${1 + Math.floor(random() * 90)} 3/`;
    await maker.type(owed.typed);
    await sleep(WRITTEN_MS + random() * 200);
  },
  restoring: async (maker, owed, random) => {
    const { page } = maker;
    await maker.at('settings/backup');
    await page.locator('input[type=file]').setInputFiles(backup);
    owed.restored = ['restored-1', 'restored-400'];
    void maker.press('Add it to what is here').catch(() => 'killed');
    await sleep(random() * 900);
  },
  migrating: async (maker, _, random) => {
    await maker.page.goto(`${site.address}icon.svg`);
    await maker.page.evaluate(backToVersion1);
    void maker.open().catch(() => 'killed');
    await sleep(random() * 600);
  },
  updating: async (maker, _, random) => {
    const { page } = maker;
    makeNewer(build);
    await page.evaluate(async () => void (await navigator.serviceWorker.ready).update());
    void maker.press('Use it now').catch(() => 'killed');
    await sleep(random() * 2500);
  },
};

test(`killed ${LIVES} times, typing, journalling, restoring, migrating, updating: nothing is lost`, {
  timeout: 30 * MINUTES,
}, async () => {
  const random = seeded(20261130);
  writeFileSync(backup, JSON.stringify(aBackup(400)));
  const owed: Owed = { saved: new Map(), typed: null, restored: [] };
  const names = Object.keys(deeds);
  const told: Record<string, number> = {};
  let lost = 0;
  for (let life = 0; life < LIVES; life++) {
    mortal = await startMortal(folder);
    const maker = new Maker(mortal.page, site.address);
    await maker.open();
    await maker.named('Measure a toy').first().waitFor();
    if (life === 0) await beginToy(maker);
    else lost += await missing(maker.page, owed);
    const name = names[life % names.length] ?? 'typing';
    await deeds[name]?.(maker, owed, random);
    told[name] = (told[name] ?? 0) + 1;
    await mortal.kill();
    mortal = undefined;
  }
  mortal = await startMortal(folder);
  await mortal.page.goto(site.address);
  lost += await missing(mortal.page, owed);
  console.log(`${JSON.stringify(told)}: ${owed.saved.size} readings said to be saved, ${lost} lost`);
  expect(lost).toBe(0);
  expect(owed.saved.size).toBeGreaterThan(0);
});

/** What is owed and not there. A restored file is there whole, or not at all. */
async function missing(page: Page, owed: Owed): Promise<number> {
  await page.locator('.toy-row').first().waitFor();
  const kept = await readingsNow(page);
  let lost = [...owed.saved].filter(([id, row]) => kept.get(id) !== row).length;
  if (owed.typed) {
    const offered = page.getByText(`${owed.typed} in was typed and not saved yet`);
    await offered.waitFor({ timeout: 15_000 }).catch(() => lost++);
    await page.getByRole('button', { name: 'Close' }).first().click();
    owed.typed = null;
  }
  if (owed.restored.length > 0) {
    const there = owed.restored.filter((id) => kept.has(id)).length;
    if (there !== 0 && there !== owed.restored.length) lost++;
    owed.restored = [];
  }
  return lost;
}

async function toStep(maker: Maker): Promise<void> {
  if (!/\/measure\//.test(maker.page.url())) await maker.press(/Go on with Bramble/);
  await maker.page.getByRole('heading', { level: 1 }).waitFor();
  if (!/\/measure\//.test(maker.page.url())) await maker.step('neck-girth');
  await maker.field().waitFor();
}

/** A backup of one toy with so many readings. */
function aBackup(count: number): object {
  const at = 1.7e12;
  const traits = {};
  const toy = { id: 'restored', name: 'Juniper', kind: 'upright', traits, note: '', corrections: {}, kept: {} };
  const reading = { toyId: 'restored', measureId: 'neck-girth', mm: 300, from: 'tape', set: at, takenAt: at };
  return {
    ...{ format: 'hemling-backup', version: 1, made: new Date(at).toISOString() },
    toys: [{ ...toy, createdAt: at, changedAt: at }],
    readings: Array.from({ length: count }, (_, each) => ({ id: `restored-${each + 1}`, ...reading })),
    ...{ garments: [], places: [], settings: [], photos: [], aside: [] },
  };
}
