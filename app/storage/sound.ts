import * as v from 'valibot';
import { LONGEST_MM } from '../body';
import { LAST_MOMENT } from './clock';
import type { TableName } from './rows';
import { readRow } from './shapes';

const LONGEST = 1_000;
/** Ten times the longest length today: no toy is larger. */
const LONGEST_EVER_MM = 10 * LONGEST_MM;
const word = v.pipe(v.string(), v.minLength(1), v.maxLength(LONGEST));
const moment = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(LAST_MOMENT));
const text = v.pipe(v.string(), v.maxLength(LONGEST));

/** What any version of Hemling writes into a row of each table, whatever else it may come to mean. */
const bones: { readonly [T in TableName]: v.GenericSchema } = {
  toys: v.object({ id: word, name: text, kind: word, createdAt: moment, changedAt: moment }),
  readings: v.object({
    id: word,
    toyId: word,
    measureId: word,
    mm: v.pipe(v.number(), v.finite(), v.gtValue(0), v.maxValue(LONGEST_EVER_MM)),
    from: word,
    set: moment,
    turn: v.exactOptional(moment),
    takenAt: moment,
    changedAt: v.exactOptional(moment),
  }),
  garments: v.object({
    id: word,
    toyId: word,
    order: v.object({ garment: word }),
    createdAt: moment,
    changedAt: moment,
  }),
  places: v.object({ toyId: word, garmentId: v.nullable(word), step: word, at: moment }),
  settings: v.object({ key: word, value: v.unknown(), changedAt: moment }),
  photos: v.object({
    toyId: word,
    type: v.pipe(v.string(), v.regex(/^image\/[\w.+-]{1,40}$/)),
    bytes: v.instance(ArrayBuffer),
    changedAt: moment,
  }),
};

/**
 * Whether `value` is whole and yet says something this build does not understand: a body of a new kind, a number taken
 * in a new way. A newer build wrote it. It stays where it is, for a build that does.
 */
export const isNewer = (table: TableName, value: unknown): boolean =>
  readRow(table, value) === null && hasBones(table, value);

/** Whether `value` is a row of `table`, for this build or for a newer one. */
export const isSound = (table: TableName, value: unknown): boolean =>
  readRow(table, value) !== null || hasBones(table, value);

const hasBones = (table: TableName, value: unknown) => Object.hasOwn(bones, table) && v.is(bones[table], value);
