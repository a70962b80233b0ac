import { readable } from './aside';
import { nextMoment, wallClock } from './clock';
import { read, write } from './connection';
import { StoreError } from './errors';
import { isPicture } from './pictures';
import { readRow } from './shapes';

/**
 * Keeps the photo of a toy or a garment, by its id, in the place of an earlier one; null removes it. The picture is stored as it is given: redraw
 * it before, so that the camera's data is gone. JPEG, PNG or WebP up to 2 MB, else `store-bad-value`.
 */
export async function savePhoto(toyId: string, picture: Blob | null): Promise<void> {
  if (!picture) return write(['photos'], undefined, (store) => store.photos.delete(toyId));
  const bytes = await picture.arrayBuffer();
  const row = readRow('photos', { toyId, type: picture.type, bytes, changedAt: wallClock() });
  if (!row || !isPicture(row)) throw new StoreError('store-bad-value', picture);
  await write(['photos'], picture, async (store) => {
    const earlier = await store.photos.get(toyId);
    await store.photos.put({ ...row, changedAt: nextMoment(earlier?.changedAt) });
  });
}

/** The photo of a toy or a garment, or undefined; also where what is kept is no picture that may be shown: it stays, and goes into backups. */
export async function photoOf(toyId: string): Promise<Blob | undefined> {
  const found = await read((store) => store.photos.get(toyId));
  const photo = found && readable('photos', [found])[0];
  return photo && isPicture(photo) ? new Blob([photo.bytes], { type: photo.type }) : undefined;
}
