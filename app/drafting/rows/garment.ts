import type { BodyKind, MeasureId, Mm, Traits } from '../../body';
import type { Block } from '../blocks/block';
import type { Ref, Role } from '../draft-types';
import type { Choices, SizeMaker, Sizes, Wearer } from '../sizes/wearer';

export type Choice =
  | { readonly kind: 'one'; readonly of: readonly string[]; readonly fallback: string }
  | { readonly kind: 'yes'; readonly fallback: boolean }
  | {
      readonly kind: 'count' | 'share' | 'length';
      readonly min: number;
      readonly max: number;
      readonly fallback: number;
    };

/** A row that counts only with some choices. */
export type When = { readonly when?: (choices: Choices) => boolean };

/** What rows may look at: the sizes so far and the edges drawn with them. */
export type Look = {
  readonly sizes: Sizes;
  readonly choices: Choices;
  readonly wearer: Wearer;
  /** Length of an edge, mm; a RangeError where no such piece or edge is drawn. */
  readonly length: (piece: string, edge: string) => Mm;
};

export type PieceRow = When & {
  readonly name: string;
  readonly copies: number | ((sizes: Sizes) => number);
  readonly mirrored: boolean;
  readonly onFold: boolean;
  readonly block: Block;
  /** The block's own size names, each fed from a finished size. Names that agree need no entry. */
  readonly sizes?: Readonly<Record<string, string>>;
  /** Sizes taken from edges already drawn: pieces are drawn in the order of their rows. */
  readonly takes?: (look: Look) => Sizes;
  readonly roles: (choices: Choices) => Readonly<Record<string, Role>>;
  /** A piece of the wearer's back: its notches have two ticks. */
  readonly back?: true;
  /** Lines along which the piece is cut open. */
  readonly cuts?: readonly string[];
  /** Cut across the grain at 45°, so that it follows a curve. */
  readonly bias?: true;
};

/** A chain of edges, which choices and sizes may change. */
export type Refs = readonly Ref[] | ((choices: Choices, sizes: Sizes) => readonly Ref[]);

export function refsOf(refs: Refs, { choices, sizes }: Pick<Look, 'choices' | 'sizes'>): readonly Ref[] {
  return typeof refs === 'function' ? refs(choices, sizes) : refs;
}

export type SeamRow = When & {
  readonly name: string;
  readonly sewn: 1 | 2;
  readonly first: Refs;
  readonly second: Refs;
  /** How the second comes to the first where it is longer; `sewn` and `eased` are told from the ratio. */
  readonly longer?: 'gathered' | 'pleated' | ((choices: Choices) => 'gathered' | 'pleated');
  readonly kind?: 'laid' | 'folded';
  /** Seam ends whose neighbours need not run on smoothly: V-necks, closures, the hood's chin. */
  readonly cornered?: true;
};

/** One knob: a size that may be turned as far as `limit`, and what is said when it was. */
export type Turn = {
  readonly size: string;
  readonly limit: (look: Look, start: Sizes) => Mm;
  /** Left out where the turn is no news to the maker. */
  readonly code?: string;
  readonly check?: readonly MeasureId[];
};

/** Turn the knobs, in order, until the ratio lies in the aim. */
export type MatchRow = When & {
  readonly what: string;
  readonly ratio: (look: Look) => number;
  readonly aim: (wearer: Wearer) => readonly [number, number];
  readonly turn: readonly Turn[];
  /** What is left when the knobs are spent: gathered in, if the cloth gathers; taken as it is, and said; refused. */
  readonly rest: 'gather' | 'accept' | 'refuse';
  /** Gathers in up to this ratio in any cloth, where there is no other way. */
  readonly gathersTo?: number;
  readonly check: readonly MeasureId[];
};

/** Where a garment is better made another way: the choice changes, and why is said. */
export type Instead = {
  readonly choice: string;
  readonly from: string | boolean;
  readonly to: string | boolean;
  readonly code: string;
  readonly check: readonly MeasureId[];
  readonly when: (look: Look, failed: string | null) => boolean;
  /** Only where the maker left the choice to us. */
  readonly onlyAuto?: true;
};

export type FitPlace = When & {
  readonly place: string;
  readonly measure: MeasureId;
  readonly garment: (look: Look) => Mm;
  /** A code, where the garment may be under the body. */
  readonly why?: (look: Look) => string | null;
};

/** A choice that makes no sense for a toy of these traits, or beside another: it changes before anything is measured. */
export type Unsuited = Omit<Instead, 'code' | 'check' | 'when' | 'onlyAuto'> & {
  /** Left out where the change is no news to the maker. */
  readonly code?: string;
  readonly when: (traits: Traits, choices: Choices) => boolean;
};

/** Something worth telling of a draft: the numbers that explain it, or null where there is nothing to tell. */
export type NoteRow = When & {
  readonly code: string;
  readonly measures: readonly MeasureId[];
  readonly told: (look: Look) => Readonly<Record<string, number>> | null;
};

/** Something that must pass on the way on and off, and what it passes through. */
export type Passage = When & {
  readonly measure: MeasureId;
  readonly through: string;
  readonly gives: (sizes: Sizes) => Mm;
  /** A place that a slit or an opening from the neck makes larger. */
  readonly atNeck?: true;
  /** Seamed all round: stretches half as far. */
  readonly seamed?: true;
};

/** A garment is data: pieces made of named edges, and seams that join edges to edges. The rest follows. */
export type Garment = {
  readonly id: string;
  readonly bodies: readonly BodyKind[];
  readonly choices: Readonly<Record<string, Choice>>;
  /** What each choice left to us starts as. */
  readonly auto: Readonly<Record<string, string>>;
  /** Where it is opened all the way when nothing less lets the toy in. */
  readonly opensAt?: 'front' | 'back';
  readonly needs: readonly ({ readonly measure: MeasureId } & When)[];
  readonly sizes: readonly SizeMaker[];
  readonly passages: readonly Passage[];
  readonly pieces: readonly PieceRow[];
  readonly seams: readonly SeamRow[];
  readonly match: readonly MatchRow[];
  readonly unsuited: readonly Unsuited[];
  readonly instead: readonly Instead[];
  readonly notes: readonly NoteRow[];
  readonly fit: readonly FitPlace[];
};

/** Some rows of a garment that belong together (a bodice, a hood): garments are put together from parts. */
export type Part = Partial<Omit<Garment, 'id' | 'bodies' | 'choices' | 'auto' | 'opensAt'>>;

/** A part that counts only with some choices: every row of it does. */
export function only(when: (choices: Choices) => boolean, part: Part): Part {
  const rows = <Row extends When>(each: readonly Row[] = []): Row[] =>
    each.map((row) => ({ ...row, when: (choices) => when(choices) && (row.when?.(choices) ?? true) }));
  return {
    needs: rows(part.needs),
    sizes: (part.sizes ?? []).map(
      (make) => (wearer, sizes) => (when(wearer.choices) ? make(wearer, sizes) : { sizes: {} }),
    ),
    passages: rows(part.passages),
    pieces: rows(part.pieces),
    seams: rows(part.seams),
    match: rows(part.match),
    unsuited: part.unsuited ?? [],
    instead: (part.instead ?? []).map((row) => ({
      ...row,
      when: (look, failed) => when(look.choices) && row.when(look, failed),
    })),
    notes: rows(part.notes),
    fit: rows(part.fit),
  };
}

/** A garment from its own head and its parts, whose rows follow each other in the parts' order. */
export function assemble(
  head: Pick<Garment, 'id' | 'bodies' | 'choices' | 'auto' | 'opensAt'>,
  parts: readonly Part[],
): Garment {
  return {
    ...head,
    // What must pass on the way on and off is measured too.
    needs: parts.flatMap((part) => [...(part.needs ?? []), ...(part.passages ?? [])]),
    sizes: parts.flatMap((part) => part.sizes ?? []),
    passages: parts.flatMap((part) => part.passages ?? []),
    pieces: parts.flatMap((part) => part.pieces ?? []),
    seams: parts.flatMap((part) => part.seams ?? []),
    match: parts.flatMap((part) => part.match ?? []),
    unsuited: parts.flatMap((part) => part.unsuited ?? []),
    instead: parts.flatMap((part) => part.instead ?? []),
    notes: parts.flatMap((part) => part.notes ?? []),
    fit: parts.flatMap((part) => part.fit ?? []),
  };
}

/** Length of a chain of edges, once over. */
export function sumOf(refs: readonly Ref[], look: Look): Mm {
  return refs.reduce((sum, ref) => sum + look.length(ref.piece, ref.edge), 0);
}

/** Rows that count with these choices. */
export function active<Row extends When>(rows: readonly Row[], choices: Choices): readonly Row[] {
  return rows.filter((row) => row.when?.(choices) ?? true);
}
