import type { Order } from '../../body';
import type { GarmentId, Head } from '../../drafting/catalogue';

/** What may be asked for where garments are chosen. */
export type Ask = 'all' | 'first' | 'no-sewing';

const answers: Readonly<Record<Ask, (row: Head) => boolean>> = {
  all: () => true,
  first: ({ level }) => level === 'first',
  'no-sewing': ({ noSewing }) => noSewing !== undefined,
};

/** What is worth asking for among these: what leaves something, and not everything. */
export function asksAmong(rows: readonly Head[]): readonly Ask[] {
  const parts = (['first', 'no-sewing'] as const).filter((ask) => {
    const left = rows.filter(answers[ask]).length;
    return left > 0 && left < rows.length;
  });
  return parts.length > 0 ? ['all', ...parts] : [];
}

/** The one asked for by an address, where it is worth asking here. */
export function askOf(said: string | null, rows: readonly Head[]): Ask {
  return asksAmong(rows).find((ask) => ask === said) ?? 'all';
}

export function askedFor<Row extends Head>(ask: Ask, rows: readonly Row[]): readonly Row[] {
  return rows.filter(answers[ask]);
}

/** How it is begun: what is to need no sewing starts in a cloth, and with choices, that need none. */
export function orderFor(ask: Ask, { id, noSewing }: Head & { readonly id: GarmentId }): Order {
  return ask === 'no-sewing' && noSewing ? { garment: id, ...noSewing } : { garment: id };
}
