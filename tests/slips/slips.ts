/**
 * How well mistakes are caught: `npm run slips -- [toys.json] [--toys 500] [--seed 1] [--leave-one-out]`. Without a file,
 * random toys: uprights by build, with all readings, with some, and with a skirt's three numbers alone; four-legged and
 * round ones. With a file, its cards (a list of cards, or one). Each toy is judged untouched, then with one reading
 * spoiled in each way. `plain` are the slips by a factor of 2 or more, of every kind; `right`: the first flag names the
 * spoiled measure; `offers right`: of corrections offered, those that were meant. With `--leave-one-out`, how well each
 * reading is guessed from the toy's others instead. Exit 2: the file cannot be read.
 */
import type { Card, MeasureId } from '../../app/body';
import { EXIT, type Exit } from '../../app/command/call';
import { command } from '../../app/command/command';
import { readFile } from '../../app/command/read-file';
import { complain } from '../../app/command/terminal';
import { checkCard } from '../../app/sharing';
import { randomCard, seeded } from '../toys/random';
import { uprightBuilds } from '../toys/upright-builds';
import { leaveOneOut } from './leave-one-out';
import { type Count, tally } from './tally';

/** A file of a few thousand toys. */
const LARGEST_BYTES = 16 * 1024 * 1024;

await command(
  {
    name: 'slips',
    usage: ['[TOYS.json] [--toys N] [--seed N] [--leave-one-out]'],
    options: { toys: 'N', seed: 'N', 'leave-one-out': null },
    words: [0, 1],
    exits: [EXIT.done, EXIT.unreadable, EXIT.ours],
  },
  ({ words: [file], values, on }) =>
    count(file, { toys: Number(values.toys ?? 500), seed: Number(values.seed ?? 1), guess: on('leave-one-out') }),
);

type Asked = { readonly toys: number; readonly seed: number; readonly guess: boolean };

function count(file: string | undefined, { toys, seed, guess }: Asked): Exit {
  const given = file === undefined ? null : cardsOf(file);
  if (typeof given === 'string') {
    complain(`${file}: ${given}`);
    return EXIT.unreadable;
  }
  for (const [name, cards] of given ? [[String(file), given] as const] : randomToys(toys, seed))
    if (guess) tellGuesses(name, cards);
    else tellSlips(name, cards, seed);
  return EXIT.done;
}

function tellSlips(name: string, cards: readonly Card[], seed: number) {
  const { toys, falseAlarms, byKind } = tally(cards, seed + 1);
  console.log(
    `\n${name}: ${toys} toys, ${falseAlarms.length} flagged untouched (${percent(falseAlarms.length, toys)})`,
  );
  for (const [code, often] of commonest(falseAlarms)) console.log(`    ${often} x ${code}`);
  console.log(columns('slip', ['tried', 'flagged', 'right', 'offered', 'offers right', 'more doubts']));
  for (const [kind, count] of byKind) console.log(line(kind, count));
}

function tellGuesses(name: string, cards: readonly Card[]) {
  const all = leaveOneOut(cards);
  console.log(`\n${name}: each reading guessed from the toy's others`);
  console.log(columns('measure', ['toys', 'within', 'bias', 'give']));
  for (const { measure, toys, within, bias, give } of all)
    console.log(columns(measure, [String(toys), percent(within, toys), percent(bias, 1), percent(give, 1)]));
  const [within, toys] = [all.reduce((sum, one) => sum + one.within, 0), all.reduce((sum, one) => sum + one.toys, 0)];
  console.log(columns('all', [String(toys), percent(within, toys)]));
}

function columns(name: string, cells: readonly string[]): string {
  return `  ${name.padEnd(18)}${cells.map((cell) => cell.padStart(13)).join('')}`;
}

function line(kind: string, { tried, flagged, right, offered, offeredRight, more }: Count): string {
  return columns(kind, [
    String(tried),
    percent(flagged, tried),
    percent(right, flagged),
    percent(offered, flagged),
    percent(offeredRight, offered),
    percent(more, flagged),
  ]);
}

function percent(part: number, whole: number): string {
  return whole === 0 ? '-' : `${((100 * part) / whole).toFixed(1)} %`;
}

function commonest(codes: readonly string[]): readonly (readonly [string, number])[] {
  const often = new Map<string, number>();
  for (const code of codes) often.set(code, (often.get(code) ?? 0) + 1);
  return [...often].sort((a, b) => b[1] - a[1]).slice(0, 5);
}

function randomToys(toys: number, seed: number): readonly (readonly [string, readonly Card[]])[] {
  const random = seeded(seed);
  const many = (make: () => Card) => Array.from({ length: toys }, make);
  return [
    ...uprightBuilds.flatMap((build) => [
      [`${build}, full cards`, many(() => randomCard(random, 'upright', { full: true, build }))] as const,
      [`${build}, some readings`, many(() => randomCard(random, 'upright', { build }))] as const,
      [
        `${build}, a skirt's numbers`,
        many(() => skirtCard(randomCard(random, 'upright', { full: true, build }))),
      ] as const,
    ]),
    ...(['four-legged', 'round'] as const).flatMap((kind) => [
      [`${kind}, full cards`, many(() => randomCard(random, kind, { full: true }))] as const,
      [`${kind}, some readings`, many(() => randomCard(random, kind))] as const,
    ]),
  ];
}

/** What a skirt is made from. */
function skirtCard(card: Card): Card {
  const needed: readonly MeasureId[] = ['waist-girth', 'hip-girth', 'waist-to-hem'];
  return { ...card, readings: Object.fromEntries(needed.map((id) => [id, card.readings[id]])) };
}

function cardsOf(path: string): readonly Card[] | string {
  const file = readFile(path, LARGEST_BYTES);
  if (!file.ok) return file.code;
  const cards: Card[] = [];
  for (const [n, each] of [parsed(file.text)].flat().entries()) {
    const result = checkCard(each);
    if (!result.ok) return `toy ${n + 1}: ${result.fault.code} ${result.fault.where}`;
    cards.push(result.card);
  }
  return cards;
}

/** What is not JSON is no card either. */
function parsed(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return null;
  }
}
