import type { BodyKind } from './kinds';
import type { SizeId } from './sizes';
import type { Mm } from './units';

/** How a measure is taken: tape round, tape over the surface, ruler straight; or chosen by the maker. */
export type Nature = 'girth' | 'surface' | 'straight' | 'wish';

/** The side of the toy that faces the maker while she measures. */
export type View = 'front' | 'side' | 'back';

/** Where on the toy the tape is; the plan walks these in order, round the toy once. */
export type Region = 'whole' | 'head' | 'neck' | 'front' | 'back' | 'arm' | 'waist' | 'leg' | 'tail' | 'wish';

/** Numbers that grow together on a toy: a big head, a fat trunk, a long trunk, thick arms, long arms … */
export type Group =
  | 'head'
  | 'ear'
  | 'trunk'
  | 'length'
  | 'shoulder'
  | 'limb'
  | 'arm'
  | 'leg'
  | 'stride'
  | 'tail'
  | 'wish';

/**
 * What numbers lean on beside their group: how the girth is shared between front and back, how long a top, a bodice
 * or a leg is wished, where the hood's edge sits.
 */
export type Lean = Group | 'split' | 'top' | 'bodice' | 'hem' | 'face';

/**
 * One row of the catalogue. `typical` is the measure on an imagined middling toy of that kind (mm, from memory);
 * `leans` is how much it moves (log scale, about the relative deviation) with one standard deviation of each thing it
 * leans on, its group among them; `spread` how far toys stray from it once all those are known.
 */
export type Measure<Id extends string = string> = {
  readonly id: Id;
  readonly nature: Nature;
  readonly region: Region;
  readonly group: Group;
  readonly view: View;
  readonly typical: { readonly [K in BodyKind]?: Mm };
  readonly leans: { readonly [L in Lean]?: number };
  readonly spread: number;
  /** Finished sizes this measure governs: the places it is checked at. */
  readonly governs: readonly SizeId[];
  /** Measures this step speaks of: taken before it, where both are. */
  readonly after: readonly string[];
  /** Hard to take on some toys, so never required. */
  readonly optional?: true;
};
