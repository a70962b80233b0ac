import { flare } from '../../blocks/flare';
import type { Ref } from '../../draft-types';
import { type EdgeIn, sumOf } from '../../rows/names';
import { type Part, part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';

/** A binding is cut four times as wide as it shows. */
const CUT_MM = 24;

/** What a strip is sewn round, when its ends are sewn to each other, and where they lie: in front or behind. */
export type Bound<C extends object, R extends Ref> = {
  /** Half of a neckline, or, with two `rings`, one whole armhole. */
  readonly edge: (choices: C) => readonly R[];
  readonly closed: (choices: C) => boolean;
  readonly ends: (choices: C) => 'front' | 'back';
  readonly rings?: 2;
};

/** The names of a binding: what it is sewn to, and the strip itself. */
type Strip<Name extends string> = { readonly size: never; readonly edge: EdgesOf<Name, typeof flare> };

/** A strip round a raw edge: sewn on, folded over it, stitched down. */
export function bindingPart<C extends object, R extends Ref, Name extends string>(
  name: Name,
  { edge, closed, ends, rings }: Bound<C, R>,
): Part<{ choices: C; size: never; edge: EdgeIn<R> }, Strip<Name>> {
  type Names = { choices: C; size: never; edge: string };
  return part<Names, { size: never; edge: string }>({
    pieces: [
      piece<Names>()(name as string, flare, {
        copies: rings ?? 1,
        mirrored: false,
        onFold: true,
        bias: true,
        sizes: {
          flareTop: (look) => sumOf(edge(look.choices), look) / (rings ?? 1),
          flareBottom: (look) => sumOf(edge(look.choices), look) / (rings ?? 1),
          flareHeight: CUT_MM,
        },
        roles: (choices) => ({
          top: 'seam',
          side: closed(choices) ? 'seam' : 'opening',
          bottom: 'opening',
          centre: 'fold',
        }),
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
        name: `${name}-edge`,
        sewn: 2,
        first: edge,
        second: (choices) => [{ ...fromFront(name, 'top', ends(choices)), ...(rings ? { times: rings } : {}) }],
        cornered: true,
      },
    ],
  }) as unknown as Part<{ choices: C; size: never; edge: EdgeIn<R> }, Strip<Name>>;
}

/** The upper edge of a strip on the fold, walked from the front of the neck: its ends lie in front, or its fold does. */
export function fromFront<P extends string, X extends string>(piece: P, edge: X, ends: 'front' | 'back') {
  return { piece, edge, ...(ends === 'front' ? { back: true as const } : {}) };
}
