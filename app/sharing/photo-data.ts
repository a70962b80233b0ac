import { PHOTO_BYTES } from './limits';

/**
 * Whether a text is a JPEG as a data address of at most 40 KiB: the only kind of picture a card may carry. What it
 * shows is for the browser to say; here only the envelope and the first bytes (FF D8 FF, ITU-T T.81) are judged.
 */
export function isSmallJpeg(address: string): boolean {
  if (!address.startsWith(`${JPEG_ADDRESS}/9j/`)) return false;
  const base64 = address.slice(JPEG_ADDRESS.length);
  return (
    base64.length <= Math.ceil(PHOTO_BYTES / 3) * 4 &&
    base64.length % 4 === 0 &&
    /^[\w+/]+={0,2}$/u.test(base64) &&
    !base64.includes('_')
  );
}

export const JPEG_ADDRESS = 'data:image/jpeg;base64,';
