import type { BodyKind, MeasureId, Mm, Traits } from '../../body';
import type { Choices } from '../heads/choice';
import type { SizeMaker, Sizes } from '../sizes/maker';
import type { Wearer } from '../sizes/wearer';
import type { Look, Names, Refs } from './names';
import type { PieceRow } from './piece-row';

/** A row that counts only with some choices. */
export type When<N extends Names = Names> = { readonly when?: (choices: N['choices']) => boolean };

export type SeamRow<N extends Names = Names> = When<N> & {
  readonly name: string;
  readonly sewn: 1 | 2;
  readonly first: Refs<N>;
  readonly second: Refs<N>;
  /** How the second comes to the first where it is longer (`stretched`: the first is a band pulled to its length); `sewn` and `eased` are told from the ratio. */
  readonly longer?: 'gathered' | 'pleated' | 'stretched' | ((choices: N['choices']) => 'gathered' | 'pleated');
  readonly kind?: 'laid' | 'folded';
  /** The seam this one runs on from: both are sewn in one go. */
  readonly from?: string;
  /** A strip sewn round a raw edge: neither carries an allowance, for the strip folds over the edge itself. */
  readonly bound?: true;
  /** Seams that are sewn before this one, where the trade has a reason that edges alone do not show. */
  readonly after?: (choices: N['choices'], sizes: Sizes<N['size']>) => readonly string[];
  /** Seam ends whose neighbours need not run on smoothly: V-necks, closures, the hood's chin. */
  readonly cornered?: true;
  /** Its notches tell the front of a piece from its back: it has some, however short. */
  readonly tellsFront?: true;
  /** A dart that is open at an edge: it ends in a point, where nothing runs on; none where its block drew none. */
  readonly openDart?: true;
};

/** One knob: a size that may be turned as far as `limit`, and what is said when it was. */
export type Turn<N extends Names = Names> = {
  readonly size: N['size'];
  readonly limit: (look: Look<N>, start: Sizes<N['size']>) => Mm;
  /** Left out where the turn is no news to the maker. */
  readonly code?: string;
  readonly check?: readonly MeasureId[];
};

/** Turn the knobs, in order, until the ratio lies in the aim. */
export type MatchRow<N extends Names = Names> = When<N> & {
  readonly what: string;
  readonly ratio: (look: Look<N>) => number;
  readonly aim: (wearer: Wearer<N['choices']>) => readonly [number, number];
  readonly turn: readonly Turn<N>[];
  /** What is left when the knobs are spent: gathered in, if the cloth gathers; taken as it is, and said; refused; left to a later row. */
  readonly rest: 'gather' | 'accept' | 'refuse' | 'leave';
  /** Gathers in up to this ratio in any cloth, where there is no other way. */
  readonly gathersTo?: number;
  readonly check: readonly MeasureId[];
};

/** A choice that changes from one value to another, by the choice's name. */
type Change<C> = {
  [Name in keyof C]: { readonly choice: Name & string; readonly from: C[Name]; readonly to: C[Name] };
}[keyof C];

/** Where a garment is better made another way: the choice changes, and why is said. */
export type Instead<N extends Names = Names> = Change<N['choices']> & {
  readonly code: string;
  readonly check: readonly MeasureId[];
  readonly when: (look: Look<N>, failed: string | null) => boolean;
  /** Why, where the choice's own name does not say it. */
  readonly because?: string;
  /** Only where the maker left the choice to us. */
  readonly onlyAuto?: true;
};

/** A choice that makes no sense for a toy of these traits, or beside another: it changes before anything is measured. */
export type Unsuited<N extends Names = Names> = Change<N['choices']> & {
  /** Left out where the change is no news to the maker. */
  readonly code?: string;
  readonly when: (traits: Traits, choices: N['choices'], kind: BodyKind) => boolean;
};

export type FitPlace<N extends Names = Names> = When<N> & {
  readonly place: string;
  /** Only on these kinds of body, which have the measure. */
  readonly bodies?: readonly BodyKind[];
  readonly measure: MeasureId;
  readonly garment: (look: Look<N>) => Mm;
  /** A code, where the garment may be under the body. */
  readonly why?: (look: Look<N>) => string | null;
  /** The girth that the fit asked for, and why the garment is wider where it is. */
  readonly asked?: (look: Look<N>) => Mm;
  readonly because?: (look: Look<N>) => string;
};

/** Something worth telling of a draft: the numbers that explain it, or null where there is nothing to tell. */
export type NoteRow<N extends Names = Names> = When<N> & {
  readonly code: string;
  readonly measures: readonly MeasureId[];
  readonly told: (look: Look<N>) => Readonly<Record<string, number>> | null;
};

/** Something along a seam that is bought and not cut: what closes an opening, or an elastic. `place` is the seam's name. */
export type NotionRow<N extends Names = Names> = When<N> & {
  readonly kind: 'closure' | 'loop' | 'elastic' | 'filling';
  readonly place: string;
  readonly length: (look: Look<N>) => Mm;
  /** Left and right. */
  readonly count?: 2;
};

/**
 * Something that must pass on the way on and off, and what it passes through. `gives` is known before anything is drawn, and so
 * may ask for an opening; `drawn` is what the finished edge gives.
 */
export type Passage<N extends Names = Names> = When<N> & {
  readonly measure: MeasureId;
  /** It may go on by what this measures instead, where that is less: feet first. */
  readonly or?: MeasureId;
  /** Opened all the way it may be stepped into where the measure itself does not pass: this has to, then. */
  readonly steppedInto?: MeasureId;
  readonly through: string;
  readonly gives?: (sizes: Sizes<N['size']>, wearer: Wearer<N['choices']>) => Mm;
  readonly drawn?: (look: Look<N>) => Mm;
  /** How much wider the place is once front or back are opened all the way; left out where that opens nothing here. */
  readonly opened?: (sizes: Sizes<N['size']>) => Mm;
  /** Opened, nothing of it stays closed round what has to pass. */
  readonly whole?: true | ((sizes: Sizes<N['size']>) => boolean);
  /** A slit down from the neck makes this place larger. */
  readonly slit?: true;
  /** Seamed all round: stretches half as far. */
  readonly seamed?: true;
};

/** The centre that a slit may run down: how long it is, from neckline to hem. */
export type Centre<N extends Names = Names> = When<N> & { readonly length: (sizes: Sizes<N['size']>) => Mm };

/** The rows of a part: all of a garment but its head. `E`: the edges its pieces may have, `G`: the sizes it may make. */
export type Rows<N extends Names = Names, G extends string = string, E extends string = string> = {
  readonly sizes: readonly (SizeMaker<N['choices'], N['size'], G> & When<N>)[];
  readonly passages: readonly Passage<N>[];
  readonly centre: readonly Centre<N>[];
  readonly pieces: readonly PieceRow<N, E>[];
  readonly seams: readonly SeamRow<N>[];
  readonly match: readonly MatchRow<N>[];
  readonly unsuited: readonly Unsuited<N>[];
  readonly instead: readonly Instead<N>[];
  readonly notes: readonly NoteRow<N>[];
  readonly fit: readonly FitPlace<N>[];
  readonly notions: readonly NotionRow<N>[];
};

/** Any names: what the pipeline, which knows no garment, reads rows by. */
export type AnyNames = { readonly choices: Choices; readonly size: string; readonly edge: string };
export type AnyRows = Rows<AnyNames>;
