/**
 * How well mistakes are caught: `npm run slips -- [toys.json] [--toys 2000] [--seed 1]`. Without a file, random toys
 * of all body kinds; with one, its cards (a list of cards, or one). Each toy is judged untouched, then with one reading
 * spoiled in each way. `plain` are the slips by a factor of 2 or more, of every kind. Exit 2: the file cannot be read.
 */
import { bodyKinds, type Card } from '../../app/body';
import { EXIT, type Exit } from '../../app/command/call';
import { command } from '../../app/command/command';
import { readFile } from '../../app/command/read-file';
import { complain } from '../../app/command/terminal';
import { checkCard } from '../../app/sharing';
import { randomCard, seeded } from '../toys/random';
import { type Count, tally } from './tally';

/** A file of a few thousand toys. */
const LARGEST_BYTES = 16 * 1024 * 1024;

await command(
  {
    name: 'slips',
    usage: ['[TOYS.json] [--toys N] [--seed N]'],
    options: { toys: 'N', seed: 'N' },
    words: [0, 1],
    exits: [EXIT.done, EXIT.unreadable, EXIT.ours],
  },
  ({ words: [file], values: { toys = '2000', seed = '1' } }) => count(file, Number(toys), Number(seed)),
);

function count(file: string | undefined, toys: number, seed: number): Exit {
  const given = file === undefined ? null : cardsOf(file);
  if (typeof given === 'string') {
    complain(`${file}: ${given}`);
    return EXIT.unreadable;
  }
  for (const [name, cards] of given ? [[file, given] as const] : randomToys(toys, seed)) {
    const { toys: judged, falseAlarms, byKind } = tally(cards, seed + 1);
    console.log(
      `\n${name}: ${judged} toys, ${falseAlarms.length} flagged untouched (${percent(falseAlarms.length, judged)})`,
    );
    for (const [code, often] of commonest(falseAlarms)) console.log(`    ${often} x ${code}`);
    console.log(`  ${'slip'.padEnd(18)}${'tried'.padStart(8)}${'flagged'.padStart(10)}${'right'.padStart(10)}`);
    for (const [kind, each] of byKind) console.log(line(kind, each));
  }
  return EXIT.done;
}

function line(kind: string, { tried, flagged, right }: Count): string {
  const shares = [percent(flagged, tried), percent(right, flagged)].map((share) => share.padStart(10));
  return `  ${kind.padEnd(18)}${String(tried).padStart(8)}${shares.join('')}`;
}

function percent(part: number, whole: number): string {
  return whole === 0 ? '-' : `${((100 * part) / whole).toFixed(1)} %`;
}

function commonest(codes: readonly string[]): readonly (readonly [string, number])[] {
  const often = new Map<string, number>();
  for (const code of codes) often.set(code, (often.get(code) ?? 0) + 1);
  return [...often].sort((a, b) => b[1] - a[1]).slice(0, 5);
}

function randomToys(toys: number, seed: number) {
  const random = seeded(seed);
  return bodyKinds.map((kind) => {
    const cards = Array.from({ length: toys }, (_, n) => randomCard(random, kind, { full: n % 3 === 0 }));
    return [kind, cards] as const;
  });
}

/** The cards of a file, or what is wrong with it. */
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
