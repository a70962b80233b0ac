import { useEffect, useState } from 'preact/hooks';
import { type Body, type Taught, teach } from '../../../body';
import { listToys, readingsOf, type Toy } from '../../../storage';
import { useLiking } from '../liking';
import { noteHappening } from '../trouble/happened';
import { bodyOf } from './body-of';

/** More toys than this teach no more; see `teach`. */
const MOST_TOYS = 6;

/** What was worked out last, and of which toys and numbers: every step asks, and they seldom change. */
let last: { readonly key: string; readonly taught: Taught } | null = null;

/**
 * What the maker's other toys of this kind say of this one; undefined while they are read, where there are none, and where she
 * does not want it. Worked out from her store on this device and kept nowhere.
 */
export function useTaught({ id, kind }: Toy): Taught | undefined {
  const { learns } = useLiking();
  const [taught, setTaught] = useState<Taught>();
  useEffect(() => {
    let gone = false;
    const tell = (told: Taught | undefined) => gone || setTaught(told);
    if (learns) taughtBy({ id, kind }).then(tell, noteHappening);
    else tell(undefined);
    return () => {
      gone = true;
    };
  }, [id, kind, learns]);
  return taught;
}

/** The same, read from the store now. */
export async function taughtBy({ id, kind }: Pick<Toy, 'id' | 'kind'>): Promise<Taught | undefined> {
  const others = (await listToys()).filter((toy) => toy.id !== id && toy.kind === kind).slice(0, MOST_TOYS);
  const bodies = await Promise.all(
    others.reverse().map(async (toy): Promise<Body> => bodyOf({ toy, readings: await readingsOf(toy.id) })),
  );
  if (bodies.length === 0) return undefined;
  const key = JSON.stringify(bodies);
  if (last?.key !== key) last = { key, taught: teach(bodies) };
  return last.taught;
}
