/**
 * The measured cases of a dressmaker, on five builds, as numbers: `npm run cases [-- --only hoods]`. Nothing is judged here; what must
 * hold is held by the tests. Run it before and after a change to the drafting and read the two side by side.
 */
import type { Card } from '../app/body';
import { EXIT } from '../app/command/call';
import { command } from '../app/command/command';
import { idleLooks, idleValues, upright } from './measured/changes';
import { hoodRows, hoods } from './measured/hoods';
import { made } from './measured/made';
import { boundEdges, collarShapes, collars } from './measured/necks';
import { type Rows, table } from './measured/rows';
import { fixedSizes, guessedHead, listed, rawEnds, stepOrder, straps, turning } from './measured/sewing-room';
import { sleeves, widths } from './measured/trunk';
import { buildCard, builds } from './toys/builds';
import { handDrafted } from './toys/hand-drafted';

const cards = builds.map((build) => buildCard(build));

const cases: Readonly<Record<string, (card: Card) => Rows>> = {
  bound: boundEdges,
  hoods,
  widths,
  sleeves,
  straps,
  turning,
  sizes: fixedSizes,
  collars,
  'collar shapes': collarShapes,
  'raw ends': rawEnds,
  'order of sewing': stepOrder,
  notions: listed,
  'head guessed': guessedHead,
};

await command(
  {
    name: 'cases',
    usage: ['[--only CASES]'],
    options: { only: 'CASES' },
    words: [0, 0],
    exits: [EXIT.done, EXIT.unreadable, EXIT.ours],
  },
  ({ values }) => {
    tell(values.only);
    return EXIT.done;
  },
);

function tell(only: string | undefined): void {
  for (const [name, rows] of Object.entries(cases)) {
    if (only && only !== name) continue;
    console.log(
      `${table(
        name,
        cards.map((card) => [card.toy.name, rows(card)] as const),
      )}\n`,
    );
  }
  if (!only || only === 'hoods')
    console.log(
      `${table('hood, hand-drafted card', [['hand', hoodRows('top', handDrafted, made(handDrafted, 'hooded-top'))]])}\n`,
    );
  if (!only || only === 'idle')
    for (const garment of upright)
      console.log(
        `${garment.id}: cut by ${garment.looks.join(', ') || 'no looks'}, idle among them as it comes: ${idleLooks(cards, garment).join(', ') || 'none'}; choice values that change nothing: ${idleValues(cards, garment).join(', ') || 'none'}`,
      );
}
