/**
 * A sheet for each garment, with its pieces for five builds at one scale, what was changed for each and why, and the
 * order of sewing, to look at: `npm run builds -- [--garment ID] [--choices JSON] [--out DIR]`
 * writes a page and a picture a garment into DIR (builds/ if left out).
 */
import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { piecesPage } from '../../app/command/pieces-page';
import { garments } from '../../app/drafting/garments';
import { createSay } from '../../app/words';
import { buildCard, builds } from '../toys/builds';

const PAGE_PX = 1048;
/** What the tallest row may take. */
const ROW_PX = 1000;

const text = { type: 'string' } as const;
const { values } = parseArgs({ options: { garment: text, choices: text, out: text } });
const out = resolve(values.out ?? 'builds');
const all = builds.map((build) => buildCard(build));
const say = await createSay('en');

mkdirSync(out, { recursive: true });
for (const garment of garments.filter((each) => !values.garment || each.id === values.garment)) {
  const cards = all.filter((card) => garment.bodies.includes(card.toy.body));
  const page = join(out, `${garment.id}.html`);
  writeFileSync(page, piecesPage(garment, cards, JSON.parse(values.choices ?? '{}'), say));
  photograph(page, join(out, `${garment.id}.png`), cards.length * ROW_PX);
  console.log(page);
}

function photograph(page: string, picture: string, height: number): void {
  const quiet = ['--headless', '--no-sandbox', '--disable-gpu', '--no-first-run', '--hide-scrollbars'];
  const size = `--window-size=${PAGE_PX},${height}`;
  execFileSync('chromium', [...quiet, size, `--screenshot=${picture}`, `file://${page}`], { stdio: 'ignore' });
}
