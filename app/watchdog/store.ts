/** The app's database, by its name alone: whatever its version, whoever wrote it. */
const DATABASE = 'hemling';
/** The store answers within this, or the maker is told that it cannot be read, ms. */
const LIMIT_MS = 20_000;

/** The rows of every table as they lie there, by the table's name; null where there is no store. Only reads. Throws where it cannot. */
export async function everyRow(): Promise<Record<string, unknown[]> | null> {
  const database = await open();
  if (!database) return null;
  try {
    const names = [...database.objectStoreNames];
    const work = names.length > 0 ? database.transaction(names, 'readonly') : null;
    const rows = names.map(async (name) => [name, await done(work?.objectStore(name).getAll())] as const);
    return Object.fromEntries(await Promise.all(rows));
  } finally {
    database.close();
  }
}

function open(): Promise<IDBDatabase | null> {
  const request = indexedDB.open(DATABASE);
  let isNew = false;
  // Asked to make it, so it was not there: it is not made.
  request.onupgradeneeded = () => {
    isNew = true;
    request.transaction?.abort();
  };
  return done(request).catch((error) => {
    if (isNew) return null;
    throw error;
  });
}

function done<T>(request: IDBRequest<T> | undefined): Promise<T> {
  return new Promise((resolve, reject) => {
    if (!request) return reject(new Error('no-table'));
    setTimeout(() => reject(new Error('slow')), LIMIT_MS);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}
