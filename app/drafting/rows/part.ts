import type { Both, Names } from './names';
import type { AnyNames, AnyRows, Rows, When } from './rows';

/** What a part gives its garment: sizes, and edges of its own pieces. */
export type Gives = { readonly size: string; readonly edge: string };

/**
 * Some rows of a garment that belong together (a bodice, a hood): garments are put together from parts. `U` is what the part
 * takes from elsewhere: choices, sizes and edges that its garment must have.
 */
export type Part<U extends Names = Names, G extends Gives = Gives> = {
  readonly rows: AnyRows;
  /** For the compiler alone, never read. A garment may have more choices than its part looks at, and more names. */
  readonly uses: {
    readonly choices: (choices: U['choices']) => void;
    readonly size: U['size'];
    readonly edge: U['edge'];
  };
  readonly gives: G;
};

/** Whatever its names are. */
export type AnyPart = {
  readonly rows: AnyRows;
  readonly uses: { readonly choices: (choices: never) => void; readonly size: string; readonly edge: string };
  readonly gives: Gives;
};

/** A part from its rows, which are held to the names it takes and gives: `part<Takes, Gives>({ … })`. */
export function part<U extends Names, G extends Gives = { size: never; edge: never }>(
  rows: Partial<Rows<Both<U, G>, G['size'], G['edge']>>,
): Part<U, G> {
  const all: Rows<Both<U, G>, G['size'], G['edge']> = { ...none, ...rows };
  // From here on rows are read without their names: the compiler has seen that they agree.
  return named(all as unknown as AnyRows);
}

/** A part whose pieces or edges are named by whoever asks for it: its rows cannot be held to `U` and `G` edge by edge, only its sizes and choices. */
export function partNamed<U extends Names, G extends Gives>(
  rows: Partial<Rows<{ choices: U['choices']; size: U['size'] | G['size']; edge: string }, G['size'], string>>,
): Part<U, G> {
  type Takes = { choices: U['choices']; size: U['size']; edge: string };
  return named(part<Takes, { size: G['size']; edge: string }>(rows).rows);
}

/** A part holds nothing but its rows: its names are types. */
const named = <P extends AnyPart>(rows: AnyRows): P => ({ rows }) as unknown as P;

const none = {
  sizes: [],
  passages: [],
  centre: [],
  pieces: [],
  seams: [],
  match: [],
  unsuited: [],
  instead: [],
  notes: [],
  fit: [],
  notions: [],
} as const;

type Held<C extends object, P> =
  P extends Part<infer U, infer G> ? Part<{ choices: U['choices'] & C; size: U['size']; edge: U['edge'] }, G> : never;

/** Several parts that count only with some choices. */
export function allOnly<C extends object, P extends AnyPart>(
  when: (choices: C) => boolean,
  parts: readonly P[],
): Held<C, P>[] {
  return parts.map((each) => only(when, each as unknown as Part) as unknown as Held<C, P>);
}

/** A part that counts only with some choices: every row of it does. */
export function only<C extends object, U extends Names, G extends Gives>(
  when: (choices: C) => boolean,
  { rows }: Part<U, G>,
): Part<{ choices: U['choices'] & C; size: U['size']; edge: U['edge'] }, G> {
  const holds = when as unknown as (choices: AnyNames['choices']) => boolean;
  const held = <Row extends When<AnyNames>>(each: readonly Row[]): Row[] =>
    each.map((row) => ({
      ...row,
      when: (choices: AnyNames['choices']) => holds(choices) && (row.when?.(choices) ?? true),
    }));
  return named({
    sizes: held(rows.sizes),
    passages: held(rows.passages),
    centre: held(rows.centre),
    pieces: held(rows.pieces),
    seams: held(rows.seams),
    match: held(rows.match),
    unsuited: rows.unsuited,
    instead: rows.instead.map((row) => ({
      ...row,
      when: (look, failed) => holds(look.choices) && row.when(look, failed),
    })),
    notes: held(rows.notes),
    fit: held(rows.fit),
    notions: held(rows.notions),
  });
}
