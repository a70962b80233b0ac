import * as v from 'valibot';
import { bodyKinds, LONGEST_MM, type Order, SHORTEST_MM, traitValues } from '../body';
import type { Garment, Photo, Place, Reading, Setting, TableName, Toy } from './rows';

/** Limits of what is kept: what a card may carry, in characters (up to two code units each), and room to spare for the rest. */
export const LONGEST_NAME = 80;
export const LONGEST_NOTE = 500;
const LONGEST_WORD = 120;
/** 2 MB: a photo redrawn by the app is a tenth of this. */
const LARGEST_PHOTO = 2_000_000;
/** Year 2200, so that a damaged moment does not stay "newest" unnoticed. */
const LAST_MOMENT = 7_258_118_400_000;

const word = v.pipe(v.string(), v.minLength(1), v.maxLength(LONGEST_WORD));
const moment = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(LAST_MOMENT));
const finite = v.pipe(v.number(), v.finite());
const simple = v.union([v.pipe(v.string(), v.maxLength(LONGEST_NOTE)), finite, v.boolean()]);

const traits = v.object({
  shoulders: v.picklist(traitValues.shoulders),
  neck: v.picklist(traitValues.neck),
  arms: v.picklist(traitValues.arms),
  posture: v.picklist(traitValues.posture),
  legs: v.picklist(traitValues.legs),
  ears: v.picklist(traitValues.ears),
  tail: v.boolean(),
  stuffing: v.picklist(traitValues.stuffing),
});

const order = v.object({
  garment: word,
  choices: v.exactOptional(v.record(word, simple)),
  fit: v.exactOptional(word),
  cloth: v.exactOptional(word),
  allowances: v.exactOptional(v.record(word, finite)),
  paper: v.exactOptional(word),
  date: v.exactOptional(word),
});

/** The shape of a row of each table, as stored; keys it does not name are dropped. */
export const shapes = {
  toys: v.object({
    id: word,
    name: v.pipe(v.string(), v.maxLength(LONGEST_NAME * 2)),
    kind: v.picklist(bodyKinds),
    traits,
    note: v.pipe(v.string(), v.maxLength(LONGEST_NOTE * 2)),
    corrections: v.record(word, finite),
    kept: v.record(word, v.union([v.pipe(v.string(), v.maxLength(LONGEST_NOTE)), finite])),
    createdAt: moment,
    changedAt: moment,
  }),
  readings: v.object({
    id: word,
    toyId: word,
    measureId: word,
    mm: v.pipe(v.number(), v.minValue(SHORTEST_MM), v.maxValue(LONGEST_MM)),
    from: v.picklist(['tape', 'photo']),
    set: moment,
    takenAt: moment,
    removedAt: v.exactOptional(moment),
  }),
  garments: v.object({ id: word, toyId: word, order, createdAt: moment, changedAt: moment }),
  places: v.object({ toyId: word, garmentId: v.nullable(word), step: word, at: moment }),
  settings: v.object({ key: word, value: simple, changedAt: moment }),
  photos: v.object({
    toyId: word,
    type: v.picklist(['image/jpeg', 'image/png', 'image/webp']),
    bytes: v.custom<ArrayBuffer>((value) => value instanceof ArrayBuffer && value.byteLength <= LARGEST_PHOTO),
    changedAt: moment,
  }),
} satisfies Record<TableName, v.GenericSchema>;

export type Rows = { toys: Toy; readings: Reading; garments: Garment; places: Place; settings: Setting; photos: Photo };

/**
 * A row of `table` if `value` is one, else null. Measure and size ids are not looked up: an id this version does not
 * know stays in the store for one that does.
 */
export function readRow<T extends TableName>(table: T, value: unknown): Rows[T] | null {
  const parsed = v.safeParse(shapes[table] as v.GenericSchema<unknown, unknown>, value);
  return parsed.success ? (parsed.output as Rows[T]) : null;
}

/** An order as a plain, checked copy; null when it is none. */
export function readOrder(value: unknown): Order | null {
  const parsed = v.safeParse(order, value);
  return parsed.success ? parsed.output : null;
}
