import 'fake-indexeddb/auto';
import { afterEach, expect, test, vi } from 'vitest';
import { usualTraits } from '../../app/body';
import * as store from '../../app/storage';
import { type ReadBackup, StoreError } from '../../app/storage';
import { type Random, seeded } from '../toys/seeded';
import { JPEG } from '../unit/storage-samples';

/** Fewer where every push waits for them. */
const PAIRS = Number(process.env.PAIRS ?? 40);
const YEAR_MS = 365 * 24 * 3600 * 1000;
const NOW = 1.77e12;
const MEASURES = ['neck-girth', 'chest-girth'] as const;

const { backupFile, exportAll, importAll, readBackup } = await store.loadBackup();

afterEach(async () => {
  vi.restoreAllMocks();
  await store.forgetEverything();
});

/** What a device knows it kept: every reading, and what was last said of each toy and measure there. */
type Told = { readonly readings: Set<string>; readonly toys: Set<string> };

test(`${PAIRS} pairs of histories, clocks wrong by up to a year: merged in any order it is the same, and nothing is lost`, async () => {
  const random = seeded(20261127);
  vi.spyOn(Date, 'now').mockReturnValue(NOW);
  const told = { merged: 0, readings: 0 };
  for (let pair = 0; pair < PAIRS; pair++) {
    const common = await history(null, random);
    const [one, two] = [await history(common.file, random), await history(common.file, random)];
    const three = pair % 5 === 0 ? await history(common.file, random) : one;
    const here = await merged(one.file, two.file);
    const there = await merged(two.file, one.file, two.file);
    expect(there).toEqual(here);
    const all = await merged(await merged2(one.file, two.file), three.file);
    expect(await merged(three.file, await merged2(two.file, one.file))).toEqual(all);
    expect(await merged(await merged2(two.file, three.file), one.file)).toEqual(all);
    const text = JSON.stringify(here);
    for (const id of [...one.told.readings, ...two.told.readings, ...common.told.readings]) {
      expect(text).toContain(id);
      told.readings += 1;
    }
    for (const id of [...one.told.toys, ...two.told.toys]) expect(text).toContain(id);
    await nextOneCounts(random);
    told.merged += 1;
  }
  expect(told.merged).toBe(PAIRS);
  expect(told.readings).toBeGreaterThan(PAIRS * 4);
});

/** Lives on from a file, on a device of its own, whose clock is wrong and jumps. */
async function history(from: ReadBackup | null, random: Random): Promise<{ file: ReadBackup; told: Told }> {
  await store.forgetEverything();
  if (from) await importAll(from, 'replace');
  const told: Told = { readings: new Set(), toys: new Set() };
  const wrongBy = (random() * 2 - 1) * YEAR_MS;
  for (let write = 3 + Math.floor(random() * 8); write > 0; write--) {
    const jump = random() < 0.3 ? (random() * 2 - 1) * YEAR_MS : random() * 9;
    vi.mocked(Date.now).mockReturnValue(Math.round(NOW + wrongBy + jump));
    await deed(told, random);
  }
  return { file: await take(), told };
}

async function deed(told: Told, random: Random): Promise<void> {
  const toys = await store.listToys();
  const toy = toys[Math.floor(random() * toys.length)];
  const kind = random();
  if (!toy || kind < 0.15) {
    told.toys.add((await store.saveToy({ name: `Toy ${Math.floor(random() * 99)}`, kind: 'upright' })).id);
  } else if (kind < 0.6) {
    const measure = MEASURES[Math.floor(random() * 2)] ?? 'neck-girth';
    const anew = random() < 0.4;
    const { id } = await store.saveReading(toy.id, measure, 100 + Math.floor(random() * 50), 'tape', { anew });
    told.readings.add(id);
  } else if (kind < 0.7) {
    const reading = (await store.historyOf(toy.id))[0];
    const undo = reading && (await store.removeReading(reading.id));
    if (random() < 0.5) await undo?.();
  } else if (kind < 0.78) await store.changeToy(toy.id, { traits: { ...usualTraits, tail: random() < 0.5 } });
  else if (kind < 0.85) await store.changeToy(toy.id, { name: `Name ${Math.floor(random() * 99)}` });
  else if (kind < 0.9) await garmentDeed(toy.id, random);
  else if (kind < 0.95) await store.setSetting('unit', random() < 0.5 ? 'in' : 'cm');
  else if (kind < 0.98) await store.setPlace(toy.id, null, `step-${Math.floor(random() * 9)}`);
  else await store.savePhoto(toy.id, JPEG);
}

/** A garment ordered, ordered otherwise, noted on or pictured. */
async function garmentDeed(toyId: string, random: Random): Promise<void> {
  const [garment] = await store.garmentsOf(toyId);
  if (!garment || random() < 0.5) await store.saveGarment(toyId, { garment: 'cape' }, garment?.id);
  else if (random() < 0.7) await store.changeGarment(garment.id, { note: `Note ${Math.floor(random() * 99)}` });
  else await store.savePhoto(garment.id, JPEG);
}

/** The files laid beside each other, the first on an empty device: all rows as a plain value, and what counts of each toy. */
async function merged(...files: readonly ReadBackup[]) {
  await store.forgetEverything();
  for (const file of files) await importAll(file, 'merge');
  const { toys, readings, garments, places, settings, photos } = await exportAll();
  const counts = await Promise.all((await store.listToys()).map((toy) => store.readingsOf(toy.id)));
  return { toys, readings, garments, places, settings, photos, counts, place: await store.whereWasI() };
}

async function merged2(...files: readonly ReadBackup[]): Promise<ReadBackup> {
  await merged(...files);
  return take();
}

async function take(): Promise<ReadBackup> {
  const result = await readBackup(backupFile(await exportAll()));
  if (result.ok) return result.backup;
  throw new StoreError('store-bad-value', result.code);
}

/** On the merged store a new set is the one that counts, whatever the clock says by now. */
async function nextOneCounts(random: Random): Promise<void> {
  vi.mocked(Date.now).mockReturnValue(Math.round(NOW - YEAR_MS + random() * YEAR_MS));
  for (const toy of await store.listToys()) {
    await store.saveReading(toy.id, 'neck-girth', 77, 'tape', { anew: true });
    expect((await store.readingsOf(toy.id))['neck-girth']?.map(({ mm }) => mm)).toEqual([77]);
  }
}
