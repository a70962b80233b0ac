/**
 * Every screen of the built app as a picture, to be looked at, phone and desktop, light and dark:
 * `node --import tsx tests/pictures/screens.ts FOLDER [look] [theme]`. `npm run build` comes first.
 */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { desktop, openSite, phone } from '../browser/browser';
import { Maker } from '../browser/maker';

const looks: Readonly<Record<string, BrowserContextOptions>> = {
  phone,
  landscape: { ...phone, viewport: { width: 640, height: 360 } },
  narrow: { ...phone, viewport: { width: 320, height: 568 } },
  desktop,
};
const themes = ['light', 'dark'] as const;

/** The screens in the order a maker meets them: each is reached from the one before. */
const shots: readonly (readonly [name: string, reach: (maker: Maker) => Promise<unknown>])[] = [
  ['welcome', (maker) => maker.open()],
  ['toy', (maker) => maker.borrow('Bramble')],
  ['garments', (maker) => maker.press(/^Make something/)],
  ['choices-drawn', (maker) => maker.press(/hooded top/i)],
  ['pattern', (maker) => maker.go('pattern')],
  ['print', (maker) => maker.go('print')],
  ['settings', (maker) => maker.at('settings')],
  ['backup', (maker) => maker.at('settings/backup')],
  ['about', (maker) => maker.at('settings/about')],
  ['trouble', (maker) => maker.at('toy/nobody')],
  ['name', (maker) => maker.at('new')],
  ['kind', (maker) => maker.name('Thistle')],
  ['looks', (maker) => maker.kind('Two arms')],
  ['choices', async (maker) => maker.press('Next: what to make').then(() => maker.press(/hooded top/i))],
  ['marks', (maker) => maker.press('Next: threads and marks')],
  ['step', (maker) => maker.press('The marks are on')],
  ['step-typed', (maker) => maker.type('17½')],
  ['step-again', (maker) => maker.again('17⅜')],
  [
    'step-wrong',
    (maker) =>
      maker
        .step('body-girth')
        .then(() => maker.type('5 1/'))
        .then(() => maker.press(/^Next:/)),
  ],
  ['step-flag', (maker) => maker.doubt()],
  ['step-wish', (maker) => maker.step('body-length')],
  ['review', (maker) => maker.go('review')],
  ['toys', (maker) => maker.toys()],
];

const [folder = 'pictures', onlyLook, onlyTheme, onlyShot] = process.argv.slice(2);
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
  for (const [index, [name, reach]] of shots.entries()) {
    await reach(maker);
    await page.waitForTimeout(350);
    if (onlyShot && !name.includes(onlyShot)) continue;
    const number = String(index + 1).padStart(2, '0');
    await page.screenshot({ path: join(folder, `${prefix}-${number}-${name}.png`), fullPage: true });
  }
}
