import { useEffect, useState } from 'preact/hooks';
import { listToys, readingsOf, type Toy } from '../../storage';
import { lackingOf } from '../shared/making/lacking';
import { type Making, makingOf } from '../shared/making/making';
import { taughtBy } from '../shared/making/taught';
import { noteHappening } from '../shared/trouble/happened';

/** More toys than these are not looked at. */
const MOST_LOOKED_AT = 60;

/** Her other toys of this kind that the same garment can be drawn for, from the numbers she has; null while they are read. */
export function useOthers(asked: boolean, { toy, garment, row, way }: Making): readonly Making[] | null {
  const [others, setOthers] = useState<readonly Making[] | null>(null);
  useEffect(() => {
    if (!asked) return;
    let stale = false;
    const look = async () => {
      const toys = (await listToys()).filter(({ id, kind }) => id !== toy.id && kind === toy.kind);
      const found: Making[] = [];
      for (const other of toys.slice(0, MOST_LOOKED_AT)) {
        const making = makingOf(await numbersOf(other));
        if (!lackingOf(making)) found.push(making);
      }
      if (!stale) setOthers(found);
    };
    const numbersOf = async (other: Toy) => ({
      ...{ toy: other, garment, row, way },
      readings: await readingsOf(other.id),
      taught: await taughtBy(other),
    });
    look().catch(noteHappening);
    return () => {
      stale = true;
    };
  }, [asked, toy.id, JSON.stringify(garment.order)]);
  return others;
}
