import type { Mm } from '../../body';
import type { Path } from '../geometry';

/** Seam lines of one piece: named edges that form the ring in order, clockwise as seen; named lines inside it. */
export type Shape<E extends string = string, L extends string = string> = {
  readonly edges: { readonly [Name in E]?: Path };
  readonly lines: { readonly [Name in L]?: Path };
};

/**
 * Pure: finished sizes in (by the block's own names), seam lines out. Draws its best for any finite sizes. All names are
 * lists, so that the compiler knows them: `sizes` must be fed, `optional` ones may be left out and are null then; `edges` and
 * `lines` are all that it may draw, not always all at once. A line's name may be numbered: `fold` stands for `fold-1` too.
 */
export type Block<
  S extends string = string,
  O extends string = string,
  E extends string = string,
  L extends string = string,
> = {
  readonly sizes: readonly S[];
  readonly optional: readonly O[];
  readonly edges: readonly E[];
  readonly lines: readonly L[];
  readonly draw: (sizes: Fed<S, O>) => Shape<E, Numbered<L>>;
};

/** What a block is drawn from. */
export type Fed<S extends string = string, O extends string = never> = Readonly<Record<S, Mm> & Record<O, Mm | null>>;

type Numbered<L extends string> = L | `${L}-${number}`;

/** What names anything else than these: TypeScript lets a function give more than was asked, and so a misspelt name, but for this. */
export type NoOthers<R, Name extends string> = { readonly [Other in Exclude<keyof R, Name>]: never };

/** A block from its lists of names and its drawing, which is held to them. */
export function block<
  const S extends string,
  const E extends string,
  Edges extends Shape['edges'],
  const O extends string = never,
  const L extends string = never,
  Lines extends Shape['lines'] = Shape['lines'],
>(of: {
  readonly sizes: readonly S[];
  readonly optional?: readonly O[];
  readonly edges: readonly E[];
  readonly lines?: readonly L[];
  readonly draw: (sizes: Fed<S, O>) => {
    readonly edges: Edges & NoOthers<Edges, E>;
    readonly lines: Lines & NoOthers<Lines, Numbered<L>>;
  };
}): Block<S, O, E, L> {
  return { optional: [], lines: [], ...of } as Block<S, O, E, L>;
}
