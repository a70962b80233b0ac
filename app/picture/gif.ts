import type { Area } from './area';

const EXTENSION = 0x21;
const IMAGE = 0x2c;

/**
 * GIF (version 89a): the logical screen, or as much more as the first picture needs, for browsers make room for it.
 * Bytes after the signature: screen width and height, flags, two more, a table of colours, then blocks.
 */
export function gifSize(view: DataView): Area | null {
  if (view.getUint32(0) !== 0x47494638) return null;
  const screen = { width: view.getUint16(6, true), height: view.getUint16(8, true) };
  let at = 13 + tableBytes(view.getUint8(10));
  while (view.getUint8(at) === EXTENSION) at = afterBlocks(view, at + 2);
  if (view.getUint8(at) !== IMAGE) return null;
  const [left, top, width, height] = [1, 3, 5, 7].map((offset) => view.getUint16(at + offset, true));
  return {
    width: Math.max(screen.width, (left ?? 0) + (width ?? 0)),
    height: Math.max(screen.height, (top ?? 0) + (height ?? 0)),
  };
}

const tableBytes = (flags: number) => (flags & 0x80 ? 3 * 2 ** ((flags & 7) + 1) : 0);

/** Sub-blocks each begin with their length; one of length 0 ends them. */
function afterBlocks(view: DataView, start: number): number {
  let at = start;
  while (view.getUint8(at) !== 0) at += 1 + view.getUint8(at);
  return at + 1;
}
