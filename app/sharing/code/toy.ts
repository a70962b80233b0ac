import type { Card } from '../../body';
import { type BitReader, type BitWriter, readBits, writeBits } from './bits';
import { frozenBodies, frozenTraits, frozenUnits } from './frozen-traits';
import { readSigned, writeSigned } from './whole-numbers';
import { readText, writeText } from './words';

/** The fields before the readings: kind of body, unit, day, traits, name. The table in `encode.ts` has their bits. */
export function writeToy(writer: BitWriter, card: Card): void {
  writeBits(writer, frozenBodies.indexOf(card.toy.body), 3);
  writeBits(writer, frozenUnits.indexOf(card.unit), 2);
  writeSigned(writer, Math.round(Date.parse(card.taken) / MS_A_DAY) - FIRST_DAY, 9);
  const traits: Readonly<Record<string, string | boolean>> = card.toy.traits;
  const numbers = frozenTraits.map(([trait, values]) => 1 + values.indexOf(traits[trait] ?? ''));
  const said = numbers.slice(0, 1 + numbers.findLastIndex((number) => number > 0));
  writeBits(writer, said.length, 4);
  for (const number of said) writeBits(writer, number, 3);
  writeText(writer, card.toy.name);
}

/** The same as plain values, still to be checked: numbers this app does not know come out as names nobody knows. */
export function readToy(reader: BitReader) {
  const body = readBits(reader, 3);
  const unit = readBits(reader, 2);
  const day = FIRST_DAY + readSigned(reader, 9);
  const traits = Array.from({ length: readBits(reader, 4) }, (_, index) => readTrait(index, readBits(reader, 3)));
  const name = readText(reader);
  const toy = { name, body: frozenBodies[body] ?? `body-${body}`, traits: Object.fromEntries(traits.flat()) };
  return { toy, unit: frozenUnits[unit] ?? `unit-${unit}`, taken: isoDay(day) };
}

function readTrait(index: number, number: number): [string, string | boolean][] {
  if (number === 0) return [];
  const [trait, values] = frozenTraits[index] ?? [`trait-${index}`, []];
  return [[trait, values[number - 1] ?? `value-${number}`]];
}

/** Empty for a day outside years 1 to 9999, which no card can have. */
function isoDay(day: number): string {
  const date = new Date(day * MS_A_DAY);
  return Number.isNaN(date.getTime()) ? '' : date.toISOString().slice(0, -14);
}

const MS_A_DAY = 86_400_000;
/** Days are counted from 2026-01-01, before which no card was made. */
const FIRST_DAY = Date.parse('2026-01-01') / MS_A_DAY;
