import { nextMoment, wallClock } from './clock';
import { read, write } from './connection';
import { sinceBackup } from './readings';
import { LAST_BACKUP, settings } from './settings';

/** A backup is gently offered after this many readings without one. */
const READINGS_BEFORE_REMINDER = 10;

/** Null where the browser does not say. `remind`: it is time to offer a backup. `aside`: records that could not be read. */
export type Health = {
  readonly persisted: boolean | null;
  readonly usedBytes: number | null;
  readonly quotaBytes: number | null;
  readonly lastBackup: number | null;
  readonly readingsSince: number;
  readonly remind: boolean;
  readonly aside: number;
};

/** How the store is doing. Never await it on the way to the first screen. */
export async function health(): Promise<Health> {
  const lastBackup = Number((await settings())[LAST_BACKUP] ?? 0) || 0;
  const readingsSince = await read((store) =>
    store.transaction('r', [store.readings, store.settings, store.facts], () => sinceBackup(store)),
  );
  const aside = await read((store) => store.aside.count());
  const room = await manager()
    ?.estimate?.()
    .catch(() => undefined);
  return {
    persisted:
      (await manager()
        ?.persisted?.()
        .catch(() => null)) ?? null,
    usedBytes: room?.usage ?? null,
    quotaBytes: room?.quota ?? null,
    lastBackup: lastBackup || null,
    readingsSince,
    remind: readingsSince >= READINGS_BEFORE_REMINDER,
    aside,
  };
}

/** Asks the browser to keep the store; null where it cannot be asked. Firefox waits for the maker's answer. */
export const askToPersist = async (): Promise<boolean | null> =>
  (await manager()
    ?.persist?.()
    .catch(() => null)) ?? null;

/** Says that the maker has a backup of everything up to now; call it once the file has left the app. */
export const backedUp = (): Promise<void> =>
  write(['settings', 'facts'], undefined, async (store) => {
    const earlier = await store.settings.get(LAST_BACKUP);
    const now = wallClock();
    await store.settings.put({ key: LAST_BACKUP, value: now, changedAt: nextMoment(earlier?.changedAt) });
    await store.facts.put({ id: 'since-backup', readings: 0 });
  });

/** Missing outside secure contexts and in some WebKit builds. */
const manager = (): Partial<StorageManager> | undefined =>
  typeof navigator === 'undefined' ? undefined : navigator.storage;
