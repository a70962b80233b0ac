import 'fake-indexeddb/auto';
import { afterEach, describe, expect, test } from 'vitest';
import { clothOf, cloths } from '../../app/body';
import { fullOrder } from '../../app/drafting/draft';
import { decodeCode, encodeCard, readCard, writeCard } from '../../app/sharing';
import * as store from '../../app/storage';
import { loadBackup } from '../../app/storage';
import { made } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

const rabbit = buildCard(builds[1] ?? expect.fail('no rabbit'));
const sock = { name: 'Old sock', stretch: 0.6, thickness: 1.1 };
const order = { garment: 'tee', cloth: 'jersey', ownCloth: sock };

describe('a cloth of her own', () => {
  test('has her numbers, and all else of the cloth it is like', () => {
    const jersey = cloths.find(({ id }) => id === 'jersey');
    expect(clothOf(order)).toEqual({ ...jersey, stretch: 0.6, thickness: 1.1 });
    expect(clothOf({ cloth: 'jersey' })).toEqual(jersey);
    expect(clothOf({ cloth: 'nothing', ownCloth: sock })).toBeUndefined();
  });

  test('made as thick as felt it eases in as little', () => {
    const thick = clothOf({ cloth: 'linen', ownCloth: { ...sock, stretch: 0, thickness: 1.2 } });
    expect(thick?.easesIn).toBe(cloths.find(({ id }) => id === 'felt')?.easesIn);
  });

  test('is what is drafted from: a thicker one asks for more room', () => {
    const chest = (ownCloth?: typeof sock) =>
      made(rabbit, 'tee', { cloth: 'jersey', ...(ownCloth ? { ownCloth } : {}) })?.fit.find(
        ({ place }) => place === 'chest',
      )?.garment ?? 0;
    // Its own thickness at its middle line, and twice that at each of two side seams (geometry): (π + 4) · 0.4.
    expect(chest(sock) - chest()).toBeCloseTo((Math.PI + 4) * 0.4, 6);
  });

  test.each([
    ['stretch', { ...sock, stretch: 1.01 }],
    ['stretch', { ...sock, stretch: Number.NaN }],
    ['thickness', { ...sock, thickness: 0 }],
    ['thickness', { ...sock, thickness: 8.1 }],
  ])('that no cloth can be is refused, by name: %s', (number, ownCloth) => {
    const read = fullOrder({ ...order, ownCloth }, '2026-01-01');
    expect(read).toEqual({ ok: false, fault: { code: 'bad-cloth', where: `ownCloth.${number}` } });
  });

  test('goes with a card, as a file and as a link', () => {
    const card = { ...rabbit, orders: [order] };
    const file = readCard(writeCard(card));
    expect(file.ok && file.card.orders).toEqual([order]);
    const link = decodeCode(encodeCard(card).fragment);
    expect(link.ok && link.card.orders).toEqual([order]);
  });
});

describe('in the store', () => {
  afterEach(() => store.forgetEverything());
  const kept = async () => store.ownCloths(await store.settings());

  test('it is kept, changed under its name, and forgotten', async () => {
    await store.openStore();
    const cloth = await store.keepCloth({ ...sock, like: 'jersey' });
    expect(await kept()).toEqual([cloth]);
    await store.keepCloth({ ...cloth, stretch: 0.5 });
    expect(await kept()).toEqual([{ ...cloth, stretch: 0.5 }]);
    await store.forgetCloth(cloth.id);
    expect(await kept()).toEqual([]);
  });

  test('it is in backups, and comes back with them; one forgotten since stays forgotten', async () => {
    const { backupFile, exportAll, importAll, readBackup } = await loadBackup();
    await store.openStore();
    const cloth = await store.keepCloth({ ...sock, like: 'jersey' });
    const read = await readBackup(backupFile(await exportAll()));
    if (!read.ok) expect.fail(read.code);
    await store.forgetCloth(cloth.id);
    await importAll(read.backup, 'merge');
    expect(await kept()).toEqual([]);
    await store.forgetEverything();
    await importAll(read.backup, 'merge');
    expect(await kept()).toEqual([cloth]);
  });

  test('what is no cloth is left out, and a garment keeps the numbers of its own', async () => {
    await store.openStore();
    await store.setSetting('cloth-a', 'no cloth');
    await store.setSetting('cloth-b', '{"name":"","like":"linen","stretch":0,"thickness":1}');
    await store.setSetting('cloth-c', '{"name":"Tea towel","like":"linen","stretch":null,"thickness":1}');
    expect(await kept()).toEqual([]);
    const toy = await store.saveToy({ name: 'Moss', kind: 'upright' });
    await store.saveGarment(toy.id, order);
    expect((await store.garmentsOf(toy.id)).map((garment) => garment.order)).toEqual([order]);
  });
});
