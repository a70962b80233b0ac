import type { ByScale } from '../../../body';
import { flare } from '../../blocks/flare';
import type { Ref } from '../../draft-types';
import { type EdgeIn, type Look, type RefTo, sumOf } from '../../rows/names';
import { type Part, part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { RIB_SHARE } from '../../sizes/band';
import { fromFront } from './binding';

/** What a band of rib is sewn to: half of a hem from front to back, or, with two `rings`, one whole wrist. */
type Ribbed<C extends object, R extends Ref> = {
  readonly edge: (choices: C) => readonly R[];
  readonly closed: (choices: C) => boolean;
  readonly ends: (choices: C) => 'front' | 'back';
  readonly high: ByScale;
  readonly rings?: 2;
  /** The seam of the tube it ends, into which its own runs on. */
  readonly on?: string;
};

/** A band of rib, folded lengthwise and stretched to the edge it is sewn to; its ends sewn to each other, or folded in. */
export function ribPart<C extends object, R extends Ref, Name extends string>(
  name: Name,
  { edge, closed, ends, high, rings, on }: Ribbed<C, R>,
): Part<{ choices: C; size: never; edge: EdgeIn<R> }, { size: never; edge: EdgesOf<Name, typeof flare> }> {
  type Names = { choices: C; size: never; edge: string };
  const round = (look: Look<Names>) =>
    edge(look.choices).reduce((sum, ref) => sum + (ref.times ?? 1) * sumOf([ref as RefTo<string>], look), 0);
  const long = (look: Look<Names>) => (round(look) / (rings ?? 1)) * RIB_SHARE;
  const both = rings ? { times: rings } : {};
  return part<Names, { size: never; edge: string }>({
    pieces: [
      piece<Names>()(name as string, flare, {
        copies: rings ?? 1,
        mirrored: false,
        onFold: true,
        sizes: { flareTop: long, flareBottom: long, flareHeight: ({ wearer }) => 2 * high[wearer.scale] },
        roles: () => ({ top: 'seam', side: 'seam', bottom: 'seam', centre: 'fold' }),
      }),
    ],
    seams: [
      {
        name: `${name}-end`,
        sewn: rings ?? 1,
        first: [{ piece: name, edge: 'side' }],
        second: [{ piece: name, edge: 'side' }],
        ...(on ? { from: on } : {}),
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
        second: (choices) => [{ ...fromFront(name, 'top', ends(choices)), ...both }],
        longer: 'stretched',
        cornered: true,
      },
      {
        name: `${name}-inside`,
        sewn: 2,
        kind: 'laid',
        first: [{ piece: name, edge: 'top', ...both }],
        second: [{ piece: name, edge: 'bottom', back: true, ...both }],
      },
    ],
  }) as unknown as Part<
    { choices: C; size: never; edge: EdgeIn<R> },
    { size: never; edge: EdgesOf<Name, typeof flare> }
  >;
}
