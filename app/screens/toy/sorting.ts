import type { Garment } from '../../storage';
import type { Liking } from '../shared/defaults';

type Sorting = Liking['sorting'];

export const orders: readonly Sorting[] = ['newest', 'name', 'made'];

/** The garments in the order she likes: the newest first, by name, or what was made first and the rest after it. */
export function sorted(
  garments: readonly Garment[],
  order: Sorting,
  nameOf: (garment: Garment) => string,
  locale: string,
): readonly Garment[] {
  const { compare } = new Intl.Collator(locale);
  const newest = (one: Garment, two: Garment) => two.createdAt - one.createdAt || (one.id < two.id ? -1 : 1);
  const by: Readonly<Record<Sorting, (one: Garment, two: Garment) => number>> = {
    newest,
    name: (one, two) => compare(nameOf(one), nameOf(two)) || newest(one, two),
    made: (one, two) => (two.made?.at ?? -1) - (one.made?.at ?? -1) || newest(one, two),
  };
  return [...garments].sort(by[order]);
}
