import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { findBrowser } from '../../.config/setup.mjs';
import { qrOf } from '../../app/sharing/qr/write';
import { drawnQr, type Pixels, photograph } from '../photos/photograph';
import { seeded } from '../toys/random';
import { borrowed, saved, twoPhones } from './two-phones';

const phones = twoPhones();
const folder = mkdtempSync(join(tmpdir(), 'camera-'));
afterAll(() => rmSync(folder, { recursive: true }));

const choose = async (page: Page, buffer: Buffer) => {
  await page.goto(`${phones.site.address}#/card`);
  await page.locator('input[type=file]').setInputFiles({ name: 'photo.jpg', mimeType: 'image/jpeg', buffer });
};

describe('a photo of a card', () => {
  const poses = ['rotateY(25deg)', 'rotateX(25deg)', 'rotateZ(25deg)', 'rotateY(-25deg) rotateZ(8deg)'];

  test('blurred, leaning 25°, with 0.4 of the contrast, JPEG quality 50: it is read, whichever way it leans', async () => {
    const { page } = await borrowed(phones.sender.page, phones.site, 'Bramble');
    await page.getByRole('link', { name: 'Share its card' }).click();
    const card = await saved(page, 'Save the picture');
    const studio = await phones.site.browser.newPage({ viewport: { width: 900, height: 1300 } });
    for (const pose of poses)
      for (const [width, blur] of [
        [640, 1.4],
        [420, 0.8],
      ] as const) {
        await choose(phones.receiver.page, await photographed(studio, card, { pose, width, blur }));
        await phones.receiver.page
          .getByRole('heading', { level: 1, name: 'A card for Bramble' })
          .waitFor({ timeout: 30_000 });
        await phones.receiver.page.getByRole('button', { name: 'Not now' }).click();
      }
    await studio.close();
    expect(phones.receiver.wrong).toEqual([]);
  });
});

type Pose = { readonly pose: string; readonly width: number; readonly blur: number };

/** The picture on a table, seen by a camera, as far as a browser's own filters can do it. */
async function photographed(studio: Page, picture: Buffer, { pose, width, blur }: Pose): Promise<Buffer> {
  const address = `data:image/png;base64,${picture.toString('base64')}`;
  await studio.setContent(`
    <body style="margin: 0; height: 1300px; display: grid; place-items: center; background: #8a7a66; filter: contrast(40%)">
      <img src="${address}" style="width: ${width}px; transform: perspective(1200px) ${pose}; filter: blur(${blur}px)">
    </body>`);
  await studio.locator('img').evaluate((image: HTMLImageElement) => image.decode());
  return studio.screenshot({ type: 'jpeg', quality: 50 });
}

describe('the camera', () => {
  const link = readFileSync(new URL('../cards/1/bramble-inches.link', import.meta.url), 'utf8').trim();
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    const leaning = photograph(drawnQr(qrOf(link)), {
      ...{ width: 640, height: 480, share: 0.5, yaw: 0.4, roll: 0.1, blur: 1.4, contrast: 0.4, noise: 0.01 },
      random: seeded(9),
    });
    const film = join(folder, 'film.y4m');
    writeFileSync(film, filmOf(leaning));
    const executablePath = findBrowser();
    if (!executablePath) throw new Error('no-browser');
    const eyes = ['--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream'];
    browser = await chromium.launch({
      executablePath,
      args: ['--no-sandbox', '--disable-gpu', ...eyes, `--use-file-for-fake-video-capture=${film}`],
    });
  });
  afterAll(() => browser.close());

  test('reads a card that is held before it, without the browser’s own detector, and is let go', async () => {
    page = await browser.newPage();
    await page.addInitScript(() => {
      Reflect.deleteProperty(window, 'BarcodeDetector');
      const open = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
      navigator.mediaDevices.getUserMedia = async (wanted) => {
        const stream = await open(wanted);
        Object.assign(window, { seen: stream });
        return stream;
      };
    });
    await page.goto(`${phones.site.address}#/card/scan`);
    await page.getByRole('heading', { level: 1, name: 'A card for Bramble' }).waitFor({ timeout: 60_000 });
    const states = await page.evaluate(() =>
      (window as unknown as { seen: MediaStream }).seen.getTracks().map((track) => track.readyState),
    );
    expect(states).toEqual(['ended']);
  });

  test('says so where there is none', async () => {
    const other = phones.receiver.page;
    await other.goto(`${phones.site.address}#/card/scan`);
    await other.getByText('no camera to use here').waitFor({ timeout: 30_000 });
    await other.getByRole('button', { name: 'Cancel' }).click();
    await other.getByRole('heading', { level: 1, name: 'Bring in a card' }).waitFor();
  });
});

/** One still as a film: YUV4MPEG2, grey. */
function filmOf({ width, height, data }: Pixels): Buffer {
  const luma = Buffer.from(data.filter((_, at) => at % 4 === 0));
  const chroma = Buffer.alloc((width * height) / 2, 128);
  const frame = Buffer.concat([Buffer.from('FRAME\n'), luma, chroma]);
  return Buffer.concat([Buffer.from(`YUV4MPEG2 W${width} H${height} F10:1 Ip A1:1 C420jpeg\n`), frame, frame]);
}
