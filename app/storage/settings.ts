import { readable } from './aside';
import { nextMoment, wallClock } from './clock';
import { read, write } from './connection';
import type { Setting, SettingValue } from './rows';

/** All settings ever set, by key; what is not there has the screens' default. */
export type Settings = Readonly<Record<string, SettingValue>>;

/** Settings whose key begins so belong to the device (a screen's calibration): no backup holds or changes them. */
const DEVICE = 'device-';
export const isOfDevice = (key: string): boolean => key.startsWith(DEVICE);

/** The last backup the maker kept; a moment. */
export const LAST_BACKUP = `${DEVICE}last-backup`;

export async function settings(): Promise<Settings> {
  return byKey(await read((store) => store.settings.toArray()));
}

export const byKey = (found: readonly unknown[]): Settings =>
  Object.fromEntries(readable('settings', found).map(({ key, value }) => [key, value]));

export async function setSetting(key: string, value: SettingValue): Promise<void> {
  const row: Setting = { key, value, changedAt: wallClock() };
  await write(['settings'], row, async (store) => {
    const earlier = await store.settings.get(key);
    await store.settings.put({ ...row, changedAt: nextMoment(earlier?.changedAt) });
  });
}
