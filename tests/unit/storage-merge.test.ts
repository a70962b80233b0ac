import { expect, test } from 'vitest';
import { newerRows } from '../../app/storage/backup/merge';

/** A reading as builds before the order of writing kept it: only when it was taken, and when it was taken out. */
const reading = { id: 'a', toyId: 't', measureId: 'neck-girth', mm: 300, from: 'tape', set: 1, takenAt: 1 } as const;
const removed = { ...reading, removedAt: 5 };
type Row = Parameters<typeof newerRows<'readings'>>[1][number];
const coming = (here: object, there: object) => newerRows('readings', [here as Row], [there as Row]);

test('of a reading and the same one taken out, the taking out is later, on whichever side it is', () => {
  expect(coming(removed, { ...reading, mm: 301 })).toEqual([]);
  expect(coming(reading, removed)).toEqual([removed]);
});
