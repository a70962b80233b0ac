import { openBitmap, PictureError } from '../../../picture';

/** Long side at which a photo is looked at, px: a pixel of it is about a fifth of a millimetre of the toy, and any phone can hold it. */
const LONG_SIDE = 2400;

/**
 * A photo drawn anew on a canvas: whatever the camera wrote into the file (place, time, device) is not in it. The whole
 * of it, for the camera's axis is taken to pass through its middle. Throws PictureError.
 */
export async function openPicture(file: Blob): Promise<HTMLCanvasElement> {
  const image = await openBitmap(file, LONG_SIDE);
  const scale = Math.min(1, LONG_SIDE / Math.max(image.width, image.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(image.width * scale));
  canvas.height = Math.max(1, Math.round(image.height * scale));
  const context = canvas.getContext('2d');
  if (!context) throw new PictureError('picture-unreadable');
  context.imageSmoothingQuality = 'high';
  context.drawImage(image, 0, 0, canvas.width, canvas.height);
  image.close();
  return canvas;
}
