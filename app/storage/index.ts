/**
 * What the maker keeps: toys, readings, garments, photos, settings and where she was, in one IndexedDB database on
 * her own device. Every write is one strict transaction and resolves only when it is on the disk; every failure is a
 * StoreError with a code and the value that was not saved. No screens, no sentences, no network, no judging of
 * numbers ever live here.
 */
export type { Backup } from './backup/format';
export type { Change, Changes, Way } from './backup/merge';
export type { BackupCode, BackupResult, ReadBackup } from './backup/read';
export { addCard, cardOf } from './cards';
export { onEnded } from './connection';
export { type StoreCode, StoreError } from './errors';
export { garmentsOf, removeGarment, saveGarment } from './garments';
export { askToPersist, backedUp, type Health, health } from './health';
export { forgetEverything, openStore, type StoreState } from './open';
export { photoOf, savePhoto } from './photos';
export { setPlace, whereWasI } from './places';
export { historyOf, type ReadingsByMeasure, readingsOf, removeReading, saveReading } from './readings';
export type { Garment, Moment, Photo, Place, Reading, SettingValue, Toy } from './rows';
export { type Settings, setSetting, settings } from './settings';
export {
  changeToy,
  findToy,
  keepFlag,
  listToys,
  type NewToy,
  removeToy,
  saveToy,
  type ToyChange,
  type Undo,
} from './toys';
export { type Stop, type ToyWatched, watchSettings, watchToy, watchToys } from './watch';

/**
 * Backup and restore, as a room of their own that is loaded when first asked for:
 *
 * const { exportAll, backupFile, readBackup, previewImport, importAll, undoReplace } = await loadBackup();
 */
export const loadBackup = () => import('./backup');

/** What may wait until the first screen is there. */
export const loadCare = () => import('./care');
