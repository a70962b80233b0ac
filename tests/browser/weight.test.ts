import { afterAll, beforeAll, expect, test } from 'vitest';
import { locales } from '../../app/words';
import { openSite, type Site } from './browser';
import { weigh } from './host';

/** A thousand bytes each, headers included: what a phone on a poor line waits for before it can begin. */
const MOST_BYTES = 75_000;

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

test.each(locales)(
  `the first usable screen takes at most ${MOST_BYTES} bytes from the network (%s)`,
  async (locale) => {
    const { before, all } = await weigh(site.browser, locale);
    const bytes = before.reduce((sum, [, each]) => sum + each, 0);
    console.log(
      `first usable screen in ${locale}: ${bytes} bytes in ${before.length} files; with all it goes on to fetch: ${all} bytes`,
    );
    expect(before.length).toBeGreaterThan(2);
    expect(bytes, JSON.stringify(before)).toBeLessThanOrEqual(MOST_BYTES);
  },
);
