import type { Mm } from '../../../body';
import { flare } from '../../blocks/flare';
import type { Ref, Role } from '../../draft-types';
import type { EdgeIn, Look } from '../../rows/names';
import { type Part, partNamed } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import type { NoteRow, SeamRow } from '../../rows/rows';
import type { Cloth } from '../../sizes/cloths';

/** What a strip is sewn to, when its ends are sewn to each other, and where they lie: in front or behind. */
export type Edged<C extends object, R extends Ref> = {
  /** Half of a neckline or hem, or, with two `rings`, one whole armhole or wrist. */
  readonly edge: (choices: C) => readonly R[];
  readonly closed: (choices: C) => boolean;
  readonly ends: (choices: C) => 'front' | 'back';
  readonly rings?: 2;
  /** Its ends run on over the allowance of a casing that ends there, whose seams turn them down with it. */
  readonly intoCasing?: true;
};

type Names<C> = { readonly choices: C; readonly size: never; readonly edge: string };
/** How it is cut and how it is joined. */
type Strip<C extends object> = {
  readonly long: (look: Look<Names<C>>) => Mm;
  readonly wide: (look: Look<Names<C>>) => Mm;
  readonly roles: (choices: C) => { readonly [Edge in 'side' | 'bottom' | 'centre']: Role };
  readonly bias?: (cloth: Cloth) => boolean;
  readonly joined: Pick<SeamRow<Names<C>>, 'longer' | 'bound'>;
  /** The seam of the tube it ends, into which its own runs on. */
  readonly on?: string;
  readonly notes?: readonly NoteRow<Names<C>>[];
};
/** What any strip gives its garment: its own edges, under its name. */
export type StripGives<Name extends string> = { readonly size: never; readonly edge: EdgesOf<Name, typeof flare> };
export type StripTakes<C extends object, R extends Ref> = {
  readonly choices: C;
  readonly size: never;
  readonly edge: EdgeIn<R>;
};

/** A strip on the fold along an edge: its ends sewn to each other or folded in, sewn on, its free edge stitched down inside. */
export function stripPart<C extends object, R extends Ref, Name extends string>(
  name: Name,
  { edge, closed, ends, rings, intoCasing }: Edged<C, R>,
  { long, wide, roles, bias, joined, on, notes = [] }: Strip<C>,
): Part<StripTakes<C, R>, StripGives<Name>> {
  const both = rings ? { times: rings } : {};
  const end = [{ piece: name, edge: 'side' }];
  return partNamed<StripTakes<C, R>, StripGives<Name>>({
    pieces: [
      piece<Names<C>>()(name as string, flare, {
        copies: rings ?? 1,
        mirrored: false,
        onFold: true,
        ...(bias ? { bias } : {}),
        sizes: { flareTop: long, flareBottom: long, flareHeight: wide },
        roles: (choices) => ({ top: 'seam', ...roles(choices) }),
      }),
    ],
    seams: [
      {
        name: `${name}-end`,
        sewn: rings ?? 1,
        first: end,
        second: end,
        ...(on ? { from: on } : {}),
        when: closed,
      },
      {
        name: `${name}-end`,
        sewn: 2,
        kind: 'folded',
        first: end,
        second: [],
        when: (choices) => !closed(choices) && !intoCasing,
      },
      {
        name: `${name}-edge`,
        sewn: 2,
        first: edge,
        second: (choices) => [{ ...fromFront(name, 'top', ends(choices)), ...both }],
        cornered: true,
        ...joined,
      },
      {
        name: `${name}-inside`,
        sewn: 2,
        kind: 'laid',
        first: [{ piece: name, edge: 'top', ...both }],
        second: [{ piece: name, edge: 'bottom', back: true, ...both }],
      },
    ],
    notes,
  });
}

/** The upper edge of a strip on the fold, walked from the front of the neck: its ends lie in front, or its fold does. */
export function fromFront<P extends string, X extends string>(piece: P, edge: X, ends: 'front' | 'back') {
  return { piece, edge, ...(ends === 'front' ? { back: true as const } : {}) };
}
