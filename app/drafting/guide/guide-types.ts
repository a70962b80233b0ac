import type { Mm } from '../../body';
import type { Piece, Seam } from '../draft-types';
import type { Path, Point } from '../geometry';

/** What is done at a step; `guide.how` in the locales has the words. */
export const kinds = [
  'stay',
  'snip',
  'join',
  'ease',
  'gather',
  'stretch',
  'pleat',
  'bag',
  'ring',
  'bind',
  'bind-over',
  'bind-end',
  'inside',
  'turn-in',
  'lap',
  'gap',
  'by-hand',
  'baste',
  'place',
  'slit',
  'dart',
  'dart-open',
  'hem',
  'raw-hem',
  'closure',
  'casing',
  'turn',
] as const;
export type Kind = (typeof kinds)[number];

/** Something to mind at a step: a code, and the lengths in its words, mm. */
export type Note = { readonly code: string; readonly values: Readonly<Record<string, number>> };

/**
 * One piece as it lies in a picture; lengths in mm, the picture's own corner at 0, 0. A piece on the fold lies unfolded.
 * `now` is what is sewn at this step, `also` the same on its other side, `sewn` what is sewn already.
 */
export type Part = {
  readonly piece: string;
  /** How many of it lie on each other. */
  readonly layers: number;
  readonly outline: Path;
  readonly middle: Path;
  readonly now: readonly Path[];
  readonly also: readonly Path[];
  readonly sewn: readonly Path[];
  /** Names of the edges in `sewn`. */
  readonly sewnEdges: readonly string[];
  readonly lines: readonly Path[];
  readonly ticks: readonly Path[];
  /** Arrows from what is folded to where it comes to lie. */
  readonly folds: readonly Path[];
  /** Where its name may stand on it, the best first, and how wide, mm. */
  readonly inside: readonly { readonly at: Point; readonly room: Mm }[];
};

/** A picture of a step: the pieces side by side, what is joined, and the places that meet, numbered alike. */
export type Scene = {
  readonly width: Mm;
  readonly height: Mm;
  readonly parts: readonly Part[];
  readonly meets: readonly { readonly number: number; readonly at: Point }[];
  /** Between places that meet. */
  readonly ties: readonly Path[];
  /** Between pieces in the picture that are joined already; the seam's name. */
  readonly threads: readonly { readonly seam: string; readonly path: Path }[];
};

export type GuideStep = {
  /** Unique in its guide, and the same as long as the garment is sewn the same way. */
  readonly id: string;
  readonly kind: Kind;
  /** All that is sewn at this step, by name. */
  readonly seams: readonly Seam[];
  /** The pieces that are joined, as they follow on the first side and the second. */
  readonly first: readonly string[];
  readonly second: readonly string[];
  /** What is added to its edges, or turned, mm. */
  readonly allowance: Mm;
  /** What is joined lies on itself, folded: a piece that there is only one of. */
  readonly folds?: true;
  /** A casing that is turned while it lies flat: its elastic is made fast at both ends. */
  readonly flat?: true;
  /** A casing that shares its elastic with another, which it goes on into past an edge that is open. */
  readonly shares?: true;
  /** Sewn this long in all, mm. */
  readonly length: Mm;
  readonly notes: readonly Note[];
  readonly scene: Scene;
};

export type CutRow = Pick<Piece, 'copies' | 'mirrored' | 'onFold' | 'of'> & { readonly piece: string };

/** How an edge is finished, and by which seam; a fold and an edge left as cut by none. */
export type Finish = {
  readonly piece: string;
  readonly edge: string;
  readonly how: 'sewn' | 'enclosed' | 'bound' | 'turned' | 'stitched' | 'raw' | 'fold';
  readonly seam?: string;
};

export type Guide = {
  readonly cut: readonly CutRow[];
  readonly steps: readonly GuideStep[];
  readonly finishes: readonly Finish[];
};
