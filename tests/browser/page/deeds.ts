import { measureIds } from '../../../app/body';
import { saveGarment, savePhoto, saveReading, saveToy, setPlace, whereWasI } from '../../../app/storage';
import { claims } from '../../photos/claims';

/** Enters one reading after another, from the step the last life ended at; tells of each only once it is saved. */
export async function enterReadings(toyId: string, tell: (id: string) => void): Promise<never> {
  const { step = '' } = (await whereWasI(toyId)) ?? {};
  const start = Math.max(0, (measureIds as readonly string[]).indexOf(step));
  for (let at = start; ; at = (at + 1) % measureIds.length) {
    const measure = measureIds[at] ?? 'neck-girth';
    await setPlace(toyId, null, measure);
    const { id } = await saveReading(toyId, measure, 100 + at);
    tell(id);
  }
}

/** Keeps `toys` toys with three readings, a garment and a photo of `bytes` random bytes each. */
export async function fillStore(toys: number, bytes: number): Promise<void> {
  for (let each = 0; each < toys; each++) {
    const toy = await saveToy({ name: `Toy ${each}`, kind: 'upright' });
    for (const id of measureIds.slice(0, 3)) await saveReading(toy.id, id, 100 + each);
    await saveGarment(toy.id, { garment: 'hooded-top', choices: { hood: each % 2 === 0 } });
    await savePhoto(toy.id, photo(bytes));
    await setPlace(toy.id, null, 'chest-girth');
  }
}

function photo(bytes: number): Blob {
  const noise = crypto.getRandomValues(new Uint8Array(Math.min(bytes, 65_536)));
  const parts = Array.from({ length: Math.ceil(bytes / noise.length) }, () => noise);
  return new Blob([claims.jpeg.of(640, 640), ...parts], { type: 'image/jpeg' });
}
