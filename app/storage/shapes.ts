import * as v from 'valibot';
import {
  bodyKinds,
  LONGEST_MM,
  NAME_CHARACTERS,
  NOTE_CHARACTERS,
  type Order,
  type OwnCloth,
  SHORTEST_MM,
  traitValues,
  usualTraits,
} from '../body';
import { LAST_MOMENT } from './clock';
import {
  type Garment,
  type Made,
  type Photo,
  type Place,
  players,
  type Reading,
  type Setting,
  type TableName,
  type Toy,
} from './rows';
import { tidyName, tidyNote } from './tidy';

/** In code units: a character has two at most. */
const NAME_UNITS = 2 * NAME_CHARACTERS;
const NOTE_UNITS = 2 * NOTE_CHARACTERS;
const LONGEST_WORD = 120;
const LONGEST_SIMPLE = 500;
const MOST_STEPS = 200;
/** 2 MB: a photo redrawn by the app is a tenth of this. */
const LARGEST_PHOTO = 2_000_000;

const word = v.pipe(v.string(), v.minLength(1), v.maxLength(LONGEST_WORD));
const moment = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(LAST_MOMENT));
const finite = v.pipe(v.number(), v.finite());
const simple = v.union([v.pipe(v.string(), v.maxLength(LONGEST_SIMPLE)), finite, v.boolean()]);

/** A trait that is missing or strange has its usual value: better so than the toy not read. */
const traits = v.object({
  shoulders: v.fallback(v.picklist(traitValues.shoulders), usualTraits.shoulders),
  neck: v.fallback(v.picklist(traitValues.neck), usualTraits.neck),
  arms: v.fallback(v.picklist(traitValues.arms), usualTraits.arms),
  posture: v.fallback(v.picklist(traitValues.posture), usualTraits.posture),
  legs: v.fallback(v.picklist(traitValues.legs), usualTraits.legs),
  ears: v.fallback(v.picklist(traitValues.ears), usualTraits.ears),
  tail: v.fallback(v.boolean(), usualTraits.tail),
  stuffing: v.fallback(v.picklist(traitValues.stuffing), usualTraits.stuffing),
  head: v.fallback(v.picklist(traitValues.head), usualTraits.head),
  limbs: v.fallback(v.picklist(traitValues.limbs), usualTraits.limbs),
  build: v.fallback(v.picklist(traitValues.build), usualTraits.build),
});

/** Names a schema for every key of `Row`, no more and no fewer: a key forgotten here would be lost on the way. */
const shapeOf =
  <Row>() =>
  <Entries extends Record<keyof Row, v.GenericSchema>>(
    entries: Entries & Record<Exclude<keyof Entries, keyof Row>, never>,
  ) =>
    v.object<Entries>(entries);

const ownCloth = shapeOf<OwnCloth>()({
  name: v.pipe(v.string(), v.maxLength(NAME_UNITS), v.transform(tidyName)),
  stretch: finite,
  thickness: finite,
});

const order = shapeOf<Order>()({
  garment: word,
  choices: v.exactOptional(v.record(word, simple)),
  fit: v.exactOptional(word),
  cloth: v.exactOptional(word),
  over: v.exactOptional(word),
  ownCloth: v.exactOptional(ownCloth),
  allowances: v.exactOptional(v.record(word, finite)),
  paper: v.exactOptional(word),
  date: v.exactOptional(word),
});

const made = shapeOf<Made>()({
  at: moment,
  engine: word,
  toyId: word,
  toy: v.pipe(v.string(), v.maxLength(NAME_UNITS), v.transform(tidyName)),
  order,
  measures: v.record(word, finite),
  sizes: v.record(word, finite),
});

/** The shape of a row of each table, as stored; keys it does not name are dropped. */
export const shapes = {
  toys: shapeOf<Toy>()({
    id: word,
    name: v.pipe(v.string(), v.maxLength(NAME_UNITS), v.transform(tidyName)),
    kind: v.picklist(bodyKinds),
    traits,
    note: v.pipe(v.string(), v.maxLength(NOTE_UNITS), v.transform(tidyNote)),
    corrections: v.record(word, finite),
    kept: v.record(
      v.pipe(v.string(), v.minLength(1), v.maxLength(LONGEST_SIMPLE)),
      v.union([v.pipe(v.string(), v.maxLength(LONGEST_SIMPLE)), finite]),
    ),
    unit: v.exactOptional(v.picklist(['in', 'cm'])),
    // What is not understood is taken for the one who needs most care.
    plays: v.exactOptional(v.fallback(v.picklist(players), 'young')),
    createdAt: moment,
    changedAt: moment,
  }),
  readings: shapeOf<Reading>()({
    id: word,
    toyId: word,
    measureId: word,
    mm: v.pipe(v.number(), v.minValue(SHORTEST_MM), v.maxValue(LONGEST_MM)),
    from: v.picklist(['tape', 'photo']),
    set: moment,
    turn: v.exactOptional(moment),
    takenAt: moment,
    removedAt: v.exactOptional(moment),
    changedAt: v.exactOptional(moment),
  }),
  garments: shapeOf<Garment>()({
    id: word,
    toyId: word,
    order,
    createdAt: moment,
    changedAt: moment,
    sewn: v.exactOptional(v.pipe(v.array(word), v.maxLength(MOST_STEPS))),
    made: v.exactOptional(made),
    like: v.exactOptional(made),
    note: v.exactOptional(v.pipe(v.string(), v.maxLength(NOTE_UNITS), v.transform(tidyNote))),
    awayAt: v.exactOptional(moment),
  }),
  places: shapeOf<Place>()({ toyId: word, garmentId: v.nullable(word), step: word, at: moment }),
  settings: shapeOf<Setting>()({ key: word, value: simple, changedAt: moment }),
  photos: shapeOf<Photo>()({
    toyId: word,
    type: v.picklist(['image/jpeg', 'image/png', 'image/webp']),
    bytes: v.custom<ArrayBuffer>((value) => value instanceof ArrayBuffer && value.byteLength <= LARGEST_PHOTO),
    changedAt: moment,
  }),
} satisfies Record<TableName, v.GenericSchema>;

export type Rows = { toys: Toy; readings: Reading; garments: Garment; places: Place; settings: Setting; photos: Photo };

/**
 * A row of `table` if `value` is one, else null, with what earlier versions did not write yet put in. Measure and size
 * ids are not looked up: an id this version does not know stays in the store for one that does.
 */
export function readRow<T extends TableName>(table: T, value: unknown): Rows[T] | null {
  const row = parseRow(table, value);
  return row && table === 'readings' ? ({ ...row, ...orderOf(row as StoredReading) } as Rows[T]) : row;
}

/** The same, but nothing put in: as it is to be written. A record set aside may name a table that is none. */
export function parseRow<T extends TableName>(table: T, value: unknown): Rows[T] | null {
  if (!Object.hasOwn(shapes, table)) return null;
  const parsed = v.safeParse(shapes[table] as v.GenericSchema<unknown, unknown>, value);
  return parsed.success ? (parsed.output as Rows[T]) : null;
}

/** A reading of version 1 has the device's clock alone. */
type StoredReading = Omit<Reading, 'turn' | 'changedAt'> & Partial<Reading>;
export const orderOf = ({ turn, changedAt, takenAt, removedAt }: StoredReading) => ({
  turn: turn ?? takenAt,
  changedAt: changedAt ?? removedAt ?? takenAt,
});

/** An order as a plain, checked copy; null when it is none. */
export function readOrder(value: unknown): Order | null {
  const parsed = v.safeParse(order, value);
  return parsed.success ? parsed.output : null;
}
