import type { BodyKind, MeasureId, TraitId, Traits } from '../../body';
import type { Choice, Choices, Chosen, Value } from './choice';

/** What a garment asks of its maker. */
export const levels = ['first', 'practice', 'patience'] as const;
export type Level = (typeof levels)[number];

/** How a toy looks; left out where a garment is asked of no toy in particular. */
export type Looks = { readonly kind: BodyKind; readonly traits: Traits };

/**
 * A measure that a garment needs, with some choices or for some toys only, or always; a choice may still be left to us. A
 * quiet one is never a step: it is used where it is known, else estimated, because others tell it well enough or it
 * moves no line far.
 */
export type Need<C = object> = {
  readonly measure: MeasureId;
  readonly when?: (choices: C, looks?: Looks) => boolean;
  readonly quiet?: true;
};

/**
 * What screens and lists need of a garment: plain data apart from how it is made, so that choosing one loads no block.
 * `auto`: what each choice left to us starts as.
 */
export type HeadOf<C extends Readonly<Record<string, Choice>>> = {
  readonly id: string;
  readonly bodies: readonly BodyKind[];
  readonly level: Level;
  /** What of a toy's looks it is cut by: these alone are asked for it, and drafting may read no others. */
  readonly looks: readonly TraitId[];
  /** Cut with scissors and put on: in this cloth, with these choices. */
  readonly noSewing?: { readonly cloth: string; readonly choices?: Partial<Chosen<C>> };
  readonly choices: C;
  readonly auto: Starts<C>;
  /** Where it is opened all the way when nothing less lets the toy in. */
  readonly opensAt?: 'front' | 'back';
  /** And where for a firm toy, if elsewhere: it cannot be bent. */
  readonly opensFirmAt?: 'front' | 'back';
  readonly needs: readonly Need<Chosen<C>>[];
  /** Which values of a choice make sense beside the others, where not all do: a choice with fewer than two is not asked. */
  readonly suits?: { readonly [Name in keyof C]?: (choices: Chosen<C>, value: Chosen<C>[Name]) => boolean };
};

/** Any garment's head, read without its names. */
export type Head = Omit<HeadOf<Readonly<Record<string, Choice>>>, 'auto' | 'needs' | 'suits' | 'noSewing'> & {
  readonly noSewing?: { readonly cloth: string; readonly choices?: Choices };
  readonly auto: Readonly<Record<string, string>>;
  readonly needs: readonly Need<Choices>[];
  readonly suits?: Readonly<Record<string, (choices: Choices, value: Value) => boolean>>;
};

/** A value for each choice that may be left to us. */
type Starts<C> = {
  readonly [Name in keyof C as C[Name] extends { readonly of: readonly (infer V)[] }
    ? 'auto' extends V
      ? Name
      : never
    : never]: C[Name] extends { readonly of: readonly (infer V)[] } ? Exclude<V, 'auto'> : never;
};

/** A head from its data, held to its own choices. */
export function head<const Id extends string, const C extends Readonly<Record<string, Choice>>>(
  of: HeadOf<C> & { readonly id: Id },
): HeadOf<C> & { readonly id: Id } {
  return of;
}

/** Needs without condition, or all with the same one. */
export function needs<C = object>(measures: readonly MeasureId[], when?: Need<C>['when']): readonly Need<C>[] {
  return measures.map((measure) => (when ? { measure, when } : { measure }));
}

/** Needs that are read but never asked for. */
export function quietly<C = object>(measures: readonly MeasureId[], when?: Need<C>['when']): readonly Need<C>[] {
  return needs(measures, when).map((need) => ({ ...need, quiet: true }));
}
