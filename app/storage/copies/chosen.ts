import { read, tellWritten, write } from '../connection';
import { fileName } from './folder';

/** Chromium alone has these, and only for folders of the maker's own. */
type Permission = { readonly mode: 'readwrite' };
type AskedFolder = FileSystemDirectoryHandle & {
  queryPermission(how: Permission): Promise<PermissionState>;
  requestPermission(how: Permission): Promise<PermissionState>;
};
type Picker = { showDirectoryPicker?(how: Permission & { id: string }): Promise<FileSystemDirectoryHandle> };

const READ_AND_WRITE: Permission = { mode: 'readwrite' };

/** The folder chosen; `allowed`: the browser lets the app write there without asking again; `at`: this device's file, ms. */
export type FolderFound = {
  readonly folder: FileSystemDirectoryHandle;
  readonly allowed: boolean;
  readonly at: number | null;
};

export const folderCanBeChosen = (): boolean => typeof (globalThis as Picker).showDirectoryPicker === 'function';

/** Lets the maker choose a folder, and remembers it. False when she chose none. */
export async function chooseFolder(): Promise<boolean> {
  const folder = await (globalThis as Picker)
    .showDirectoryPicker?.({ ...READ_AND_WRITE, id: 'hemling' })
    .catch(() => undefined);
  if (!folder) return false;
  await write(['facts'], undefined, (store) => store.facts.put({ id: 'copy-folder', folder }));
  tellWritten();
  return true;
}

export async function chosenFolder(): Promise<FolderFound | null> {
  const fact = await read((store) => store.facts.get('copy-folder'));
  if (fact?.id !== 'copy-folder' || typeof fact.folder?.getFileHandle !== 'function') return null;
  const { folder } = fact;
  return { folder, allowed: await isAllowed(folder), at: await writtenAt(folder) };
}

/** Asks the browser once more, after a tap. */
export async function allowFolder(folder: FileSystemDirectoryHandle): Promise<boolean> {
  const allowed = (await (folder as AskedFolder).requestPermission(READ_AND_WRITE)) === 'granted';
  if (allowed) tellWritten();
  return allowed;
}

/** The file there stays; it is written no more. */
export const forgetFolder = (): Promise<void> =>
  write(['facts'], undefined, (store) => store.facts.delete('copy-folder'));

/** Folders of the origin's own have nobody to ask. */
const isAllowed = async (folder: FileSystemDirectoryHandle) =>
  ((await (folder as Partial<AskedFolder>).queryPermission?.(READ_AND_WRITE)) ?? 'granted') === 'granted';

async function writtenAt(folder: FileSystemDirectoryHandle): Promise<number | null> {
  try {
    return (await (await folder.getFileHandle(await fileName())).getFile()).lastModified;
  } catch {
    return null;
  }
}
