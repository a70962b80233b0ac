import { openBitmap } from '../../picture';

/** A card file may carry a JPEG of at most 40 KiB: sides in pixels and qualities to try, largest first. */
const SIDES = [480, 360, 240, 160] as const;
const QUALITY = 0.8;
const MOST_BYTES = 40 * 1024;

/** A photo drawn anew, so small that a card may carry it, as a data address; undefined where it cannot be drawn. */
export async function smallPhoto(photo: Blob): Promise<string | undefined> {
  const image = await openBitmap(photo, SIDES[0]).catch(() => null);
  if (!image) return undefined;
  for (const side of SIDES) {
    const scale = Math.min(1, side / Math.max(image.width, image.height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.max(1, Math.round(image.width * scale));
    canvas.height = Math.max(1, Math.round(image.height * scale));
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
    const address = canvas.toDataURL('image/jpeg', QUALITY);
    if (address.startsWith('data:image/jpeg') && address.length * 0.75 <= MOST_BYTES) return address;
  }
  return undefined;
}
