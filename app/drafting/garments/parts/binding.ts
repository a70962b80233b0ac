import { flare } from '../../blocks/flare';
import type { Ref } from '../../draft-types';
import type { Choices } from '../../sizes/wearer';
import { type Part, sumOf } from '../garment';

/** A binding is cut four times as wide as it shows. */
const CUT_MM = 24;

/**
 * A strip round a raw edge: sewn on, folded over it, stitched down. `edge` is half of a neckline, or, with two `rings`, one
 * whole armhole; `closed` says when the strip's ends are sewn to each other.
 */
export function bindingPart(
  name: string,
  edge: (choices: Choices) => readonly Ref[],
  closed: (choices: Choices) => boolean,
  rings: 1 | 2 = 1,
): Part {
  const half = `${name}Half`;
  return {
    pieces: [
      {
        name,
        copies: rings,
        mirrored: false,
        onFold: true,
        block: flare,
        sizes: { flareTop: half, flareBottom: half, flareHeight: `${name}Cut`, flareOpen: 'notOpen' },
        takes: (look) => ({ [half]: sumOf(edge(look.choices), look) / rings, [`${name}Cut`]: CUT_MM }),
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
        sewn: rings,
        first: [{ piece: name, edge: 'side' }],
        second: [{ piece: name, edge: 'side' }],
        when: closed,
      },
      {
        name: `${name}-edge`,
        sewn: 2,
        first: edge,
        second: [{ piece: name, edge: 'top', back: true, ...(rings === 2 ? { times: 2 } : {}) }],
        cornered: true,
      },
    ],
  };
}
