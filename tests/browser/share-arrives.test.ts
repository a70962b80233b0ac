import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { crc32, deflateSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { afterAll, beforeEach, describe, expect, onTestFinished, test } from 'vitest';
import { openSite, untilKept } from './browser';
import { eachPhone } from './each-phone';

const her = eachPhone();
const folder = mkdtempSync(join(tmpdir(), 'arrivals-'));
afterAll(() => rmSync(folder, { recursive: true }));

const link = readFileSync(new URL('../cards/1/bramble-inches.link', import.meta.url), 'utf8').trim();
const fragment = link.slice(link.indexOf('#'));
const toysKept = (page: Page) =>
  page.goto(`${her.maker.address}#/`).then(() => page.getByRole('heading', { level: 1 }).textContent());

describe('a card that comes in', () => {
  beforeEach(async () => {
    await her.maker.open();
    await her.maker.heading(/Clothes that fit/);
  });

  test('is cleared from the address and the history at once, and kept only when the maker says so', async () => {
    const { page, maker } = her;
    await page.goto(`${maker.address}${fragment}`);
    await page.getByRole('heading', { level: 1, name: 'A card for Bramble' }).waitFor();
    expect(page.url()).toBe(`${maker.address}#/card`);
    await page.goBack();
    expect(page.url()).not.toContain('#1');
    await page.goForward();
    await page.getByRole('button', { name: 'Not now' }).click();
    expect(await toysKept(page)).toMatch(/Clothes that fit/);
  });

  test('opens in a page that is already there, and beside a toy of the same name', async () => {
    const { page, maker } = her;
    await maker.borrow('Bramble');
    await page.evaluate((hash) => {
      location.hash = hash;
    }, fragment);
    await page.getByText('You already have a toy called Bramble').waitFor();
    await page.getByRole('button', { name: 'Keep it' }).click();
    await page.getByRole('heading', { level: 1, name: 'Bramble 2' }).waitFor();
  });

  test('may be dropped or pasted anywhere', async () => {
    const { page } = her;
    const bring = (kind: 'drop' | 'paste', text: string) =>
      page.evaluate(
        ([type, words]) => {
          const carried = new DataTransfer();
          if (words.startsWith('{')) carried.items.add(new File([words], 'card.json', { type: 'application/json' }));
          else carried.setData('text/plain', words);
          const more = { bubbles: true, cancelable: true };
          document.body.dispatchEvent(
            type === 'drop'
              ? new DragEvent('drop', { ...more, dataTransfer: carried })
              : new ClipboardEvent('paste', { ...more, clipboardData: carried }),
          );
        },
        [kind, text] as const,
      );
    const json = readFileSync(new URL('../cards/1/bramble-inches.json', import.meta.url), 'utf8');
    for (const [kind, text] of [
      ['drop', json],
      ['paste', link],
      ['drop', link],
      ['paste', json],
    ] as const) {
      await bring(kind, text);
      await page.getByRole('heading', { level: 1, name: 'A card for Bramble' }).waitFor();
      await page.getByRole('button', { name: 'Not now' }).click();
    }
  });

  test('may be shared by another app, even before this one is open', async () => {
    const site = await openSite({ under: '/shop/' });
    onTestFinished(() => site.close());
    const { page } = await site.visit();
    await page.goto(site.address);
    await untilKept(page);
    const posted = await page.evaluate(async (text) => {
      const form = new FormData();
      form.append('text', text);
      const answer = await fetch('./share', { method: 'POST', body: form });
      return answer.ok;
    }, link);
    expect(posted).toBe(true);
    await page.goto(`${site.address}#/card?shared`);
    await page.getByRole('heading', { level: 1, name: 'A card for Bramble' }).waitFor();
    await page.reload();
    await page.getByRole('heading', { level: 1, name: 'Bring in a card' }).waitFor();
  });

  test.each([
    ['a link cut short', fragment.slice(0, -3), 'Part of the link is missing'],
    ['a newer card', fragment.replace('#1', '#2'), 'made by a newer Hemling'],
  ])('%s: a clear message, nothing kept, the app stays usable', async (_, hash, words) => {
    const { page, maker } = her;
    await page.goto(maker.address + hash);
    await page.getByText(words).waitFor();
    expect(await toysKept(page)).toMatch(/Clothes that fit/);
  });

  test.each([
    ['a picture without a card', 'thing.png', pngOf(64, 64), 'No card’s square can be read'],
    ['a picture that is none', 'thing.png', 'not a picture', 'cannot be opened'],
    ['a picture of four billion pixels', 'thing.png', pngOf(65_535, 65_535), 'far larger than a card'],
    ['a file of 64 MB', 'thing.json', Buffer.alloc(64 * 1024 * 1024, ' '), 'far larger than a card'],
    ['a file of another app', 'thing.json', '{"format":"other"}', 'a file of another kind'],
    ['markup', 'thing.html', '<img src=x onerror="window.hurt=1">', 'This is no card'],
  ])('%s: a clear message, nothing kept, the app stays usable', async (_, name, content, words) => {
    const { page, maker } = her;
    const path = join(folder, name);
    writeFileSync(path, content);
    await page.goto(`${maker.address}#/card`);
    await page.locator('input[type=file]').setInputFiles(path);
    await page.getByText(words).waitFor({ timeout: 60_000 });
    expect(await page.evaluate(() => 'hurt' in window)).toBe(false);
    expect(await toysKept(page)).toMatch(/Clothes that fit/);
  });

  test('shows a hostile name as it is written, and runs none of it', async () => {
    const { page, maker } = her;
    const card = JSON.parse(readFileSync(new URL('../cards/1/bramble-inches.json', import.meta.url), 'utf8'));
    const name = '<img src=x onerror="window.hurt=1">\u202e{{x}} $t(screen.back)';
    const buffer = Buffer.from(JSON.stringify({ ...card, toy: { ...card.toy, name } }));
    await page.goto(`${maker.address}#/card`);
    await page.locator('input[type=file]').setInputFiles({ name: 'card.json', mimeType: 'application/json', buffer });
    const title = page.getByRole('heading', { level: 1, name: 'A card for <img' });
    expect(await title.textContent()).toBe(`A card for ${name.replace('\u202e', '')}`);
    await page.getByRole('button', { name: 'Keep it' }).click();
    await page.getByRole('link', { name: 'Share its card' }).click();
    await page.getByRole('button', { name: 'Copy the link' }).waitFor();
    expect(await page.evaluate(() => 'hurt' in window)).toBe(false);
  });
});

/** A black PNG that says it is so large; its pixels are there only when it is small (ISO/IEC 15948). */
function pngOf(width: number, height: number): Buffer {
  const chunk = (type: string, content: Buffer) => {
    const named = Buffer.concat([Buffer.from(type), content]);
    const size = Buffer.alloc(4);
    size.writeUInt32BE(content.length);
    const sum = Buffer.alloc(4);
    sum.writeUInt32BE(crc32(named));
    return Buffer.concat([size, named, sum]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.writeUInt8(8, 8);
  const rows = deflateSync(Buffer.alloc(Math.min(height, 100) * (width + 1)));
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([signature, chunk('IHDR', head), chunk('IDAT', rows), chunk('IEND', Buffer.alloc(0))]);
}
