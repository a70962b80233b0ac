import type { Mm } from '../../body';
import type { Ref } from '../draft-types';
import type { Sizes } from '../sizes/maker';
import type { Wearer } from '../sizes/wearer';

/**
 * What rows may speak of. Every row of a part is checked against its part's names, and a part's names against what its
 * garment has: so a misspelt choice, size, piece or edge does not compile. `edge` names edges and lines as `piece.edge`.
 */
export type Names = { readonly choices: object; readonly size: string; readonly edge: string };

/** No size and no edge: what a part takes that stands by itself. */
export type Nothing = { readonly choices: object; readonly size: never; readonly edge: never };

/** The names of both. */
export type Both<A extends Names, B extends Omit<Names, 'choices'>> = {
  readonly choices: A['choices'];
  readonly size: A['size'] | B['size'];
  readonly edge: A['edge'] | B['edge'];
};

/** A reference to one of these edges. */
export type RefTo<E extends string> = string extends E
  ? Ref
  : E extends `${infer P}.${infer X}`
    ? { readonly piece: P; readonly edge: X; readonly times?: number; readonly back?: true }
    : never;

/** The edge that a reference is to, as `piece.edge`. */
export type EdgeIn<R extends Ref> = R extends {
  readonly piece: infer P extends string;
  readonly edge: infer X extends string;
}
  ? `${P}.${X}`
  : never;

/** What rows may look at: the sizes so far and the edges drawn with them. */
export type Look<N extends Names = Names> = {
  readonly sizes: Sizes<N['size']>;
  readonly choices: N['choices'];
  readonly wearer: Wearer<N['choices']>;
  /** How long the slit is that lets the toy in, mm; null without one. */
  readonly slit: Mm | null;
  /** Length of an edge, mm; a RangeError where no such piece or edge is drawn. */
  readonly length: (edge: N['edge']) => Mm;
};

/** A chain of edges, which choices and sizes may change. */
export type Refs<N extends Names> =
  | readonly RefTo<N['edge']>[]
  | ((choices: N['choices'], sizes: Sizes<N['size']>) => readonly RefTo<N['edge']>[]);

/** Length of a chain of edges, once over. */
export function sumOf<E extends string>(refs: readonly RefTo<E>[], look: { readonly length: (edge: E) => Mm }): Mm {
  return refs.reduce((sum, { piece, edge }) => sum + look.length(`${piece}.${edge}` as E), 0);
}
