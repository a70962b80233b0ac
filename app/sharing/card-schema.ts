import {
  array,
  boolean,
  check,
  exactOptional,
  finite,
  type GenericSchema,
  literal,
  maxLength,
  maxValue,
  minLength,
  minValue,
  number,
  object,
  optional,
  picklist,
  pipe,
  record,
  regex,
  string,
  transform,
  union,
  unknown,
} from 'valibot';
import {
  bodyKinds,
  characters,
  cleanLine,
  cleanLines,
  LONGEST_MM,
  NAME_CHARACTERS,
  NOTE_CHARACTERS,
  SHORTEST_MM,
} from '../body';
import { ORDER_WORD_CHARACTERS, ORDERS, READINGS_A_MEASURE } from './limits';
import { isSmallJpeg } from './photo-data';

/**
 * The shape of a card of version 1. Every message is a fault code. Traits, measures and corrections are looked at
 * one by one afterwards, because unknown ones are skipped and listed instead of refused.
 */
export const cardShape = object(
  {
    format: literal('hemling-card', 'not-a-card'),
    version: literal(1, 'unknown-version'),
    toy: object(
      {
        name: text(NAME_CHARACTERS, cleanLine),
        body: picklist(bodyKinds, 'unknown-body'),
        traits: optional(keyed(unknown()), {}),
      },
      missingOr('not-an-object'),
    ),
    unit: picklist(['in', 'cm'], 'unknown-unit'),
    taken: pipe(string('not-text'), regex(/^\d{4}-\d{2}-\d{2}$/u, 'bad-date'), check(isCalendarDate, 'bad-date')),
    note: optional(text(NOTE_CHARACTERS, cleanLines), ''),
    readings: keyed(unknown()),
    corrections: exactOptional(keyed(unknown())),
    orders: exactOptional(pipe(array(orderShape(), 'not-a-list'), maxLength(ORDERS, 'too-many'))),
    photo: exactOptional(pipe(string('not-text'), check(isSmallJpeg, 'bad-photo'))),
  },
  missingOr('not-a-card'),
);

/** The readings of one measure, in mm. */
export const readingsShape = pipe(
  array(
    pipe(
      number('not-a-number'),
      minValue(SHORTEST_MM, 'length-out-of-range'),
      maxValue(LONGEST_MM, 'length-out-of-range'),
    ),
    'not-a-list',
  ),
  maxLength(READINGS_A_MEASURE, 'too-many'),
);

/** A correction learnt from trying on: mm to add to a finished size, so it may be negative. */
export const correctionShape = pipe(
  number('not-a-number'),
  minValue(-LONGEST_MM, 'length-out-of-range'),
  maxValue(LONGEST_MM, 'length-out-of-range'),
);

/** Orders are only looked at for shape: which garments and choices exist is for the drafting module to say. */
function orderShape() {
  const word = pipe(
    string('not-text'),
    minLength(1, 'empty'),
    maxLength(ORDER_WORD_CHARACTERS, 'too-long'),
    check((entry) => cleanLine(entry) === entry, 'bad-text'),
  );
  const amount = pipe(number('not-a-number'), finite('not-a-number'));
  return object(
    {
      garment: word,
      choices: exactOptional(keyed(union([word, boolean(), amount], 'bad-choice'))),
      fit: exactOptional(word),
      cloth: exactOptional(word),
      over: exactOptional(word),
      ownCloth: exactOptional(
        object(
          {
            name: text(NAME_CHARACTERS, cleanLine),
            stretch: amount,
            thickness: amount,
          },
          missingOr('not-an-object'),
        ),
      ),
      allowances: exactOptional(keyed(amount)),
      paper: exactOptional(word),
      date: exactOptional(word),
    },
    missingOr('not-an-object'),
  );
}

function text(limit: number, clean: (typed: string) => string) {
  return pipe(
    string('not-text'),
    maxLength(4 * limit, 'too-long'),
    transform(clean),
    check((cleaned) => characters(cleaned) <= limit, 'too-long'),
  );
}

/** An object with keys of the sender's own; keys that reach for a prototype are dropped by valibot, lists refused. */
function keyed<Entry extends GenericSchema>(entry: Entry) {
  return pipe(
    unknown(),
    check((value) => !Array.isArray(value), 'not-an-object'),
    record(pipe(string(), maxLength(ORDER_WORD_CHARACTERS, 'too-long')), entry, 'not-an-object'),
  );
}

/** Valibot reports an absent key with the object's own message, expecting the key's name in quotes. */
function missingOr(code: string) {
  return (issue: { expected: string | null }) => (issue.expected?.startsWith('"') ? 'missing' : code);
}

/** A day of the proleptic Gregorian calendar from year 1 on, as ISO 8601 writes it. */
function isCalendarDate(day: string): boolean {
  const time = Date.parse(`${day}T00:00:00Z`);
  return Number.isFinite(time) && day >= '0001' && new Date(time).toISOString().slice(0, 10) === day;
}
