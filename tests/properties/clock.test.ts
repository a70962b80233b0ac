import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import * as store from '../../app/storage';
import { seeded } from '../toys/seeded';

const TRIES = Number(process.env.CLOCKS ?? 60);
const YEAR_MS = 365.25 * 24 * 3600 * 1000;
/** Beyond any date a device may show: dead batteries begin in 1970, careless hands end in 2300. */
const FAR_MS = 300 * YEAR_MS;

beforeEach(() => {
  vi.spyOn(Date, 'now');
});
afterEach(async () => {
  vi.restoreAllMocks();
  await store.forgetEverything();
});

test(`${TRIES} stores whose clock jumps before every write, by up to 300 years: what was written last is what counts`, async () => {
  const random = seeded(20261126);
  const wrong: string[] = [];
  for (let each = 0; each < TRIES; each++) {
    const far = each % 2 === 0 ? YEAR_MS : FAR_MS;
    const jump = () => vi.mocked(Date.now).mockReturnValue(Math.round(1.77e12 + (random() * 2 - 1) * far));
    jump();
    const { id } = await store.saveToy({ name: 'Bramble', kind: 'upright' });
    const others = [];
    const inSet: number[] = [];
    for (let write = 0; write < 8; write++) {
      jump();
      const anew = random() < 0.5;
      const mm = 100 + write;
      if (anew) inSet.length = 0;
      inSet.push(mm);
      await store.saveReading(id, 'neck-girth', mm, 'tape', { anew });
      const counted = (await store.readingsOf(id))['neck-girth']?.map((reading) => reading.mm);
      if (String(counted) !== String(inSet)) wrong.push(`${each}: ${counted} for ${inSet}`);
      jump();
      others.push(await store.saveToy({ name: `Toy ${write}`, kind: 'round' }));
      jump();
      const chosen = others[Math.floor(random() * others.length)]?.id ?? '';
      await store.changeToy(chosen, { note: String(write) });
      if ((await store.listToys())[0]?.id !== chosen) wrong.push(`${each}: changed last, not first`);
      jump();
      await store.setPlace(chosen, null, `step-${write}`);
      if ((await store.whereWasI())?.step !== `step-${write}`) wrong.push(`${each}: not where she was`);
    }
    await store.forgetEverything();
  }
  expect(wrong).toEqual([]);
});

test('restored from a phone whose clock ran a year ahead, the next number counts, and goes home in a backup', async () => {
  const { backupFile, exportAll, importAll, readBackup } = await store.loadBackup();
  const take = async () => {
    const result = await readBackup(await backupFile(await exportAll()).text());
    if (!result.ok) throw new Error(result.code);
    return result.backup;
  };
  const counted = async (id: string) => (await store.readingsOf(id))['neck-girth']?.map((reading) => reading.mm);
  vi.mocked(Date.now).mockReturnValue(1.77e12 + YEAR_MS);
  const { id } = await store.saveToy({ name: 'Bramble', kind: 'upright' });
  await store.saveReading(id, 'neck-girth', 300);
  const ahead = await take();
  await store.forgetEverything();
  vi.mocked(Date.now).mockReturnValue(1.77e12);
  await importAll(ahead, 'merge');
  const fresh = await store.saveReading(id, 'neck-girth', 310, 'tape', { anew: true });
  await store.changeToy(id, { name: 'Brambly' });
  expect(await counted(id)).toEqual([310]);
  expect(fresh.takenAt).toBe(1.77e12);
  const home = await take();
  await store.forgetEverything();
  await importAll(ahead, 'merge');
  await importAll(home, 'merge');
  expect(await counted(id)).toEqual([310]);
  expect(await store.findToy(id)).toHaveProperty('name', 'Brambly');
});

test('a reading put back after it was taken out stays, whichever of two devices is asked', async () => {
  const { backupFile, exportAll, importAll, readBackup } = await store.loadBackup();
  const { id } = await store.saveToy({ name: 'Bramble', kind: 'upright' });
  const reading = await store.saveReading(id, 'neck-girth', 300);
  const undo = await store.removeReading(reading.id);
  const without = await readBackup(backupFile(await exportAll()));
  await undo();
  if (without.ok) await importAll(without.backup, 'merge');
  expect((await store.historyOf(id)).map(({ mm }) => mm)).toEqual([300]);
});
