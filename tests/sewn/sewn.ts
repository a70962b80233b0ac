/**
 * Sews garments on simulated bodies and tells how they sit: `npm run sewn -- --garment tee,tank [--toy bear] [--choices JSON]
 * [--cloth ID] [--fit ID] [--cards FILE] [--fine 1.5] [--out DIR]`. Toys are the demo toys and those of `tests/toys/`, all
 * that a garment suits if none is named; `--cards` adds those of a file, a card or a list of them.
 */
import { type Card, clothOf, type Order } from '../../app/body';
import { type Asked, EXIT, type Exit } from '../../app/command/call';
import { command } from '../../app/command/command';
import { readFile } from '../../app/command/read-file';
import { complain, print } from '../../app/command/terminal';
import { parsed, unreadable } from '../../app/command/unreadable';
import { writeAll } from '../../app/command/write-all';
import { draft, fullOrder } from '../../app/drafting/draft';
import { bodyFrom, demoCards } from '../../app/measuring';
import { checkCard } from '../../app/sharing';
import { beasts } from '../toys/beasts';
import { buildCard, builds } from '../toys/builds';
import { figureOf } from './figure-of';
import { picture } from './picture';
import { report } from './report';
import { strained } from './strain';
import { worn } from './worn';

/** Of what a knit gives it is worn at no more than half (common practice, no source). */
const WORN_STRETCH = 0.5;

/** The most a file of cards may hold, bytes. */
const LARGEST_BYTES = 4 * 1024 * 1024;

await command(
  {
    name: 'sewn',
    usage: [
      '--garment ID,ID [--toy NAME,NAME] [--choices JSON] [--cloth ID] [--fit ID] [--cards FILE] [--fine N] [--out DIR]',
    ],
    options: {
      garment: 'ID,ID',
      toy: 'NAME,NAME',
      choices: 'JSON',
      cloth: 'ID',
      fit: 'ID',
      cards: 'FILE',
      fine: 'N',
      out: 'DIR',
    },
    words: [0, 0],
    exits: [EXIT.done, EXIT.refused, EXIT.unreadable, EXIT.ours],
  },
  ({ values }) => {
    const cards = values.cards === undefined ? [] : cardsIn(values.cards);
    const choices = parsed(values.choices ?? '{}');
    if (!cards) return unreadable('--cards', 'unreadable');
    if (typeof choices !== 'object' || choices === null) return unreadable('--choices', 'not-json');
    if (values.garment === undefined) return unreadable('--garment', 'missing');
    const names = values.toy?.toLowerCase().split(',');
    const toys = [...cards, ...demoCards, ...builds.map((build) => buildCard(build)), ...beasts];
    const wanted = names ? toys.filter(({ toy }) => names.includes(toy.name.toLowerCase())) : toys;
    if (wanted.length === 0) return unreadable('--toy', 'unknown-toy');
    const exits = values.garment
      .split(',')
      .flatMap((garment) => wanted.map((card) => sew(card, { garment, choices: { ...choices } }, values)));
    return exits.find((exit) => exit !== EXIT.done) ?? EXIT.done;
  },
);

/** One garment on one toy, if it suits it. */
function sew(card: Card, { garment, choices }: Order, { cloth, fit, fine, out }: Asked['values']): Exit {
  const order = { garment, ...(choices && { choices }), ...(cloth && { cloth }), ...(fit && { fit }) };
  const full = fullOrder(order, card.taken);
  if (!full.ok) return unreadable(full.fault.where, full.fault.code);
  if (!full.garment.bodies.includes(card.toy.body)) return EXIT.done;
  const body = bodyFrom(card);
  const outcome = draft(body, full.order, full.garment, card.toy.name);
  print(`${garment} on ${card.toy.name}`);
  if (!outcome.ok) {
    complain(`refused ${outcome.flags.map(({ code }) => code).join(',')}`);
    return EXIT.refused;
  }
  const { thickness, stretch } = clothOf(full.order) ?? { thickness: 0, stretch: 0 };
  const started = process.cpuUsage();
  const sat = worn(outcome.draft, figureOf(body), thickness, Number(fine ?? 1));
  for (const line of report(sat, body, stretch * WORN_STRETCH)) print(`  ${line}`);
  print(`  ${(process.cpuUsage(started).user / 1e6).toFixed(1)} s`);
  if (out !== undefined)
    writeAll(out, { [`${garment}-${card.toy.name}.png`]: picture(strained(sat), sat.figure.solid) });
  return EXIT.done;
}

function cardsIn(path: string): Card[] | null {
  const file = readFile(path, LARGEST_BYTES);
  const json = file.ok ? parsed(file.text) : undefined;
  const cards = (Array.isArray(json) ? json : [json]).map(checkCard);
  return cards.every((each) => each.ok) ? cards.flatMap((each) => (each.ok ? [each.card] : [])) : null;
}
