import {
  closeSync,
  existsSync,
  fsyncSync,
  lstatSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';

/**
 * Writes a set of files into a folder, all or none: they are written whole beside the old ones, then put in their places
 * by renaming. A link in a file's place is replaced, never followed. Cut off while writing, the folder holds the old set;
 * cut off between two renames, the next call finishes what was begun. Throws where it cannot; then nothing has changed.
 */
export function writeAll(folder: string, files: Readonly<Record<string, string | Uint8Array>>): void {
  const made = mkdirSync(folder, { recursive: true });
  const started = join(folder, `${MARK}${process.pid}`);
  const whole = `${started}${WHOLE}`;
  const signals = holdSignals();
  try {
    finishOthers(folder);
    for (const name of Object.keys(files)) refuseFolder(join(folder, name));
    mkdirSync(started);
    for (const [name, content] of Object.entries(files)) writeOut(join(started, name), content);
    renameSync(started, whole);
    putInPlace(folder, whole);
  } catch (error) {
    for (const left of [started, whole]) rmSync(left, { recursive: true, force: true });
    if (made) removeEmpty(folder, made);
    throw error;
  } finally {
    signals.release();
  }
}

/** A folder that is being filled, named by the process that fills it; `WHOLE` once everything is in it. */
const MARK = '.hemling-';
const WHOLE = '-whole';

/** To the disk, not only to its cache: a renamed file must not come up empty after the power failed. */
function writeOut(path: string, content: string | Uint8Array): void {
  const file = openSync(path, 'wx');
  try {
    writeFileSync(file, content);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

function putInPlace(folder: string, whole: string): void {
  for (const name of readdirSync(whole)) renameSync(join(whole, name), join(folder, name));
  rmSync(whole, { recursive: true });
}

/** What processes that are gone left behind: a whole set is put in its place, a part of one thrown away. */
function finishOthers(folder: string): void {
  for (const name of readdirSync(folder)) {
    const [, pid] = new RegExp(`^\\${MARK}(\\d+)(${WHOLE})?$`).exec(name) ?? [];
    const path = join(folder, name);
    if (pid === undefined || !lstatSync(path).isDirectory() || runs(Number(pid))) continue;
    if (name.endsWith(WHOLE)) putInPlace(folder, path);
    else rmSync(path, { recursive: true });
  }
}

function runs(pid: number): boolean {
  try {
    return pid !== process.pid && process.kill(pid, 0);
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}

function refuseFolder(path: string): void {
  if (lstatSync(path, { throwIfNoEntry: false })?.isDirectory()) throw new Error(`${path} is a folder`);
}

/** Removes the folders that were made for nothing, from the innermost out. */
function removeEmpty(folder: string, outermost: string): void {
  for (let at = folder; existsSync(at); at = dirname(at)) {
    rmdirSync(at);
    if (at === outermost) return;
  }
}

/** Until released, an interruption waits: what is being written is soon done. */
function holdSignals() {
  const names = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
  const wait = () => {};
  for (const name of names) process.on(name, wait);
  return {
    release: () => {
      for (const name of names) process.off(name, wait);
    },
  };
}
