/** Rooms of the app on a page without screens, built into a folder of its own and served: for tests of what is kept. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import appConfig from '../../.config/vite.config.mjs';
import { openSite, type Site } from './browser';

export async function openBareSite(): Promise<Site> {
  const folder = mkdtempSync(join(tmpdir(), 'hemling-bare-'));
  await build({
    ...appConfig,
    root: fileURLToPath(new URL('page', import.meta.url)),
    configFile: false,
    publicDir: false,
    build: { ...appConfig.build, outDir: folder },
  });
  // Every page asks for the watchdog; this one needs none.
  writeFileSync(join(folder, 'watchdog.js'), '');
  const site = await openSite({ folder });
  return {
    ...site,
    close: async () => {
      await site.close();
      rmSync(folder, { recursive: true });
    },
  };
}
