/** Two phones with the app open: one sends a card, the other gets it. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach } from 'vitest';
import { openSite, phone, type Site, type Visit } from './browser';
import { Maker } from './maker';

export type Phones = { site: Site; sender: Visit; receiver: Visit };

/** Opens both before each test of a file, and closes them after it. */
export function twoPhones(): Phones {
  const phones = {} as Phones;
  beforeAll(async () => {
    phones.site = await openSite({ under: '/shop/', keeps: false });
  });
  afterAll(() => phones.site.close());
  beforeEach(async () => {
    phones.sender = await phones.site.visit({ ...phone, permissions: ['clipboard-read', 'clipboard-write'] });
    phones.receiver = await phones.site.visit(phone);
    for (const { page } of [phones.sender, phones.receiver]) await page.goto(phones.site.address);
  });
  afterEach(async () => {
    await phones.sender.close();
    await phones.receiver.close();
  });
  return phones;
}

/** A maker who has borrowed a toy and sees its screen. */
export async function borrowed(page: Page, site: Site, toy: string): Promise<Maker> {
  const maker = new Maker(page, site.address);
  await maker.borrow(toy);
  return maker;
}

/** The file that a button saves. */
export async function saved(page: Page, name: string): Promise<Buffer> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name }).click()]);
  return readFileSync(await download.path());
}
