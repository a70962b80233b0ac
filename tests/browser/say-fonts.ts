import { openSite } from './browser';
import { familiesOf, fonts } from './fonts';

/** Before the browser tests: says which letters they will see, the narrow, the wide and this device's own. */
export default async function sayFonts(): Promise<void> {
  const seen: string[] = [];
  for (const font of [...fonts, undefined]) {
    const site = await openSite(font ? { font } : {});
    const { page } = await site.visit();
    await page.goto(site.address);
    await page.locator('h1').waitFor();
    seen.push(`${font ?? 'of this device'}: ${(await familiesOf(page, 'h1')).join(', ')}`);
    await site.close();
  }
  console.log(`Fonts seen: ${seen.join('; ')}`);
}
