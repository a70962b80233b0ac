/**
 * Every screen of the built app as a picture, to be looked at, phone and desktop, light and dark:
 * `node --import tsx tests/pictures/screens.ts FOLDER [look] [theme]`. `npm run build` comes first.
 */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { desktop, openSite, phone, untilStill } from '../browser/browser';
import { Maker } from '../browser/maker';
import { screenWalk } from '../browser/screen-walk';

const looks: Readonly<Record<string, BrowserContextOptions>> = {
  phone,
  landscape: { ...phone, viewport: { width: 640, height: 360 } },
  narrow: { ...phone, viewport: { width: 320, height: 568 } },
  desktop,
};
const themes = ['light', 'dark'] as const;

const [folder = 'pictures', onlyLook, onlyTheme] = process.argv.slice(2);
mkdirSync(folder, { recursive: true });
const site = await openSite(process.env.HEMLING_DIST ? { folder: process.env.HEMLING_DIST } : {});
for (const [look, options] of Object.entries(looks).filter(([name]) => !onlyLook || name === onlyLook)) {
  for (const theme of themes.filter((name) => !onlyTheme || name === onlyTheme)) {
    const { page, wrong, close } = await site.visit({ ...options, colorScheme: theme });
    await walk(page, `${look}-${theme}`).catch((error) => console.log(look, theme, String(error).slice(0, 400)));
    if (wrong.length > 0) console.log(look, theme, wrong.slice(0, 5));
    await close();
  }
}
await site.close();

async function walk(page: Page, prefix: string): Promise<void> {
  const maker = new Maker(page, site.address);
  for (const [index, [name, reach]] of screenWalk.entries()) {
    await reach(maker);
    await untilStill(page);
    const number = String(index + 1).padStart(2, '0');
    await page.screenshot({ path: join(folder, `${prefix}-${number}-${name}.png`), fullPage: true });
  }
}
