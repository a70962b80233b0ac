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
 * Writes a set of files into a folder, all or none: they are written whole in a hidden folder beside the old ones, the
 * old ones are moved aside, the new ones into their places. A link in a file's place is replaced, never followed. Cut off
 * at any moment, what is seen in the folder is of one set, never of two; a set cut off in the midst of moving is seen in
 * part, and the next call finishes it. Throws where it cannot; then nothing has changed.
 */
export function writeAll(folder: string, files: Readonly<Record<string, string | Uint8Array>>): void {
  const made = mkdirSync(folder, { recursive: true });
  const started = join(folder, `${MARK}${process.pid}`);
  const signals = holdSignals();
  try {
    finishOthers(folder);
    for (const name of Object.keys(files)) refuseFolder(join(folder, name));
    mkdirSync(started);
    for (const [name, content] of Object.entries(files)) writeOut(join(started, name), content);
    changePlaces(folder, started);
  } catch (error) {
    rmSync(started, { recursive: true, force: true });
    if (made) removeEmpty(folder, made);
    throw error;
  } finally {
    signals.release();
  }
}

/**
 * A folder that is being filled, named by the process that fills it; `WHOLE` once everything is in it, until all of it is
 * in its place; beside it the folder of what was there before.
 */
const MARK = '.hemling-';
const WHOLE = '-whole';
const BEFORE = '-before';

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

/** The old files out of their places, then the new ones in; where one cannot be moved, all back. */
function changePlaces(folder: string, started: string): void {
  const [whole, before] = [started + WHOLE, started + BEFORE];
  const names = readdirSync(started);
  renameSync(started, whole);
  try {
    mkdirSync(before);
    for (const name of names) moveIfThere(folder, before, name);
    for (const name of names) renameSync(join(whole, name), join(folder, name));
  } catch (error) {
    for (const name of names) if (!isThere(join(whole, name))) moveIfThere(folder, whole, name);
    renameSync(whole, started);
    putBack(folder, before);
    throw error;
  }
  rmSync(before, { recursive: true });
  rmSync(whole, { recursive: true });
}

/** What processes that are gone left behind: a whole set is put in its place; without one, what was there before. */
function finishOthers(folder: string): void {
  const left = readdirSync(folder).flatMap((name) => {
    const [, started, pid] = new RegExp(`^((?:\\${MARK})(\\d+))(?:${WHOLE}|${BEFORE})?$`).exec(name) ?? [];
    return started && lstatSync(join(folder, name)).isDirectory() && !runs(Number(pid)) ? [join(folder, started)] : [];
  });
  for (const started of new Set(left)) {
    const [whole, before] = [started + WHOLE, started + BEFORE];
    if (isThere(whole)) {
      for (const name of readdirSync(whole)) renameSync(join(whole, name), join(folder, name));
      rmSync(before, { recursive: true, force: true });
      rmSync(whole, { recursive: true });
    } else putBack(folder, before);
    rmSync(started, { recursive: true, force: true });
  }
}

function putBack(folder: string, before: string): void {
  if (!isThere(before)) return;
  for (const name of readdirSync(before)) renameSync(join(before, name), join(folder, name));
  rmSync(before, { recursive: true });
}

/** A link counts, wherever it leads. */
const isThere = (path: string) => lstatSync(path, { throwIfNoEntry: false }) !== undefined;

function moveIfThere(from: string, to: string, name: string): void {
  if (isThere(join(from, name))) renameSync(join(from, name), join(to, name));
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
