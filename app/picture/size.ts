import type { Area } from './area';
import { avifSize } from './avif';
import { gifSize } from './gif';
import { jpegSize } from './jpeg';
import { webpSize } from './webp';

export type PictureType = 'image/jpeg' | 'image/png' | 'image/gif' | 'image/webp' | 'image/avif';

export type PictureSize = Area & { readonly type: PictureType };

/** Photos of today's phones have 12 to 50 million pixels, which take 200 MB for a moment. */
const MOST_OPENED_PIXELS = 50_000_000;
const LONGEST_SIDE = 16_384;
/** What is kept and shown at every start: the app's own are a tenth of this, 4 million take 16 MB. */
const MOST_KEPT_PIXELS = 4_000_000;

/**
 * What a file says of itself, whatever its name or declared type says; null where it is none of the five types or its
 * size cannot be read. Only the file's own words are read: bytes that follow may be anything.
 */
export function pictureSize(bytes: Uint8Array): PictureSize | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (const [type, read] of readers) {
    const size = within(read, view);
    if (size && size.width > 0 && size.height > 0) return { type, width: size.width, height: size.height };
  }
  return null;
}

/** Whether the browser may unpack it, once, to make a small one of it. */
export const isFitToOpen = (size: Area): boolean =>
  size.width * size.height <= MOST_OPENED_PIXELS && Math.max(size.width, size.height) <= LONGEST_SIDE;

/** Whether it may be kept as it is and shown again and again. */
export const isFitToKeep = (size: Area): boolean => isFitToOpen(size) && size.width * size.height <= MOST_KEPT_PIXELS;

type Reader = (view: DataView) => Area | null;

const readers: readonly (readonly [PictureType, Reader])[] = [
  ['image/png', pngSize],
  ['image/jpeg', jpegSize],
  ['image/gif', gifSize],
  ['image/webp', webpSize],
  ['image/avif', avifSize],
];

/** PNG (ISO/IEC 15948) begins with a signature and the chunk IHDR, whose first eight bytes are width and height. */
function pngSize(view: DataView): Area | null {
  const begins =
    view.getUint32(0) === 0x89504e47 && view.getUint32(4) === 0x0d0a1a0a && view.getUint32(12) === 0x49484452;
  return begins ? { width: view.getUint32(16), height: view.getUint32(20) } : null;
}

/** A file that ends too early says nothing. */
function within(read: Reader, view: DataView): Area | null {
  try {
    return read(view);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
