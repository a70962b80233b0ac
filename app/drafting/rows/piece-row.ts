import type { Mm } from '../../body';
import type { Block } from '../blocks/block';
import type { Role } from '../draft-types';
import type { Cloth } from '../sizes/cloths';
import type { Sizes } from '../sizes/maker';
import type { Look, Names } from './names';

/** Where a block gets a size from: a finished size by its name, a number, or edges drawn before; null: left out. */
type Feed<N extends Names, Left> = N['size'] | Mm | ((look: Look<N>) => Mm | Left);

/** Every size of a block that the garment does not have by that very name is fed; those it may do without, or not. */
type Feeds<N extends Names, S extends string, O extends string> = {
  readonly [Size in S as Size extends N['size'] ? never : Size]: Feed<N, never>;
} & { readonly [Size in S as Size extends N['size'] ? Size : never]?: Feed<N, never> } & {
  readonly [Size in O]?: Feed<N, null> | null;
};

type Common<N extends Names> = {
  readonly copies: number | ((sizes: Sizes<N['size']>) => number);
  readonly mirrored: boolean;
  readonly onFold: boolean;
  /** Sizes worked out from edges already drawn, for rows after this one. */
  readonly takes?: (look: Look<N>) => { readonly [Size in N['size']]?: Mm };
  /** A piece of the wearer's back: its notches have two ticks. */
  readonly back?: true;
  /** So small a piece that its hems are turned 6 mm at most. */
  readonly narrowHem?: true;
  /** Cut across the grain at 45°, so that it follows a curve: in which cloth. */
  readonly bias?: (cloth: Cloth) => boolean;
  readonly when?: (choices: N['choices']) => boolean;
};

/** One piece: pieces are drawn in the order of their rows. `edges` are all that it may have, as `piece.edge`. */
export type PieceRow<N extends Names = Names, E extends string = string> = Common<N> & {
  readonly name: string;
  readonly block: Block;
  readonly sizes: Readonly<Record<string, Feed<N, null> | null>>;
  readonly roles: (choices: N['choices']) => Readonly<Record<string, Role>>;
  readonly cuts: readonly string[];
  readonly edges: readonly E[];
};

/** The edges and lines of a piece drawn by a block, as `piece.edge`. */
export type EdgesOf<P extends string, B> =
  B extends Block<infer _S, infer _O, infer E, infer L> ? `${P}.${E | L}` : never;

/**
 * A row for a piece drawn by a block. What the block takes is fed from the garment's sizes: `sizes` says from which, but
 * for names that agree. Edges without a role are plain seams; lines in `cuts` are cut open. Written `piece<Names>()(…)`: the names
 * are said, the block's are found out.
 */
export function piece<N extends Names>() {
  return <const P extends string, S extends string, O extends string, E extends string, L extends string, K extends E>(
    name: P,
    drawn: Block<S, O, E, L>,
    row: Common<N> & {
      readonly sizes?: Feeds<N, NoInfer<S>, NoInfer<O>>;
      readonly roles: (choices: N['choices']) => { readonly [Name in K]: Role };
      readonly cuts?: readonly NoInfer<L>[];
    },
  ): PieceRow<N, `${P}.${E | L}`> => {
    const edges = [...drawn.edges, ...drawn.lines].map((edge) => `${name}.${edge}` as const);
    // Held to the block's names above; whoever reads rows goes by what the block itself lists.
    return { sizes: {}, cuts: [], ...row, name, edges, block: drawn as unknown as Block } as PieceRow<
      N,
      `${P}.${E | L}`
    >;
  };
}
