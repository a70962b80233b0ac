import type { Flag, MeasureId, Mm, Order, Origin } from '../body';
import type { Path, Point } from './geometry';

/** What an edge is to the maker; allowances go by it. `finished`: laid on an edge of an old garment that is finished there. */
export const roles = ['seam', 'hem', 'neckline', 'opening', 'closure', 'casing', 'fold', 'edge', 'finished'] as const;
export type Role = (typeof roles)[number];

/** How the second edge comes to the first: `laid` is stitched on a line, `folded` is turned on itself. */
export type Join = 'sewn' | 'eased' | 'gathered' | 'pleated' | 'stretched' | 'laid' | 'folded';

export type Edge = {
  readonly name: string;
  readonly role: Role;
  readonly length: Mm;
  readonly allowance: Mm;
  readonly path: Path;
};
export type InnerLine = { readonly name: string; readonly length: Mm; readonly path: Path };
/** `at` is mm along the edge from its start; one tick front, two back. */
export type Notch = { readonly edge: string; readonly at: Mm; readonly ticks: 1 | 2 };

/** One pattern piece: a closed ring of named edges, clockwise as seen. On the fold it is its half, nothing at x < 0. */
export type Piece = {
  readonly name: string;
  readonly copies: number;
  readonly mirrored: boolean;
  readonly onFold: boolean;
  /** Cut from this and not from the garment's cloth: what binds a thick one. */
  readonly of?: OtherCloth;
  readonly edges: readonly Edge[];
  readonly lines: readonly InnerLine[];
  readonly seamLine: Path;
  /** Straight chords, within 0.01 mm of the true parallel. */
  readonly cutLine: Path;
  /** The lengthwise thread of the cloth, drawn inside the piece. */
  readonly grain: readonly [Point, Point];
  readonly notches: readonly Notch[];
  /** Cuts inside the piece (a slit), mm. */
  readonly cuts: readonly Path[];
};

/** Cloths beside the garment's own that a strip is cut from. */
export const otherCloths = ['thin-cotton'] as const;
export type OtherCloth = (typeof otherCloths)[number];

export type Ref = { readonly piece: string; readonly edge: string; readonly times?: number; readonly back?: true };

export type Seam = {
  readonly name: string;
  readonly join: Join;
  readonly sewn: 1 | 2;
  readonly first: readonly Ref[];
  readonly second: readonly Ref[];
  readonly firstLength: Mm;
  readonly secondLength: Mm;
  readonly ratio: number;
};

export type FitRow = {
  readonly place: string;
  readonly body: Mm;
  readonly garment: Mm;
  readonly ease: Mm;
  readonly from: Origin;
  readonly why?: string;
};

/** What must pass, by its girth, through which place; the girth it needs there, and what the place gives. */
export type OpeningRow = {
  readonly passes: MeasureId;
  readonly through: string;
  readonly needs: Mm;
  readonly gives: Mm;
  readonly closure: string;
};
export type Adjustment = {
  readonly code: string;
  readonly by: Mm;
  readonly because: string;
  readonly check: readonly MeasureId[];
};
export type SewingStep = { readonly step: string; readonly seams: readonly string[] };

export const notionKinds = [
  'cloth',
  'bias',
  'strip',
  'hook-and-loop',
  'zip',
  'snaps',
  'ribbon',
  'buttons',
  'loop',
  'elastic',
  'filling',
  'thread',
] as const;
export type NotionKind = (typeof notionKinds)[number];
/**
 * What is not a piece: how much cloth, strips joined, what closes it, elastic, thread. `place` is a seam's name for what lies
 * along one, a piece's for a strip, a layer's for cloth. Lengths are of one; `count` how many where there are several.
 */
export type Notion = {
  readonly kind: NotionKind;
  readonly place: string;
  readonly length: Mm;
  readonly width?: Mm;
  readonly count?: number;
  readonly of?: OtherCloth;
};

/** The order with every default filled in. */
export type FullOrder = Required<Omit<Order, 'choices' | 'allowances' | 'over' | 'ownCloth'>> &
  Pick<Order, 'over' | 'ownCloth'> & {
    readonly choices: Readonly<Record<string, string | boolean | number>>;
    readonly allowances: Readonly<Record<string, Mm>>;
  };

/** The result of drafting: all of it data, no sentences. `toJson` in output/ writes it as draft.json. */
export type Draft = {
  readonly engine: string;
  readonly order: FullOrder;
  readonly toy: string;
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  readonly fit: readonly FitRow[];
  readonly openings: readonly OpeningRow[];
  readonly adjustments: readonly Adjustment[];
  readonly flags: readonly Flag[];
  readonly sewing: readonly SewingStep[];
  readonly notions: readonly Notion[];
  /** The garments it is made of, where there are several (see outfit.ts). */
  readonly outfit?: readonly Draft[];
};

export type Outcome =
  | { readonly ok: true; readonly draft: Draft }
  | { readonly ok: false; readonly flags: readonly Flag[] };
