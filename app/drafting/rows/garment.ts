import type { Shape } from '../blocks/block';
import type { Ref } from '../draft-types';
import type { Chosen } from '../heads/choice';
import type { Head, HeadOf } from '../heads/head';
import type { Look, Refs } from './names';
import type { AnyPart } from './part';
import type { AnyNames, AnyRows, When } from './rows';

/** A garment is data: pieces made of named edges, and seams that join edges to edges. The rest follows. */
export type Garment = Head & AnyRows;

/** What parts ask of each other and of the head, and none of them has: sizes, edges, and choices with their values. */
type Missing<C, P extends AnyPart> =
  | Exclude<P['uses']['size'], P['gives']['size']>
  | Exclude<P['uses']['edge'], P['gives']['edge']>
  | Unchosen<Chosen<C>, P>;

/** The choices that a part looks at and the head does not have as it looks at them. */
type Unchosen<C, P> = P extends { readonly uses: { readonly choices: (choices: infer U) => void } }
  ? { [Name in keyof U]: Name extends keyof C ? (C[Name] extends U[Name] ? never : Name) : Name }[keyof U]
  : never;

/**
 * A garment from its head and its parts, whose rows follow each other in the parts' order. Each part is held to what the
 * others give: where a choice, size or edge is missing the call does not compile, and asks for an argument that names it.
 */
export function assemble<const C extends Head['choices'], P extends AnyPart>(
  head: HeadOf<C>,
  parts: readonly P[],
  ..._: [Missing<C, P>] extends [never] ? [] : [missing: Missing<C, P>]
): Garment {
  const all = <K extends keyof AnyRows>(name: K) =>
    (parts as readonly AnyPart[]).flatMap(({ rows }): readonly AnyRows[K][number][] => rows[name]);
  return {
    ...(head as unknown as Head),
    sizes: all('sizes'),
    passages: all('passages'),
    centre: all('centre'),
    pieces: all('pieces'),
    seams: all('seams'),
    match: all('match'),
    unsuited: all('unsuited'),
    instead: all('instead'),
    notes: all('notes'),
    fit: all('fit'),
    notions: all('notions'),
  };
}

export function refsOf(
  refs: Refs<AnyNames>,
  { choices, sizes }: Pick<Look<AnyNames>, 'choices' | 'sizes'>,
): readonly Ref[] {
  return typeof refs === 'function' ? refs(choices, sizes) : refs;
}

/** Rows that count with these choices. */
export function active<Row extends When<AnyNames>>(rows: readonly Row[], choices: AnyNames['choices']): readonly Row[] {
  return rows.filter((row) => row.when?.(choices) ?? true);
}

/** What its blocks drew. */
type Drawn = { readonly drawn: ReadonlyMap<string, { readonly shape: Pick<Shape, 'edges'> }> };

/** The seams of a drawing: a row that finds nothing to sew there is none. */
export function seamsIn(
  garment: Garment,
  drawing: Pick<Look<AnyNames>, 'choices' | 'sizes'> & Drawn,
): AnyRows['seams'] {
  const isDrawn = ({ piece, edge }: Ref) => drawing.drawn.get(piece)?.shape.edges[edge] !== undefined;
  return active(garment.seams, drawing.choices).filter(({ first, openDart }) => {
    const refs = refsOf(first, drawing);
    return refs.length > 0 && (!openDart || refs.every(isDrawn));
  });
}
