/**
 * The pictures of the README and of the app's listing, into assets/screenshots/:
 * `node --import tsx tests/pictures/readme.ts`. `npm run build` comes first.
 */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { desktop, openSite, phone, untilStill } from '../browser/browser';
import { Maker } from '../browser/maker';
import { screenWalk } from '../browser/screen-walk';

const folder = fileURLToPath(new URL('../../assets/screenshots', import.meta.url));

const wanted = [
  {
    options: { ...phone, deviceScaleFactor: 1.5 },
    colorScheme: 'light',
    screens: ['welcome', 'step-typed', 'pattern'],
  },
  { options: { ...phone, deviceScaleFactor: 1.5 }, colorScheme: 'dark', screens: ['step-flag', 'print'] },
  { options: desktop, colorScheme: 'light', screens: ['choices-drawn'] },
] as const;

mkdirSync(folder, { recursive: true });
const site = await openSite(process.env.HEMLING_DIST ? { folder: process.env.HEMLING_DIST } : {});
for (const { options, colorScheme, screens } of wanted) {
  const { page, close } = await site.visit({ ...options, colorScheme, reducedMotion: 'reduce' });
  const maker = new Maker(page, site.address);
  for (const [name, reach] of screenWalk) {
    await reach(maker);
    if (!screens.some((screen) => screen === name)) continue;
    await untilStill(page);
    await page.evaluate(() => scrollTo(0, 0));
    await page.screenshot({ path: join(folder, `${name}.png`) });
  }
  await close();
}
await site.close();
