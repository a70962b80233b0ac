import type { BodyKind } from './kinds';
import type { SizeId } from './sizes';
import type { Mm } from './units';

/** How a measure is taken: tape round, tape over the surface, ruler straight; or chosen by the maker. */
export type Nature = 'girth' | 'surface' | 'straight' | 'wish';

/** The side of the toy that faces the maker while she measures. */
export type View = 'front' | 'side' | 'back';

/** Where on the toy the tape is; the plan walks these in order, round the toy once. */
export type Region = 'head' | 'neck' | 'front' | 'back' | 'arm' | 'waist' | 'leg' | 'tail' | 'wish';

/** Numbers that grow together on a toy: what the estimates lean on. */
export type Group = 'head' | 'ear' | 'trunk' | 'length' | 'shoulder' | 'arm' | 'limb' | 'leg' | 'tail' | 'wish';

/**
 * One row of the catalogue. `typical` is the measure on an imagined middling toy of that kind (mm, from memory) and
 * `spread` how far toys stray from it once their size and their group's proportion are known (log scale, about the
 * relative deviation).
 */
export type Measure<Id extends string = string> = {
  readonly id: Id;
  readonly nature: Nature;
  readonly region: Region;
  readonly group: Group;
  readonly view: View;
  readonly typical: { readonly [K in BodyKind]?: Mm };
  readonly spread: number;
  /** Finished sizes this measure governs: the places it is checked at. */
  readonly governs: readonly SizeId[];
  /** Measures whose marks or threads this step speaks of: taken before it. */
  readonly after: readonly string[];
  /** Hard to take on some toys, so never required. */
  readonly optional?: true;
};
