import { openBitmap } from '../../picture';
import type { Pixels } from '../../sharing';

/** Long side a picture is read at, pixels: a QR a fifth as wide still has several to a module. */
const SIDE = 2400;

/** A picture's pixels, made smaller where it is larger than needed; null where the browser sees no picture in it. */
export async function unpack(picture: Blob): Promise<Pixels | null> {
  const image = await openBitmap(picture, SIDE).catch(() => null);
  if (!image) return null;
  const pixels = pixelsOf(image, image.width, image.height, SIDE);
  image.close();
  return pixels;
}

/** What a picture or a video shows now, its long side at most `most` pixels; null while it shows nothing. */
export function pixelsOf(image: CanvasImageSource, width: number, height: number, most: number): Pixels | null {
  const scale = Math.min(1, most / Math.max(width, height, 1));
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width * scale);
  canvas.height = Math.round(height * scale);
  const pen = canvas.width > 0 && canvas.height > 0 ? canvas.getContext('2d', { willReadFrequently: true }) : null;
  if (!pen) return null;
  pen.fillStyle = '#ffffff';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.drawImage(image, 0, 0, canvas.width, canvas.height);
  return pen.getImageData(0, 0, canvas.width, canvas.height);
}
