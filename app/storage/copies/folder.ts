/**
 * A folder the maker chose once, perhaps one that her devices share: each device writes a file of its own there, and
 * lays the others' beside what it has. No device writes another's file, so none can spoil it.
 */
import { readBackup } from '../backup/read';
import { importAll } from '../backup/restore';
import { storeName, writeFile } from './own';

const NAME = /^hemling-\w+\.json$/;

/** The file of this device. */
export const fileName = async (): Promise<string> => `hemling-${await storeName()}.json`;

/** Writes this device's file; false when the folder is gone, full or no longer allowed. */
export async function writeToFolder(folder: FileSystemDirectoryHandle, file: Blob): Promise<boolean> {
  try {
    await writeFile(await folder.getFileHandle(await fileName(), { create: true }), file);
    return true;
  } catch {
    return false;
  }
}

/** Merges every other device's file, reading by reading; how many were read, and how many could not be. */
export async function bringTogether(
  folder: FileSystemDirectoryHandle,
): Promise<{ readonly merged: number; readonly refused: number }> {
  const own = await fileName();
  const found = { merged: 0, refused: 0 };
  for await (const [name, handle] of folder.entries()) {
    if (name === own || !NAME.test(name) || handle.kind !== 'file') continue;
    const result = await readBackup(await handle.getFile());
    if (result.ok) await importAll(result.backup, 'merge');
    found[result.ok ? 'merged' : 'refused'] += 1;
  }
  return found;
}
