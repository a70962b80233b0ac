import type { Mm } from '../../body';
import type { Path } from '../geometry';

/** Seam lines of one piece: named edges that form the ring in order, clockwise as seen; named lines inside it. */
export type Shape = { readonly edges: Readonly<Record<string, Path>>; readonly lines: Readonly<Record<string, Path>> };

/** What a block is fed: finished sizes by its own names. */
export type Fed = Readonly<Record<string, Mm>>;

/** Pure: finished sizes in (by the block's own names), seam lines out. Draws its best for any finite sizes. */
export type Block = { readonly sizes: readonly string[]; readonly draw: (sizes: Fed) => Shape };
