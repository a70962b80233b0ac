import { openBitmap, PictureError } from '../../../picture';

/** Long side of a kept photo, pixels: sharp on a phone, small in a backup. */
const SIDE = 640;
const QUALITY = 0.85;
/** Unpacked at this long side: the middle square of a picture twice as long as wide still has all it needs. */
const OPENED_SIDE = 1600;

/**
 * The middle square of a picture, drawn anew as a JPEG: whatever the camera wrote into the file (place, time, device)
 * is gone. Throws PictureError.
 */
export async function redraw(picture: Blob): Promise<Blob> {
  const image = await openBitmap(picture, OPENED_SIDE);
  const side = Math.min(image.width, image.height);
  const size = Math.min(SIDE, side);
  const canvas = document.createElement('canvas');
  canvas.width = size;
  canvas.height = size;
  const left = (image.width - side) / 2;
  const top = (image.height - side) / 2;
  canvas.getContext('2d')?.drawImage(image, left, top, side, side, 0, 0, size, size);
  image.close();
  return new Promise((resolve, reject) =>
    canvas.toBlob(
      (drawn) => (drawn ? resolve(drawn) : reject(new PictureError('picture-unreadable'))),
      'image/jpeg',
      QUALITY,
    ),
  );
}
