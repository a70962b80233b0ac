import { saveGarment, savePhoto, saveReading, saveToy, setPlace, setSetting } from '../../app/storage';
import { claims } from '../photos/claims';

/** Bytes that begin as a JPEG does; nothing here decodes them. */
export const JPEG = new Blob([claims.jpeg.of(640, 640)], { type: 'image/jpeg' });

export const longest = 'x'.repeat(10_000);

/** Keeps some toys with two readings, a garment, a photo and a place each, and one setting. */
export async function fillStore(toys: number, name = 'Toy'): Promise<void> {
  for (let each = 1; each <= toys; each++) {
    const toy = await saveToy({
      name: `${name} ${each}`,
      kind: 'upright',
      note: 'Fur & felt',
      corrections: { hem: each },
    });
    await saveReading(toy.id, 'neck-girth', 300 + each / 3);
    await saveReading(toy.id, 'chest-girth', 400 + each / 3);
    await saveGarment(toy.id, { garment: 'hooded-top', choices: { hood: true, hem: 12.7, sleeve: 'long' } });
    await savePhoto(toy.id, JPEG);
    await setPlace(toy.id, null, 'chest-girth');
  }
  await setSetting('unit', 'in');
}
