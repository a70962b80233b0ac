/**
 * How well mistakes are caught: `npm run slips -- [toys.json] [--toys 2000] [--seed 1]`. Without a file, random toys
 * of all body kinds; with one, its cards (a list of cards, or one). Each toy is judged untouched, then with one reading
 * spoiled in each way. `plain` are the slips by a factor of 2 or more, of every kind. Exit 2: the file cannot be read.
 */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { bodyKinds, type Card } from '../../app/body';
import { checkCard } from '../../app/sharing';
import { randomCard, seeded } from '../toys/random';
import { type Count, tally } from './tally';

const text = { type: 'string' } as const;
const { values, positionals } = parseArgs({ options: { toys: text, seed: text }, allowPositionals: true });
const seed = Number(values.seed ?? 1);
const [file] = positionals;

for (const [name, cards] of file ? [[file, cardsOf(file)] as const] : randomToys(Number(values.toys ?? 2000))) {
  const { toys, falseAlarms, byKind } = tally(cards, seed + 1);
  console.log(
    `\n${name}: ${toys} toys, ${falseAlarms.length} flagged untouched (${percent(falseAlarms.length, toys)})`,
  );
  for (const [code, often] of commonest(falseAlarms)) console.log(`    ${often} x ${code}`);
  console.log(`  ${'slip'.padEnd(18)}${'tried'.padStart(8)}${'flagged'.padStart(10)}${'right'.padStart(10)}`);
  for (const [kind, count] of byKind) console.log(line(kind, count));
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

function randomToys(toys: number) {
  const random = seeded(seed);
  return bodyKinds.map((kind) => {
    const cards = Array.from({ length: toys }, (_, n) => randomCard(random, kind, { full: n % 3 === 0 }));
    return [kind, cards] as const;
  });
}

function cardsOf(path: string): readonly Card[] {
  try {
    const read: unknown = JSON.parse(readFileSync(path, 'utf8'));
    return (Array.isArray(read) ? read : [read]).map((each: unknown, n) => {
      const result = checkCard(each);
      if (!result.ok) throw new Error(`toy ${n + 1}: ${result.fault.code} ${result.fault.where}`);
      return result.card;
    });
  } catch (error) {
    console.error(`${path}: ${error instanceof Error ? error.message : String(error)}`);
    process.exit(2);
  }
}
