import { closeSync, constants, fstatSync, openSync, readSync } from 'node:fs';

export type FileFault = 'unreadable-file' | 'not-a-file' | 'empty-file' | 'too-large';
export type FileText = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly code: FileFault };

/**
 * The text of a plain file of at most `limit` bytes. A folder, a device or a pipe is refused without waiting for it, and
 * no more than the limit is ever read, even of a file that grows meanwhile. Never throws.
 */
export function readFile(path: string, limit: number): FileText {
  let file: number | undefined;
  try {
    // Without O_NONBLOCK, opening a pipe that nobody writes to would wait for ever.
    file = openSync(path, constants.O_RDONLY | constants.O_NONBLOCK);
    if (!fstatSync(file).isFile()) return { ok: false, code: 'not-a-file' };
    const bytes = Buffer.alloc(limit + 1);
    let length = 0;
    for (let got = 1; got > 0 && length < bytes.length; length += got)
      got = readSync(file, bytes, length, bytes.length - length, null);
    if (length > limit) return { ok: false, code: 'too-large' };
    if (length === 0) return { ok: false, code: 'empty-file' };
    return { ok: true, text: bytes.toString('utf8', 0, length) };
  } catch {
    return { ok: false, code: 'unreadable-file' };
  } finally {
    if (file !== undefined) closeSync(file);
  }
}
