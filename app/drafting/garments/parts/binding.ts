import { flare } from '../../blocks/flare';
import type { Ref } from '../../draft-types';
import { type EdgeIn, type Look, sumOf } from '../../rows/names';
import { type Part, part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { BINDS_UP_TO_MM, type Cloth, isKnit } from '../../sizes/cloths';
import { BINDING_MM } from '../../sizes/scale';
import { thinBinding } from './thick';

/** In all, a strip is this many times as wide as it shows (handbooks of dressmaking): four layers. */
export const STRIP_WIDTHS = 4;
/** Round a hollow edge a strip is stretched by this share, so that its fold lies flat, or by as much as its cloth allows. */
const STRETCHED = 0.02;
const STRETCHED_OF_EASE = 0.8;

/** What a strip is sewn round, when its ends are sewn to each other, and where they lie: in front or behind. */
export type Bound<C extends object, R extends Ref> = {
  /** Half of a neckline, or, with two `rings`, one whole armhole. */
  readonly edge: (choices: C) => readonly R[];
  readonly closed: (choices: C) => boolean;
  readonly ends: (choices: C) => 'front' | 'back';
  readonly rings?: 2;
  /** Whether the edge is hollow: a neck, an armhole. */
  readonly hollow: (choices: C) => boolean;
};

/** The names of a binding: what it is sewn to, and the strip itself. */
type Strip<Name extends string> = { readonly size: never; readonly edge: EdgesOf<Name, typeof flare> };

/**
 * A strip round a raw edge: sewn on edge to edge, folded over both, stitched down. The edge is cut on the line and stays where
 * it was drawn.
 */
export function bindingPart<C extends object, R extends Ref, Name extends string>(
  name: Name,
  { edge, closed, ends, rings, hollow }: Bound<C, R>,
): Part<{ choices: C; size: never; edge: EdgeIn<R> }, Strip<Name>> {
  type Names = { choices: C; size: never; edge: string };
  const long = (look: Look<Names>) =>
    sumOf(edge(look.choices), look) / (rings ?? 1) / (hollow(look.choices) ? 1 + stretchedIn(look.wearer.cloth) : 1);
  return part<Names, { size: never; edge: string }>({
    pieces: [
      piece<Names>()(name as string, flare, {
        copies: rings ?? 1,
        mirrored: false,
        onFold: true,
        bias: isCutAslant,
        sizes: {
          flareTop: long,
          flareBottom: long,
          flareHeight: ({ wearer }) => STRIP_WIDTHS * BINDING_MM[wearer.scale],
        },
        roles: (choices) => ({ side: closed(choices) ? 'seam' : 'opening', bottom: 'edge', centre: 'fold' }),
      }),
    ],
    seams: [
      {
        name: `${name}-end`,
        sewn: rings ?? 1,
        first: [{ piece: name, edge: 'side' }],
        second: [{ piece: name, edge: 'side' }],
        when: closed,
      },
      {
        name: `${name}-end`,
        sewn: 2,
        kind: 'folded',
        first: [{ piece: name, edge: 'side' }],
        second: [],
        when: (choices) => !closed(choices),
      },
      {
        name: `${name}-edge`,
        sewn: 2,
        first: edge,
        second: (choices) => [{ ...fromFront(name, 'top', ends(choices)), ...(rings ? { times: rings } : {}) }],
        cornered: true,
        bound: true,
      },
      {
        name: `${name}-inside`,
        sewn: 2,
        kind: 'laid',
        first: [{ piece: name, edge: 'top' }],
        second: [{ piece: name, edge: 'bottom', back: true }],
      },
    ],
    notes: [thinBinding],
  }) as unknown as Part<{ choices: C; size: never; edge: EdgeIn<R> }, Strip<Name>>;
}

/** Woven strips, and the thin ones that bind thick cloth, follow a curve on the bias; knit ones along their stretch. */
export function isCutAslant(cloth: Cloth): boolean {
  return !isKnit(cloth) || cloth.thickness > BINDS_UP_TO_MM;
}

const stretchedIn = ({ easesIn }: Cloth) => Math.min(STRETCHED, easesIn * STRETCHED_OF_EASE);

/** The upper edge of a strip on the fold, walked from the front of the neck: its ends lie in front, or its fold does. */
export function fromFront<P extends string, X extends string>(piece: P, edge: X, ends: 'front' | 'back') {
  return { piece, edge, ...(ends === 'front' ? { back: true as const } : {}) };
}
