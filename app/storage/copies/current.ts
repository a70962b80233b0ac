import { openDesk } from '../backup/desk';
import { onWritten } from '../connection';
import { chosenFolder } from './chosen';
import { findCopies } from './own';

/** A copy is made this long after the last write; with very many toys, later, so that it never takes more than a tenth. */
const QUIET_MS = 20_000;
const SHARE = 10;
/** After the start the screen has the device to itself for a while. */
const START_MS = 5_000;
/** Says, also to the next start, that something was written since the last copy. */
const NOTE = 'hemling-uncopied';

/** Keeps the second copies current: a while after each write, and when the app is left. Returns the way to stop. */
export function keepCopiesCurrent(told: () => void = () => undefined): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let took = 0;
  const soon = (wait: number) => {
    clearTimeout(timer);
    timer = setTimeout(copy, wait);
  };
  const copy = async () => {
    clearTimeout(timer);
    if (!readNote() && (await findCopies()).some(({ here }) => here)) return;
    const began = performance.now();
    await alone(async () => {
      writeNote(false);
      if (!(await copyNow().catch(() => false))) writeNote(true);
      else told();
    });
    took = performance.now() - began;
  };
  const stopListening = onWritten(() => {
    writeNote(true);
    soon(Math.max(QUIET_MS, took * SHARE));
  });
  const hidden = () => {
    if (document.visibilityState === 'hidden') void copy();
  };
  document.addEventListener('visibilitychange', hidden);
  soon(START_MS);
  return () => {
    stopListening();
    clearTimeout(timer);
    document.removeEventListener('visibilitychange', hidden);
  };
}

/** True when a copy is current wherever one can be. */
async function copyNow(): Promise<boolean> {
  const found = await chosenFolder();
  const desk = openDesk();
  try {
    const done = await desk.copy(found?.allowed ? found.folder : null);
    return done.own && (!found || done.folder);
  } finally {
    desk.close();
  }
}

/** One tab at a time; another that is at it has the same store. */
async function alone(work: () => Promise<void>): Promise<void> {
  const locks: LockManager | undefined = navigator.locks;
  if (locks) await locks.request('hemling-copy', { ifAvailable: true }, (lock) => (lock ? work() : undefined));
  else await work();
}

function readNote(): boolean {
  try {
    return localStorage.getItem(NOTE) !== null;
  } catch {
    return true;
  }
}

function writeNote(uncopied: boolean): void {
  try {
    if (uncopied) localStorage.setItem(NOTE, '1');
    else localStorage.removeItem(NOTE);
  } catch {
    // Without the note every start makes a copy.
  }
}
