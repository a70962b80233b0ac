import 'fake-indexeddb/auto';
import { afterEach, expect, test } from 'vitest';
import type { Card } from '../../app/body';
import { decodeCode, encodeCard } from '../../app/sharing';
import { toBase64Url } from '../../app/sharing/code/base64url';
import { type BitWriter, bytesOf, writeBits } from '../../app/sharing/code/bits';
import { checksum } from '../../app/sharing/code/checksum';
import { writeReadings } from '../../app/sharing/code/readings';
import { writeToy } from '../../app/sharing/code/toy';
import { writeValue } from '../../app/sharing/code/values';
import * as store from '../../app/storage';
import { hugeClaims as huge } from '../photos/claims';

const address = ({ type, bytes }: { type: string; bytes: Uint8Array }) =>
  `data:${type};base64,${Buffer.from(bytes).toString('base64')}`;

const card: Card = {
  format: 'hemling-card',
  version: 1,
  toy: { name: 'Bramble', body: 'upright', traits: {} },
  unit: 'in',
  taken: '2026-11-20',
  note: '',
  readings: { 'head-girth': [431.8] },
};

afterEach(() => store.forgetEverything());

/** What fits into a link. */
const short = huge.filter(({ bytes }) => bytes.length < 1000);

test.each(short)('no link brings a photo along, a $name least of all', (picture) => {
  const writer: BitWriter = { bits: [] };
  writeToy(writer, card);
  writeReadings(writer, card.readings);
  writeBits(writer, 1, 1);
  writeValue(writer, { photo: address(picture), note: 'Hello', orders: [{ garment: 'vest' }] });
  const content = bytesOf(writer);
  const sum = checksum(Uint8Array.of(0x31, ...content));
  const read = decodeCode(`#1${toBase64Url(Uint8Array.of(...content, sum >> 16, (sum >> 8) & 255, sum & 255))}`);
  expect(read).toEqual({ ok: true, card: { ...card, note: 'Hello', orders: [{ garment: 'vest' }] }, skipped: [] });
  expect(encodeCard({ ...card, photo: address(picture) }).leftOut).toEqual(['photo']);
});

test.each(huge)(
  'no $name of hundreds of millions of pixels is kept as a photo, from wherever',
  async ({ type, bytes }) => {
    const toy = await store.saveToy({ name: 'Bramble', kind: 'upright' });
    const picture = new Blob([bytes], { type });
    await expect(store.savePhoto(toy.id, picture)).rejects.toMatchObject({ code: 'store-bad-value' });

    const kept = await store.addCard({ ...card, photo: address({ type, bytes }) });
    expect(await store.photoOf(kept.id)).toBeUndefined();

    const { backupFile, exportAll, importAll, readBackup } = await store.loadBackup();
    const backup = await exportAll();
    const photos = [{ toyId: toy.id, data: address({ type, bytes }), changedAt: Date.now() }];
    const read = await readBackup(backupFile({ ...backup, photos }));
    if (!read.ok) throw new Error(read.code);
    await importAll(read.backup, 'merge');
    expect(await store.photoOf(toy.id)).toBeUndefined();
    expect((await store.listToys()).length).toBe(2);
  },
);

test.each(huge)(
  'a $name of hundreds of millions of pixels that lies in the store is never shown',
  async ({ type, bytes }) => {
    const toy = await store.saveToy({ name: 'Bramble', kind: 'upright' });
    await putRow('photos', { toyId: toy.id, type, bytes: bytes.buffer, changedAt: Date.now() });
    expect(await store.photoOf(toy.id)).toBeUndefined();
  },
);

/** Writes a row straight into the database, past every check of ours. */
async function putRow(table: string, row: unknown): Promise<void> {
  const opening = indexedDB.open('hemling');
  await new Promise((done) => {
    opening.onsuccess = done;
  });
  const work = opening.result.transaction(table, 'readwrite');
  work.objectStore(table).put(row);
  await new Promise((done) => {
    work.oncomplete = done;
  });
  opening.result.close();
}
