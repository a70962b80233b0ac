/**
 * A sheet for each garment, with its pieces for five builds, or beasts, at one scale, what was changed for each and why, and the
 * order of sewing, to look at: `npm run builds -- [--garment ID] [--choices JSON] [--out DIR]`
 * writes a page and a picture a garment into DIR (builds/ if left out).
 */
import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Say } from '../../app/body';
import { EXIT } from '../../app/command/call';
import { command } from '../../app/command/command';
import { piecesPage } from '../../app/command/pieces-page';
import { garments } from '../../app/drafting/garments';
import { beasts } from '../toys/beasts';
import { buildCard, builds } from '../toys/builds';

const PAGE_PX = 1048;
/** What the tallest row may take. */
const ROW_PX = 1000;

await command(
  {
    name: 'builds',
    usage: ['[--garment ID] [--choices JSON] [--out DIR]'],
    options: { garment: 'ID', choices: 'JSON', out: 'DIR' },
    words: [0, 0],
    exits: [EXIT.done, EXIT.unreadable, EXIT.ours],
  },
  ({ values: { garment, choices = '{}', out = 'builds' } }, say) => {
    draw(garment, choices, resolve(out), say);
    return EXIT.done;
  },
);

function draw(only: string | undefined, choices: string, folder: string, say: Say): void {
  const all = [...builds.map((build) => buildCard(build)), ...beasts];
  mkdirSync(folder, { recursive: true });
  for (const garment of garments.filter((each) => !only || each.id === only)) {
    const cards = all.filter((card) => garment.bodies.includes(card.toy.body));
    const page = join(folder, `${garment.id}.html`);
    writeFileSync(page, piecesPage(garment, cards, JSON.parse(choices), say));
    photograph(page, join(folder, `${garment.id}.png`), cards.length * ROW_PX);
    console.log(page);
  }
}

function photograph(page: string, picture: string, height: number): void {
  const quiet = ['--headless', '--no-sandbox', '--disable-gpu', '--no-first-run', '--hide-scrollbars'];
  const size = `--window-size=${PAGE_PX},${height}`;
  execFileSync('chromium', [...quiet, size, `--screenshot=${picture}`, `file://${page}`], { stdio: 'ignore' });
}
