/**
 * What the maker keeps: toys, readings, garments, photos, settings and where she was, in one IndexedDB database on
 * her own device. Every write is one strict transaction and resolves only when it is on the disk; every failure is a
 * StoreError with a code and the value that was not saved. No screens, no sentences, no network, no judging of
 * numbers ever live here.
 */

export type { Looked, ReadSummary } from './backup/deeds';
export type { Desk } from './backup/desk';
export type { Backup } from './backup/format';
export type { Change, Changes, Way } from './backup/merge';
export type { BackupCode, BackupResult, ReadBackup } from './backup/read';
export { wallClock } from './clock';
export { onEnded, onWritten } from './connection';
export type { FolderFound } from './copies/chosen';
export type { CopyFound } from './copies/own';
export { type StoreCode, StoreError } from './errors';
export { freeName } from './free-name';
export { changeGarment, type GarmentChange, garmentsOf, removeGarment, saveGarment } from './garments';
export { askToPersist, backedUp, type Health, health } from './health';
export { forgetEverything, openStore, type StoreState } from './open';
export { forgetCloth, type KeptCloth, keepCloth, ownCloths } from './own-cloths';
export { setPlace, whereWasI } from './places';
export { historyOf, type ReadingsByMeasure, readingsOf, removeReading, saveReading } from './readings';
export {
  type Garment,
  type Made,
  type Moment,
  type Photo,
  type Place,
  type Player,
  players,
  type Reading,
  type SettingValue,
  type Toy,
  type Typed,
} from './rows';
export { type Settings, setSetting, settings } from './settings';
export { tidyName } from './tidy';
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
 * Backup, restore and second copies, as a room of their own that is loaded when first asked for:
 *
 * const { openDesk } = await loadBackup();
 */
export const loadBackup = () => import('./backup');

/** What may wait until the first screen is there. */
export const loadCare = () => import('./care');

/** Cards and photos are loaded when first asked for too: the first screen needs neither. */
type Cards = typeof import('./cards');
type Photos = typeof import('./photos');
export const addCard: Cards['addCard'] = async (...given) => (await import('./cards')).addCard(...given);
export const cardOf: Cards['cardOf'] = async (...given) => (await import('./cards')).cardOf(...given);
export const photoOf: Photos['photoOf'] = async (...given) => (await import('./photos')).photoOf(...given);
export const savePhoto: Photos['savePhoto'] = async (...given) => (await import('./photos')).savePhoto(...given);
