import { isFitToOpen, type PictureSize, pictureSize } from './size';

/** A photo of 50 million pixels rarely has more bytes. */
const MOST_BYTES = 32 * 1024 * 1024;

/** A picture that is none of the types we read, or larger than a phone can hold. */
export class PictureError extends Error {
  override readonly name = 'PictureError';
  constructor(readonly code: 'picture-unreadable' | 'picture-too-large') {
    super(code);
  }
}

/**
 * A picture unpacked, its long side about `side` pixels and hardly more, turned as its file says. Close it after use.
 * Throws PictureError, before anything is unpacked where the file says that it is too large.
 */
export async function openBitmap(file: Blob, side: number): Promise<ImageBitmap> {
  if (file.size > MOST_BYTES) throw new PictureError('picture-too-large');
  const bytes = await file.arrayBuffer();
  const size = pictureSize(new Uint8Array(bytes));
  if (!size) throw new PictureError('picture-unreadable');
  if (!isFitToOpen(size)) throw new PictureError('picture-too-large');
  return createImageBitmap(new Blob([bytes], { type: size.type }), smaller(size, side)).catch(() => {
    throw new PictureError('picture-unreadable');
  });
}

/** Asked for by the width alone, so that the shape stays; no wider than the short side, for the file may turn it. */
function smaller({ width, height }: PictureSize, side: number): ImageBitmapOptions {
  if (Math.max(width, height) <= side) return {};
  return { resizeWidth: Math.min(side, width, height), resizeQuality: 'high' };
}
