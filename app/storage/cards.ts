import { type Card, type MeasureId, traitValues, type Unit } from '../body';
import { nextMoment, wallClock } from './clock';
import { write } from './connection';
import { StoreError } from './errors';
import { freeName } from './free-name';
import { garmentsOf } from './garments';
import { newId } from './ids';
import { fromDataAddress, isPicture } from './pictures';
import { countReadings, readingsOf } from './readings';
import type { Garment, Photo, Reading, Toy } from './rows';
import { readOrder, readRow } from './shapes';
import { findToy, newToy, nextToyMoment } from './toys';

/** The card of a toy: the readings that count, its corrections and its garments; the photo is the caller's to add. */
export async function cardOf(toyId: string, unit: Unit): Promise<Card> {
  const toy = await findToy(toyId);
  if (!toy) throw new StoreError('store-gone');
  const sets = Object.entries(await readingsOf(toyId));
  const garments = await garmentsOf(toyId);
  const moments = sets.flatMap(([, set]) => set.map((reading) => reading.takenAt));
  return {
    format: 'hemling-card',
    version: 1,
    toy: { name: toy.name, body: toy.kind, traits: toy.traits },
    unit,
    taken: dayOf(moments.length > 0 ? Math.max(...moments) : toy.createdAt),
    note: toy.note,
    readings: Object.fromEntries(sets.map(([id, set]) => [id, set.map((reading) => reading.mm)])),
    ...(Object.keys(toy.corrections).length > 0 && { corrections: toy.corrections }),
    ...(garments.length > 0 && { orders: garments.map((garment) => garment.order) }),
  };
}

/** Keeps a card as a toy of its own, never over another; a name already taken gets a number: "Bramble 2". */
export async function addCard(card: Card): Promise<Toy> {
  const traits = Object.fromEntries(Object.keys(traitValues).flatMap((id) => traitOf(card, id)));
  const { name, body: kind } = card.toy;
  const toy = newToy({
    name,
    kind,
    traits: traits as Toy['traits'],
    note: card.note,
    corrections: card.corrections ?? {},
  });
  const readings = Object.entries(card.readings).flatMap(([id, lengths]) =>
    readingsFrom(toy.id, id as MeasureId, lengths, noonOf(card.taken)),
  );
  const garments = (card.orders ?? []).flatMap((order) => garmentFrom(toy.id, order));
  const photo = card.photo === undefined ? null : photoFrom(toy.id, card.photo);
  return write(['toys', 'readings', 'garments', 'photos', 'settings', 'facts'], card, async (store) => {
    const taken = new Set(await store.toys.where('name').startsWith(toy.name).keys());
    const named = { ...toy, name: freeName(toy.name, taken), changedAt: await nextToyMoment(store) };
    await store.toys.put(named);
    await countReadings(store, readings.length);
    await store.readings.bulkPut(readings);
    await store.garments.bulkPut(garments);
    if (photo) await store.photos.put(photo);
    return named;
  });
}

const traitOf = (card: Card, id: string) => {
  const value = Object.entries(card.toy.traits).find(([key]) => key === id)?.[1];
  return value === undefined ? [] : [[id, value] as const];
};

/** Taken on the card's day, in the order the card gives them. */
function readingsFrom(toyId: string, measureId: MeasureId, lengths: readonly number[], noon: number): Reading[] {
  const set = wallClock();
  return lengths.map((mm, place) => {
    const turn = nextMoment(set + place - 1);
    const takenAt = noon + place;
    const row = { id: newId(), toyId, measureId, mm, from: 'tape' as const, set, turn, takenAt, changedAt: turn };
    if (!readRow('readings', row)) throw new StoreError('store-bad-value', row);
    return row;
  });
}

function garmentFrom(toyId: string, given: unknown): Garment[] {
  const order = readOrder(given);
  const at = wallClock();
  return order ? [{ id: newId(), toyId, order, createdAt: at, changedAt: at }] : [];
}

/** A photo out of a data address; null when it is no picture. */
function photoFrom(toyId: string, address: string): Photo | null {
  const row = readRow('photos', { toyId, ...fromDataAddress(address), changedAt: wallClock() });
  return row && isPicture(row) ? row : null;
}

/** The middle of a calendar day where the maker is; now for a day that no clock had. */
function noonOf(day: string): number {
  const noon = Date.parse(`${day}T12:00:00`);
  return noon > 0 ? noon : wallClock();
}

/** The calendar day of a moment where the maker is, ISO 8601. */
function dayOf(moment: number): string {
  const at = new Date(moment);
  const two = (part: number) => String(part).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}
