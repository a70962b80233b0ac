/**
 * What stands in a field and is not kept yet, written down as it is typed: at once into localStorage, which a closed
 * tab cannot lose, and right after it into the store, which a killed browser cannot lose. Kept as a reading, it is
 * forgotten; what is left over is offered at the next start.
 */
import * as v from 'valibot';
import { parseLength, type Unit } from '../body';
import { read, write } from './connection';
import { historyOf, typedId } from './readings';
import type { Typed } from './rows';
import { findToy } from './toys';

const NOTE = 'hemling-typed ';
/** No length is longer; a text that was pasted by mistake need not come back. */
const LONGEST_TEXT = 60;

const word = v.pipe(v.string(), v.minLength(1), v.maxLength(120));
const shape = v.object({
  id: word,
  toyId: word,
  garmentId: word,
  measureId: word,
  text: v.pipe(v.string(), v.minLength(1), v.maxLength(LONGEST_TEXT)),
  unit: v.picklist(['in', 'cm'] satisfies Unit[]),
  locale: word,
  adding: v.boolean(),
  instead: v.exactOptional(word),
});

const waiting = new Map<string, Typed>();
let writing = false;

/** Writes down what is typed for a toy's measure, in the place of what was there. Never throws, never waits. */
export function noteTyped(typed: Omit<Typed, 'id'>): void {
  if (typed.text.length > LONGEST_TEXT) {
    forgetTyped(typed.toyId, typed.measureId);
    return;
  }
  const row: Typed = { ...typed, id: typedId(typed.toyId, typed.measureId) };
  remember(row);
  waiting.set(row.id, row);
  if (!writing) void writeDown();
}

/** The latest of each field goes to the store, one after the other; a store that is full or gone has localStorage beside it. */
async function writeDown(): Promise<void> {
  writing = true;
  for (const [id, row] of waiting) {
    waiting.delete(id);
    await write(['typed'], undefined, (store) => store.typed.put(row)).catch(() => undefined);
  }
  writing = false;
}

/** It is kept, or was wiped out by the maker. */
export function forgetTyped(toyId: string, measureId: string): void {
  const id = typedId(toyId, measureId);
  waiting.delete(id);
  notes()?.removeItem(NOTE + id);
  write(['typed'], undefined, (store) => store.typed.delete(id)).catch(() => undefined);
}

/** What was typed for a toy's measure and not kept, as far as localStorage knows. */
export function typedFor(toyId: string, measureId: string): Typed | undefined {
  return readTyped(notes()?.getItem(NOTE + typedId(toyId, measureId)) ?? '');
}

/** Everything typed and not kept, from both places; what was kept after all, or whose toy is gone, is forgotten. */
export async function typedLeft(): Promise<Typed[]> {
  const kept = await read((store) => store.typed.toArray()).catch(() => []);
  const all = new Map([...kept, ...remembered()].filter((row) => v.is(shape, row)).map((row) => [row.id, row]));
  const left: Typed[] = [];
  for (const row of all.values()) {
    if (await isOver(row)) forgetTyped(row.toyId, row.measureId);
    else {
      remember(row);
      left.push(row);
    }
  }
  return left;
}

async function isOver({ toyId, measureId, text, unit, locale, adding }: Typed): Promise<boolean> {
  if (!(await findToy(toyId))) return true;
  const parsed = parseLength(text, { unit: unit as Unit, locale });
  const last = (await historyOf(toyId)).filter((reading) => reading.measureId === measureId).at(-1);
  return !adding && parsed.ok && last !== undefined && Math.abs(last.mm - parsed.mm) < 1e-9;
}

function remember(row: Typed): void {
  try {
    notes()?.setItem(NOTE + row.id, JSON.stringify(row));
  } catch {
    // Full: the store has it, a moment later.
  }
}

const remembered = (): Typed[] =>
  Object.keys(notes() ?? {}).flatMap((key) =>
    key.startsWith(NOTE) ? (readTyped(notes()?.getItem(key) ?? '') ?? []) : [],
  );

function readTyped(text: string): Typed | undefined {
  try {
    const parsed = v.safeParse(shape, JSON.parse(text));
    return parsed.success ? parsed.output : undefined;
  } catch {
    return undefined;
  }
}

/** Merely naming it throws where it is forbidden. */
function notes(): Storage | undefined {
  try {
    return globalThis.localStorage;
  } catch {
    return undefined;
  }
}
