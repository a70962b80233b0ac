import { flare } from '../../blocks/flare';
import type { Ref } from '../../draft-types';
import { type Part, sumOf } from '../../rows/garment';
import type { Choices } from '../../sizes/wearer';

/** A binding is cut four times as wide as it shows. */
const CUT_MM = 24;

/** What a strip is sewn round, when its ends are sewn to each other, and where they lie: in front or behind. */
export type Bound = {
  /** Half of a neckline, or, with two `rings`, one whole armhole. */
  readonly edge: (choices: Choices) => readonly Ref[];
  readonly closed: (choices: Choices) => boolean;
  readonly ends: (choices: Choices) => 'front' | 'back';
  readonly rings?: 2;
};

/** A strip round a raw edge: sewn on, folded over it, stitched down. */
export function bindingPart(name: string, { edge, closed, ends, rings }: Bound): Part {
  const half = `${name}Half`;
  return {
    pieces: [
      {
        name,
        copies: rings ?? 1,
        mirrored: false,
        onFold: true,
        bias: true,
        block: flare,
        sizes: { flareTop: half, flareBottom: half, flareHeight: `${name}Cut`, flareOpen: 'notOpen' },
        takes: (look) => ({ [half]: sumOf(edge(look.choices), look) / (rings ?? 1), [`${name}Cut`]: CUT_MM }),
        roles: (choices) => ({
          top: 'seam',
          side: closed(choices) ? 'seam' : 'opening',
          bottom: 'opening',
          centre: 'fold',
        }),
      },
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
        second: (choices) => [{ ...fromFront(name, ends(choices)), ...(rings ? { times: rings } : {}) }],
        cornered: true,
      },
    ],
  };
}

/** The upper edge of a strip on the fold, walked from the front of the neck: its ends lie in front, or its fold does. */
export function fromFront(piece: string, ends: 'front' | 'back'): Ref {
  return { piece, edge: 'top', ...(ends === 'front' ? { back: true as const } : {}) };
}
