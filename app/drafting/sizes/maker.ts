import type { Flag, Mm } from '../../body';
import type { Adjustment } from '../draft-types';
import type { Wearer } from './wearer';

/** Some finished sizes, by name. */
export type Sizes<S extends string = string> = Readonly<Record<S, Mm>>;

/** What one size maker adds: sizes, and what it had to adjust. */
export type Made<S extends string = string> = {
  readonly sizes: Sizes<S>;
  readonly adjustments?: readonly Adjustment[];
  /** What makes these sizes impossible together. */
  readonly stops?: readonly Flag[];
};

/** Body measures into finished sizes. `takes` are sizes made before it, `gives` those it makes, some of them anew. */
export type SizeMaker<C extends object = object, T extends string = string, G extends string = string> = {
  readonly takes: readonly T[];
  readonly gives: readonly G[];
  readonly make: (wearer: Wearer<C>, sizes: Sizes<T>) => Made;
};

/** A maker from its two lists of names and its work, which is held to them. */
export function maker<const T extends string, const G extends string, C extends object = object>(
  takes: readonly T[],
  gives: readonly G[],
  make: (wearer: Wearer<C>, sizes: Sizes<NoInfer<T>>) => Made<NoInfer<G>>,
): SizeMaker<C, T, G> {
  return { takes, gives, make };
}

/** The sizes that a maker gives. */
export type SizesOf<M> = M extends { readonly gives: readonly (infer G extends string)[] } ? G : never;

/** Sizes by name, which throw when one is read that nobody set: our own fault, never 0. */
export function known(sizes: Readonly<Record<string, Mm>>): Sizes {
  return new Proxy(sizes, {
    get(from, name) {
      const size = typeof name === 'string' ? from[name] : undefined;
      if (size === undefined) throw new RangeError(`no such size: ${String(name)}`);
      return size;
    },
  });
}
