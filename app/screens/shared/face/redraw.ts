/** Long side of a kept photo, pixels: sharp on a phone, small in a backup. */
const SIDE = 640;
const QUALITY = 0.85;

/** A picture that cannot be read as one. */
export class PictureError extends Error {
  override readonly name = 'PictureError';
  readonly code = 'picture-unreadable';
}

/**
 * The middle square of a picture, drawn anew as a JPEG: whatever the camera wrote into the file (place, time, device)
 * is gone. Throws PictureError.
 */
export async function redraw(picture: Blob): Promise<Blob> {
  const image = await createImageBitmap(picture).catch(() => {
    throw new PictureError();
  });
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
    canvas.toBlob((drawn) => (drawn ? resolve(drawn) : reject(new PictureError())), 'image/jpeg', QUALITY),
  );
}
