// `npm run icons`: the PNG icons some systems ask for, drawn from assets/icon.svg by the browser.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { findBrowser, ROOT } from './setup.mjs';

const PAPER = '#f5efe3';
/** A maskable icon may be cut to a round of 80 % of its width. */
const ICONS = [
  { name: 'icon-192.png', size: 192, share: 1, ground: 'transparent' },
  { name: 'icon-512.png', size: 512, share: 1, ground: 'transparent' },
  { name: 'icon-maskable.png', size: 512, share: 0.8, ground: PAPER },
];

const picture = readFileSync(join(ROOT, 'assets/icon.svg'), 'utf8');
const browser = await chromium.launch({ executablePath: findBrowser() ?? '', args: ['--no-sandbox', '--disable-gpu'] });
for (const { name, size, share, ground } of ICONS) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(
    `<style>body{margin:0;height:100vh;display:grid;place-items:center;background:${ground}}svg{width:${size * share}px;height:${size * share}px}</style>${picture}`,
  );
  await page.screenshot({ path: join(ROOT, 'assets', name), omitBackground: true });
}
await browser.close();
