import type { Page } from 'playwright-core';

/**
 * In the page: fills the app's open store without any code of the app. Toys are named "Toy 0", "Toy 1" …, the last the
 * latest, each with so many readings of as many measures.
 */
export function fillRaw({ toys, readings }: { toys: number; readings: number }): Promise<void> {
  const measures = ['head-girth', 'neck-girth', 'chest-girth', 'waist-girth', 'hip-girth', 'upper-arm-girth'];
  const traits = {
    shoulders: 'sloped',
    neck: 'clear',
    arms: 'down',
    posture: 'sits',
    legs: 'apart',
    ears: 'top',
    tail: false,
    stuffing: 'soft',
  };
  return new Promise((done, failed) => {
    const opening = indexedDB.open('hemling');
    opening.onerror = () => failed(opening.error);
    opening.onsuccess = () => {
      const writing = opening.result.transaction(['toys', 'readings'], 'readwrite');
      for (let toy = 0; toy < toys; toy++) {
        const at = 1.7e12 + toy;
        const id = `toy${toy}`;
        writing.objectStore('toys').put({
          ...{ id, name: `Toy ${toy}`, kind: 'upright', traits, note: '', corrections: {}, kept: {} },
          ...{ createdAt: at, changedAt: at },
        });
        for (let each = 0; each < readings; each++)
          writing.objectStore('readings').put({
            ...{ id: `${id}r${each}`, toyId: id, measureId: measures[each % measures.length], mm: 300 + each },
            ...{ from: 'tape', set: at, turn: at + each, takenAt: at, changedAt: at + each },
          });
      }
      writing.onerror = () => failed(writing.error);
      writing.oncomplete = () => {
        opening.result.close();
        done();
      };
    };
  });
}

/** In Node: every reading on the disk, by id, as its text; read without any code of the app. */
export async function readingsNow(page: Page): Promise<Map<string, string>> {
  return new Map(
    await page.evaluate(
      () =>
        new Promise<[string, string][]>((done, failed) => {
          const opening = indexedDB.open('hemling');
          opening.onerror = () => failed(opening.error);
          opening.onsuccess = () => {
            const reading = opening.result.transaction('readings').objectStore('readings').getAll();
            reading.onsuccess = () => {
              opening.result.close();
              done(reading.result.map(({ id, measureId, mm }) => [id, `${measureId} ${mm}`]));
            };
          };
        }),
    ),
  );
}

/** In the page: the store as version 1 had it, with the same rows in it. */
export async function backToVersion1(): Promise<void> {
  const asked = <T>(request: IDBRequest<T>) =>
    new Promise<T>((done, failed) => {
      request.onsuccess = () => done(request.result);
      request.onerror = () => failed(request.error);
    });
  const stores: Readonly<Record<string, readonly [string, ...string[]]>> = {
    toys: ['id'],
    readings: ['id', 'toyId', 'takenAt'],
    garments: ['id', 'toyId'],
    places: ['toyId', 'at'],
    photos: ['toyId'],
    settings: ['key'],
    aside: ['id'],
    copies: ['id'],
    facts: ['id'],
  };
  const names = Object.keys(stores);
  const newer = await asked(indexedDB.open('hemling'));
  const all = newer.transaction(names);
  const rows = await Promise.all(names.map((name) => asked(all.objectStore(name).getAll())));
  newer.close();
  await asked(indexedDB.deleteDatabase('hemling'));
  const opening = indexedDB.open('hemling', 10);
  opening.onupgradeneeded = () => {
    for (const [name, [key, ...indexes]] of Object.entries(stores)) {
      const table = opening.result.createObjectStore(name, { keyPath: key, autoIncrement: name === 'aside' });
      for (const index of indexes) table.createIndex(index, index);
    }
  };
  const older = await asked(opening);
  const writing = older.transaction(names, 'readwrite', { durability: 'strict' });
  for (const [at, name] of names.entries())
    for (const row of rows[at] ?? []) {
      const { turn: _, changedAt: __, ...version1 } = row;
      writing.objectStore(name).put(name === 'readings' ? version1 : row);
    }
  await new Promise((done) => writing.addEventListener('complete', done));
  older.close();
}
