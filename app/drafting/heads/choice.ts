/** One of several values, yes or no, or an amount within limits; `fallback` when nobody chooses. */
export type Choice =
  | { readonly kind: 'one'; readonly of: readonly string[]; readonly fallback: string }
  | { readonly kind: 'yes'; readonly fallback: boolean }
  | {
      readonly kind: 'count' | 'share' | 'length';
      readonly min: number;
      readonly max: number;
      readonly fallback: number;
    };

/** Choices with every default filled in and every `auto` still to be settled. */
export type Choices = Readonly<Record<string, Value>>;
export type Value = string | boolean | number;

/** What the maker may have chosen. */
export type Chosen<C> = {
  readonly [Name in keyof C]: C[Name] extends { readonly of: readonly (infer V)[] }
    ? V
    : C[Name] extends { readonly kind: 'yes' }
      ? boolean
      : number;
};

/** One of several; the fallback is one of them. */
export function one<const V extends string>(of: readonly V[], fallback: NoInfer<V>) {
  return { kind: 'one', of, fallback } as const;
}

export function yes(fallback: boolean) {
  return { kind: 'yes', fallback } as const;
}

/** An amount in mm. */
export function length(min: number, max: number, fallback: number) {
  return { kind: 'length', min, max, fallback } as const;
}

export function share(min: number, max: number, fallback: number) {
  return { kind: 'share', min, max, fallback } as const;
}
