import { Dexie, type Table } from 'dexie';
import type { Aside, Copy, Fact, Garment, Photo, Place, Reading, Setting, Toy, Typed } from './rows';

export const DATABASE = 'hemling';

const first = {
  toys: 'id',
  readings: 'id, toyId, takenAt',
  garments: 'id, toyId',
  places: 'toyId, at',
  photos: 'toyId',
  settings: 'key',
  aside: '++id',
  copies: 'id',
  facts: 'id',
};
const second = { ...first, toys: 'id, changedAt, name', typed: 'id' };

/**
 * Every version of the store there ever was, oldest first; it only grows. A change of indexes or rows is a new line
 * here, with its upgrade, and a new snapshot in tests/unit/storage-schema.json.
 */
export const versions: readonly {
  readonly version: number;
  readonly stores: Readonly<Record<string, string>>;
}[] = [
  { version: 1, stores: first },
  { version: 2, stores: second },
  { version: 3, stores: second },
  { version: 4, stores: second },
];

export type Store = Dexie & {
  readonly toys: Table<Toy, string>;
  readonly readings: Table<Reading, string>;
  readonly garments: Table<Garment, string>;
  readonly places: Table<Place, string>;
  readonly photos: Table<Photo, string>;
  readonly settings: Table<Setting, string>;
  readonly aside: Table<Aside, number>;
  readonly copies: Table<Copy, string>;
  readonly facts: Table<Fact, string>;
  readonly typed: Table<Typed, string>;
};

/**
 * The one database, not yet opened. Strict durability for every transaction: the browser acknowledges a write only
 * once it is on the disk. Dexie's cache is off, since it shows live queries a write that is not yet complete.
 */
export function createStore(name = DATABASE): Store {
  const store = new Dexie(name, {
    chromeTransactionDurability: 'strict',
    cache: 'disabled',
    ...ours(),
  }) as Store;
  for (const { version, stores } of versions) store.version(version).stores(stores);
  return store;
}

/**
 * The browser's databases, but never opened without a version: Dexie does so when a newer Hemling wrote the store, and
 * then adds to it whatever it misses. This leaves it untouched and the VersionError standing.
 */
function ours(): { indexedDB?: IDBFactory } {
  const real = globalThis.indexedDB;
  if (!real) return {};
  return {
    indexedDB: {
      open: (name, version) => {
        if (version === undefined) throw new DOMException('newer', 'VersionError');
        return real.open(name, version);
      },
      deleteDatabase: (name) => real.deleteDatabase(name),
      databases: () => real.databases(),
      cmp: (first, second) => real.cmp(first, second),
    },
  };
}
