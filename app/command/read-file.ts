import { closeSync, constants, fstatSync, openSync, readSync } from 'node:fs';

export type FileFault = 'unreadable-file' | 'not-a-file' | 'empty-file' | 'too-large';
export type FileText = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly code: FileFault };

/**
 * The text of a plain file of at most `limit` bytes, or of what is piped in where the path is `-`. Named as a file, a
 * folder, a device or a pipe is refused without waiting for it, and no more than the limit is ever read, even of what
 * grows meanwhile. Never throws.
 */
export function readFile(path: string, limit: number): FileText {
  if (path === STANDARD_INPUT) return readAtMost(0, limit);
  let file: number | undefined;
  try {
    // Without O_NONBLOCK, opening a pipe that nobody writes to would wait for ever.
    file = openSync(path, constants.O_RDONLY | constants.O_NONBLOCK);
    return fstatSync(file).isFile() ? readAtMost(file, limit) : { ok: false, code: 'not-a-file' };
  } catch {
    return { ok: false, code: 'unreadable-file' };
  } finally {
    if (file !== undefined) closeSync(file);
  }
}

const STANDARD_INPUT = '-';

function readAtMost(file: number, limit: number): FileText {
  try {
    const bytes = Buffer.alloc(limit + 1);
    let length = 0;
    for (let got = 1; got > 0 && length < bytes.length; length += got) got = readSome(file, bytes, length);
    if (length > limit) return { ok: false, code: 'too-large' };
    if (length === 0) return { ok: false, code: 'empty-file' };
    return { ok: true, text: bytes.toString('utf8', 0, length) };
  } catch {
    return { ok: false, code: 'unreadable-file' };
  }
}

/** Where whoever pipes something in has nothing ready yet, it is waited for; Windows says the end by an error. */
function readSome(file: number, bytes: Buffer, at: number): number {
  for (;;) {
    try {
      return readSync(file, bytes, at, bytes.length - at, null);
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? error.code : '';
      if (code === 'EOF') return 0;
      if (code !== 'EAGAIN') throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, WAIT_MS);
    }
  }
}

const WAIT_MS = 20;
