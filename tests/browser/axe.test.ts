import { afterAll, beforeAll, expect, test } from 'vitest';
import { desktop, openSite, type Site } from './browser';
import { judgedWalk } from './judged-walk';

let site: Site;
beforeAll(async () => {
  site = await openSite({ keeps: false });
});
afterAll(() => site.close());

// On a phone it is `languages.test.ts` that walks.
test('no screen has anything to find, light or dark, nor to miss with a finger, on a desktop', async () => {
  const { page, wrong, close } = await site.visit({ ...desktop, reducedMotion: 'reduce' });
  const { found } = await judgedWalk(page, site.address, desktop.viewport);
  expect(found).toEqual([]);
  expect(wrong).toEqual([]);
  await close();
});
