import { isFitToKeep, pictureSize } from '../picture';
import { PHOTO_BYTES } from './limits';

/**
 * Whether a text is a JPEG as a data address of at most 40 KiB, and of a size that may be kept: the only kind of picture
 * a card may carry. What it shows is for the browser to say; here only the envelope and the frame header are judged.
 */
export function isSmallJpeg(address: string): boolean {
  if (!address.startsWith(`${JPEG_ADDRESS}/9j/`)) return false;
  const base64 = address.slice(JPEG_ADDRESS.length);
  const isBase64 =
    base64.length <= Math.ceil(PHOTO_BYTES / 3) * 4 && base64.length % 4 === 0 && /^[A-Za-z\d+/]+={0,2}$/u.test(base64);
  const size = isBase64 ? pictureSize(Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))) : null;
  return size?.type === 'image/jpeg' && isFitToKeep(size);
}

export const JPEG_ADDRESS = 'data:image/jpeg;base64,';
