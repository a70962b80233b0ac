import type { OwnCloth } from './cloths';
import type { BodyKind, TraitId, Traits } from './kinds';
import type { MeasureId } from './measures';
import type { SizeId } from './sizes';
import type { Mm, Unit } from './units';

/** What a maker asks for: a garment, its choices, cloth and paper. Whatever is left out has a default. */
export type Order = {
  readonly garment: string;
  readonly choices?: Readonly<Record<string, string | boolean | number>>;
  readonly fit?: string;
  readonly cloth?: string;
  /** The cloth of what is worn beneath it; nothing where left out. */
  readonly over?: string;
  /** A cloth of her own, otherwise like `cloth`. */
  readonly ownCloth?: OwnCloth;
  readonly allowances?: Readonly<Record<string, Mm>>;
  readonly paper?: string;
  readonly date?: string;
};

/** The measurement card, version 1: what a friend gets. Readings are mm, in the order taken. */
export type Card = {
  readonly format: 'hemling-card';
  readonly version: 1;
  readonly toy: {
    readonly name: string;
    readonly body: BodyKind;
    readonly traits: { readonly [T in TraitId]?: Traits[T] };
  };
  readonly unit: Unit;
  /** ISO 8601 calendar date. */
  readonly taken: string;
  readonly note: string;
  readonly readings: { readonly [M in MeasureId]?: readonly Mm[] };
  readonly corrections?: { readonly [S in SizeId]?: Mm };
  readonly orders?: readonly Order[];
  /** JPEG as a data address, at most 40 KiB; in the file form only. */
  readonly photo?: string;
};
