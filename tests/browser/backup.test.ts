import { afterAll, beforeAll, expect, test } from 'vitest';
import { openBareSite } from './bare-site';
import type { Site } from './browser';
import { openTab } from './store-tab';

let site: Site;
beforeAll(async () => {
  site = await openBareSite();
});
afterAll(() => site.close());

test('a backup of 200 toys with 200 photos, restored into an empty browser, is equal', async () => {
  const full = await site.browser.newContext();
  const page = await openTab(full, site.address);
  const file = await page.evaluate(async () => {
    await window.rooms.fillStore(200, 60_000);
    const { backupFile, exportAll } = await window.rooms.storage.loadBackup();
    return backupFile(await exportAll()).text();
  });
  const empty = await site.browser.newContext();
  const other = await openTab(empty, site.address);
  const restored = await other.evaluate(async (text) => {
    const { backupFile, exportAll, importAll, previewImport, readBackup } = await window.rooms.storage.loadBackup();
    const result = await readBackup(new Blob([text]));
    if (!result.ok) throw new Error(result.code);
    const { merge } = await previewImport(result.backup);
    await importAll(result.backup, 'merge');
    return { text: await backupFile(await exportAll()).text(), toys: merge.toys.added, photos: merge.photos.added };
  }, file);
  expect(restored.toys).toBe(200);
  expect(restored.photos).toBe(200);
  const made = /"made":"[^"]*","sum":"[^"]*"/;
  expect(restored.text.replace(made, '')).toBe(file.replace(made, ''));
  await Promise.all([full.close(), empty.close()]);
});
