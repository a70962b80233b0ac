import type { Card, Mm } from '../../body';
import { type BitReader, type BitWriter, Damaged, readBits, writeBits } from './bits';
import { frozenMeasures, OTHER_TYPICAL } from './frozen-measures';
import { coarsestExactGrid, type Grid, grids } from './grids';
import { bitLength, readSigned, readWhole, signedWidth, writeSigned, writeWhole } from './whole-numbers';

/** How a card's readings are written: the toy's size, how far measures stray from it, how far readings from the first. */
type Manner = { readonly grid: Grid; readonly size: number; readonly closeness: number; readonly repeat: number };

/**
 * The readings. A header says the grid, and the size, closeness and repeat that make this card's code shortest; then
 * for each measure of the frozen list the count of its readings, the first as its distance from what the size
 * foretells, the others as their distance from the first. All in steps of the grid.
 */
export function writeReadings(writer: BitWriter, readings: Card['readings']): void {
  const rows = frozenMeasures.map(([id]) => lookUp(readings, id));
  const covered = rows.slice(0, 1 + rows.findLastIndex((row) => row.length > 0));
  const grid = coarsestExactGrid(covered.flat());
  const steps = covered.map((row) => row.map((length) => Math.round(length / grid.step)));
  const manner = shortestManner(grid, steps);
  writeBits(writer, grids.indexOf(grid), 3);
  writeWhole(writer, covered.length, 4);
  writeBits(writer, manner.size, 7);
  writeBits(writer, manner.closeness, 3);
  writeBits(writer, manner.repeat, 3);
  steps.forEach(([first, ...others], index) => {
    writeBits(writer, first === undefined ? 0 : 1, 1);
    if (first === undefined) return;
    const guess = foretold(index, manner);
    writeSigned(writer, first - guess, strayOrder(guess, manner.closeness));
    for (let count = 0; count < MOST_READINGS - 1; count++) {
      const other = others[count];
      writeBits(writer, other === undefined ? 0 : 1, 1);
      if (other === undefined) return;
      writeSigned(writer, other - first, manner.repeat);
    }
  });
}

/** The same as plain values, still to be checked. Measures beyond the list are named by their number. */
export function readReadings(reader: BitReader): Record<string, Mm[]> {
  const grid = grids[readBits(reader, 3)];
  if (!grid) throw new Damaged();
  const covered = readWhole(reader, 4);
  const manner = { grid, size: readBits(reader, 7), closeness: readBits(reader, 3), repeat: readBits(reader, 3) };
  const readings: Record<string, Mm[]> = {};
  for (let index = 0; index < covered; index++) {
    if (readBits(reader, 1) === 0) continue;
    const guess = foretold(index, manner);
    const first = guess + readSigned(reader, strayOrder(guess, manner.closeness));
    const steps = [first];
    while (steps.length < MOST_READINGS && readBits(reader, 1) === 1)
      steps.push(first + readSigned(reader, manner.repeat));
    readings[frozenMeasures[index]?.[0] ?? `measure-${index}`] = steps.map((step) =>
      exact((step * grid.unit) / grid.parts),
    );
  }
  return readings;
}

const lookUp = (readings: Readonly<Record<string, readonly Mm[] | undefined>>, id: string) => readings[id] ?? [];

/**
 * A measure as the toy's size foretells it, in steps. The size is a small floating number of 3 + 4 bits, from 1/16 to
 * 15.5 times the typical toy. Only products, quotients and rounding: every engine gets the same.
 */
function foretold(index: number, { grid, size }: Pick<Manner, 'grid' | 'size'>): number {
  const scale = ((16 + (size & 15)) << (size >> 4)) / 256;
  return Math.round(((frozenMeasures[index]?.[1] ?? OTHER_TYPICAL) * scale * grid.parts) / grid.unit);
}

/** Long measures stray further than short ones: the order follows the length foretold. */
const strayOrder = (guess: number, closeness: number) => Math.max(0, bitLength(guess) - closeness);

/** Tries all of them: a card is written once, and read wherever. */
function shortestManner(grid: Grid, steps: readonly (readonly number[])[]): Manner {
  const firsts = steps.flatMap(([first], index) => (first === undefined ? [] : [{ first, index }]));
  const repeats = steps.flatMap(([first = 0, ...others]) => others.map((other) => other - first));
  const repeat = least(8, (order) => repeats.reduce((sum, stray) => sum + signedWidth(stray, order), 0));
  const strays = Array.from({ length: SIZES }, (_, size) =>
    firsts.map(({ first, index }) => {
      const guess = foretold(index, { grid, size });
      return { guess, stray: first - guess };
    }),
  );
  const best = least(SIZES * 8, (both) =>
    (strays[both >> 3] ?? []).reduce(
      (sum, { guess, stray }) => sum + signedWidth(stray, strayOrder(guess, both & 7)),
      0,
    ),
  );
  return { grid, size: best >> 3, closeness: best & 7, repeat };
}

function least(count: number, cost: (candidate: number) => number): number {
  const costs = Array.from({ length: count }, (_, candidate) => cost(candidate));
  return costs.indexOf(Math.min(...costs));
}

/** All grids lie on whole nanometres: without the last bits of arithmetic, a length is the number that was read off. */
const exact = (length: Mm): Mm => Math.round(length * 1e6) / 1e6;

const SIZES = 128;
/** Readings of one measure a code can hold; the fifth needs no mark that no sixth follows. */
const MOST_READINGS = 5;
