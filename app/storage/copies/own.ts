/**
 * The second copy on this device: a backup in the origin's private file system, renewed by itself. Every store has a
 * name (when it was begun) and two files by turns, so that one is always whole; the copy of a store that is gone stays
 * until the maker has it back, and is never overwritten by the store begun after it.
 */

import { type BackupResult, readBackup } from '../backup/read';
import { read } from '../connection';
import { COPIES_FOLDER } from '../open';

const NAME = /^copy-(\w+)-[12]\.json$/;
/** Stores whose copies are kept, this one and those before it. */
const STORES_KEPT = 3;

/** A copy found: of which store, whether that is the one here, and when it was written, ms. */
export type CopyFound = { readonly store: string; readonly here: boolean; readonly at: number };

/** Writes the copy of this store; false where the browser has no such place, or no room in it. */
export async function writeCopy(file: Blob): Promise<boolean> {
  const folder = await ownFolder(true);
  const name = await storeName();
  if (!folder || !name) return false;
  const files = await filesOf(folder);
  const [first, second] = [1, 2].map((turn) => `copy-${name}-${turn}.json`);
  const older = at(files, first) <= at(files, second) ? first : second;
  if (!older) return false;
  try {
    await writeFile(await folder.getFileHandle(older, { create: true }), file);
  } catch {
    return false;
  }
  await dropOld(folder);
  return true;
}

/** The copies there are, newest first, one a store. */
export async function findCopies(): Promise<CopyFound[]> {
  const folder = await ownFolder(false);
  if (!folder) return [];
  const here = await storeName().catch(() => undefined);
  const latest = new Map<string, number>();
  for (const { store, file } of await filesOf(folder))
    if (file.size > 0) latest.set(store, Math.max(file.lastModified, latest.get(store) ?? 0));
  return [...latest].map(([store, at]) => ({ store, here: store === here, at })).sort((one, two) => two.at - one.at);
}

/** The newest whole copy of a store; undefined when there is none. */
export async function openCopy(store: string): Promise<BackupResult | undefined> {
  const folder = await ownFolder(false);
  const files = folder ? await filesOf(folder) : [];
  const newest = files.filter((each) => each.store === store).sort((a, b) => b.file.lastModified - a.file.lastModified);
  let damaged: BackupResult | undefined;
  for (const { file } of newest) {
    const result = await readBackup(file);
    if (result.ok && !result.backup.changed) return result;
    if (result.ok) damaged ??= result;
  }
  return damaged;
}

/** Lets the copies of stores that are gone go. */
export async function dropCopies(): Promise<void> {
  const folder = await ownFolder(false);
  const here = await storeName();
  for (const { store, name } of folder ? await filesOf(folder) : [])
    if (store !== here) await folder?.removeEntry(name);
}

/** When this store was begun, as a name; undefined before it was ever opened. */
export async function storeName(): Promise<string | undefined> {
  const fact = await read((store) => store.facts.get('sentinel'));
  return fact?.id === 'sentinel' ? Number(fact.at).toString(36) : undefined;
}

/** A file is whole as it was, or whole as it is to be: written beside and put in place when closed. */
export async function writeFile(handle: FileSystemFileHandle, file: Blob): Promise<void> {
  if (typeof handle.createWritable === 'function') {
    const writer = await handle.createWritable();
    await writer.write(file);
    return writer.close();
  }
  // Older WebKit has only this, in workers; the other of the two files is whole meanwhile.
  const access = await (handle as SyncHandle).createSyncAccessHandle();
  try {
    access.truncate(0);
    access.write(await file.arrayBuffer(), { at: 0 });
    access.flush();
  } finally {
    access.close();
  }
}

type SyncHandle = FileSystemFileHandle & {
  createSyncAccessHandle(): Promise<{
    truncate(size: number): void;
    write(bytes: ArrayBuffer, options: { at: number }): number;
    flush(): void;
    close(): void;
  }>;
};

type Kept = { readonly name: string; readonly store: string; readonly file: File };

async function filesOf(folder: FileSystemDirectoryHandle): Promise<Kept[]> {
  const files: Kept[] = [];
  for await (const [name, handle] of folder.entries()) {
    const [, store] = NAME.exec(name) ?? [];
    if (store && handle.kind === 'file') files.push({ name, store, file: await handle.getFile() });
  }
  return files;
}

const at = (files: readonly Kept[], name: string | undefined) =>
  files.find((each) => each.name === name)?.file.lastModified ?? 0;

async function dropOld(folder: FileSystemDirectoryHandle): Promise<void> {
  const kept = (await findCopies()).slice(0, STORES_KEPT).map(({ store }) => store);
  for (const { store, name } of await filesOf(folder)) if (!kept.includes(store)) await folder.removeEntry(name);
}

async function ownFolder(create: boolean): Promise<FileSystemDirectoryHandle | undefined> {
  try {
    const root = await navigator.storage.getDirectory();
    return await root.getDirectoryHandle(COPIES_FOLDER, { create });
  } catch {
    return undefined;
  }
}
