import type { Body, MeasureId, Mm } from '../body';
import type { Draft, Edge } from '../drafting/draft-types';

/** A share beyond this is drawn as this: a picture, not a measure. */
const WIDEST = 2.4;

export type Read = ReturnType<typeof reader>;

/** A draft's pieces, edges, choices and fit by their names; lengths beside the body's own. */
export function reader(draft: Draft, body: Body) {
  const piece = (name: string) => draft.pieces.find((each) => each.name === name);
  const edge = (name: string, of: string): Edge | undefined => piece(name)?.edges.find((each) => each.name === of);
  const ofBody = (garment: Mm, measure: MeasureId): number => {
    const own = body.sizes[measure]?.value;
    return own ? Math.min(garment / own, WIDEST) : 1;
  };
  return {
    piece,
    edge,
    ofBody,
    of: (measure: MeasureId): Mm => body.sizes[measure]?.value ?? 0,
    long: (name: string, of: string): Mm => edge(name, of)?.length ?? 0,
    choice: (name: string) => draft.order.choices[name],
    fit: (place: string): number => {
      const row = draft.fit.find((each) => each.place === place);
      return row && row.body > 0 ? Math.min(row.garment / row.body, WIDEST) : 1;
    },
  };
}
