import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { type MeasureId, measureIds } from '../../app/body';
import { seeded } from '../toys/seeded';
import { openBareSite } from './bare-site';
import type { Site } from './browser';
import { type Mortal, startMortal } from './mortal';

/** The store alone, fast and without screens; the whole flow is killed in kill-flow.test.ts. */
const LIVES = 10;
/** Fewer where every push waits for them. */
const RESTORES = Number(process.env.RESTORES ?? 5);
const MINUTES = 60_000;

let site: Site;
let folder: string;
let mortal: Mortal | undefined;
beforeAll(async () => {
  site = await openBareSite();
});
afterAll(() => site.close());
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'hemling-mortal-'));
});
afterEach(async () => {
  await die();
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
});

async function live(): Promise<Page> {
  mortal = await startMortal(folder);
  await mortal.page.goto(site.address);
  await mortal.page.waitForFunction(() => 'rooms' in window);
  return mortal.page;
}

async function die(): Promise<void> {
  await mortal?.kill();
  mortal = undefined;
}

describe('a browser killed', () => {
  test(`${LIVES} times while readings are entered loses none that was shown as saved`, {
    timeout: 15 * MINUTES,
  }, async () => {
    const random = seeded(20261120);
    const saved = new Set<string>();
    let toyId = '';
    for (let each = 0; each < LIVES; each++) {
      const page = await live();
      toyId ||= await page.evaluate(
        async () => (await window.rooms.storage.saveToy({ name: 'Bramble', kind: 'upright' })).id,
      );
      const found = await page.evaluate(async (id) => {
        const { historyOf, openStore, whereWasI } = window.rooms.storage;
        return { state: await openStore(), history: await historyOf(id), place: await whereWasI() };
      }, toyId);
      expect(found.state).toMatchObject({ ok: true });
      const kept = new Set(found.history.map((reading) => reading.id));
      expect([...saved].filter((id) => !kept.has(id))).toEqual([]);
      const last = [...found.history].sort((a, b) => a.takenAt - b.takenAt || a.turn - b.turn).at(-1)?.measureId;
      if (last) expect([last, stepAfter(last)]).toContain(found.place?.step);
      page.on('console', (message) => {
        const [, id] = /^saved (\w+)$/.exec(message.text()) ?? [];
        if (id) saved.add(id);
      });
      page
        .evaluate((id) => window.rooms.enterReadings(id, (one) => console.log(`saved ${one}`)), toyId)
        .catch(() => 'killed');
      await sleep(50 + random() * 700);
      await die();
    }
    expect(saved.size).toBeGreaterThan(LIVES);
  });

  test(`${RESTORES} times in the middle of restoring has all or nothing of it`, { timeout: 15 * MINUTES }, async () => {
    const random = seeded(7);
    let page = await live();
    const [full, before] = await page.evaluate(async () => {
      const { storage, fillStore } = window.rooms;
      const { backupFile, exportAll } = await storage.loadBackup();
      await fillStore(40, 60_000);
      const full = await backupFile(await exportAll()).text();
      await storage.forgetEverything();
      await fillStore(2, 100);
      return [full, await backupFile(await exportAll()).text()] as const;
    });
    const outcomes = { before: 0, after: 0 };
    let takes = 0;
    for (let each = 0; each < RESTORES; each++) {
      const restoring = page.evaluate(async (text) => {
        const { importAll, readBackup } = await window.rooms.storage.loadBackup();
        const result = await readBackup(text);
        if (!result.ok) throw new Error(result.code);
        const began = performance.now();
        console.log('began');
        await importAll(result.backup, 'replace');
        return performance.now() - began;
      }, full);
      if (each === 0) takes = await restoring;
      else {
        restoring.catch(() => 'killed');
        await page.waitForEvent('console', (message) => message.text() === 'began');
        await sleep(random() * takes * 1.2);
      }
      await die();
      page = await live();
      const [now, copied] = await page.evaluate(async () => {
        const { backupFile, copyKept, exportAll } = await window.rooms.storage.loadBackup();
        return [await backupFile(await exportAll()).text(), (await copyKept()) !== null] as const;
      });
      const after = contentOf(now) === contentOf(full);
      expect(after || contentOf(now) === contentOf(before)).toBe(true);
      expect(copied).toBe(after);
      outcomes[after ? 'after' : 'before'] += 1;
      if (after)
        await page.evaluate(async () => {
          const { forgetCopy, undoReplace } = await window.rooms.storage.loadBackup();
          await undoReplace();
          await forgetCopy();
        });
    }
    expect(outcomes.before).toBeGreaterThan(0);
    expect(outcomes.after).toBeGreaterThan(0);
  });
});

/** The step a maker comes to after `step`; after the last, the first again. */
const stepAfter = (step: MeasureId) => measureIds[(measureIds.indexOf(step) + 1) % measureIds.length];

const contentOf = (backup: string) => backup.replace(/"made":"[^"]*","sum":"[^"]*"/, '');
