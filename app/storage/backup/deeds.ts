/**
 * What takes long with many toys, each a function from plain values to plain values, so that it can be done in a worker
 * (see desk.ts). One backup is held between being read and being restored.
 */

import { bringTogether, writeToFolder } from '../copies/folder';
import { dropCopies, findCopies, openCopy, writeCopy } from '../copies/own';
import { backupFile, exportAll } from './export';
import type { Changes, Way } from './merge';
import { type BackupCode, type BackupResult, readBackup } from './read';
import { importAll, previewImport } from './restore';

export type ReadSummary = {
  readonly made: string;
  readonly toys: number;
  readonly readings: number;
  readonly unreadable: number;
  readonly newer: number;
  readonly changed: boolean;
  readonly changes: { readonly [W in Way]: Changes };
};
export type Looked =
  | { readonly ok: true; readonly summary: ReadSummary }
  | { readonly ok: false; readonly code: BackupCode | 'copy-gone' };

let held: Extract<BackupResult, { ok: true }>['backup'] | undefined;

export const deeds = {
  /** Everything as a file, with the moment it was made (ISO 8601). */
  save: async () => {
    const backup = await exportAll();
    return { file: backupFile(backup), made: backup.made };
  },
  /** Reads a file and holds it; says what is in it and what restoring it would change. */
  look: async (file: Blob): Promise<Looked> => hold(await readBackup(file)),
  /** The same with a copy kept on this device. */
  lookAtCopy: async (store: string): Promise<Looked> => {
    const result = await openCopy(store);
    return result ? hold(result) : { ok: false, code: 'copy-gone' };
  },
  restore: async (way: Way): Promise<void> => {
    if (held) await importAll(held, way);
    held = undefined;
  },
  /** Renews the second copy on this device, and in the folder the maker chose. */
  copy: async (folder: FileSystemDirectoryHandle | null) => {
    const backup = await exportAll();
    if (backup.toys.length === 0) return { own: false, folder: false };
    const file = backupFile(backup);
    return { own: await writeCopy(file), folder: folder !== null && (await writeToFolder(folder, file)) };
  },
  copies: findCopies,
  dropCopies,
  /** Lays the files of all devices in the folder beside what is here; how many there were. */
  together: (folder: FileSystemDirectoryHandle) => bringTogether(folder),
};

async function hold(result: BackupResult): Promise<Looked> {
  held = result.ok ? result.backup : undefined;
  if (!held) return { ok: false, code: result.ok ? 'backup-empty' : result.code };
  const { made, contents, unreadable, newer, changed } = held;
  const [toys, readings] = [contents.toys.length, contents.readings.length];
  return {
    ok: true,
    summary: { made, toys, readings, unreadable, newer, changed, changes: await previewImport(held) },
  };
}
