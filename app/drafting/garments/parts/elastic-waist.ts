import { USUAL_CASING_MM } from '../../../body';
import { flare } from '../../blocks/flare';
import type { Tails, Waists } from '../../heads/choices';
import { only, part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { elasticFor } from '../../sizes/fastening';
import { isCutAslant } from './binding';
import { lapsAtTail } from './leg-names';

type Takes = { readonly choices: Waists & Tails; readonly size: never; readonly edge: 'leg.waist' };
type Gives = { readonly size: never; readonly edge: EdgesOf<'waist-facing', typeof flare> };

const waist = [{ piece: 'leg', edge: 'waist' }] as const;
const ends = [{ piece: 'waist-facing', edge: 'side' }] as const;
const isFaced = (choices: Waists) => choices.waist === 'faced';

/** The edge of the waist folded down over its elastic. */
const turned = only(
  (choices: Waists & Tails) => !isFaced(choices),
  part<Takes>({ seams: [{ name: 'waist-casing', sewn: 2, kind: 'folded', first: waist, second: [] }] }),
);

/** A strip sewn along a waist too curved to be turned, folded inside and stitched down: the casing lies between. */
const faced = only(
  isFaced,
  part<Takes, Gives>({
    pieces: [
      piece<Takes>()('waist-facing', flare, {
        copies: 1,
        mirrored: false,
        onFold: true,
        bias: isCutAslant,
        sizes: {
          flareTop: ({ length }) => length('leg.waist'),
          flareBottom: ({ length }) => length('leg.waist'),
          // As wide as the casing it makes.
          flareHeight: ({ wearer }) => USUAL_CASING_MM[wearer.scale],
        },
        roles: (choices) => ({
          top: 'seam',
          side: lapsAtTail(choices) ? 'opening' : 'seam',
          bottom: 'seam',
          centre: 'fold',
        }),
      }),
    ],
    seams: [
      {
        name: 'waist-facing',
        sewn: 2,
        first: waist,
        second: [{ piece: 'waist-facing', edge: 'top' }],
        cornered: true,
      },
      {
        name: 'waist-facing-end',
        sewn: 1,
        first: ends,
        second: ends,
        when: (choices) => !lapsAtTail(choices),
      },
      { name: 'waist-facing-end', sewn: 2, kind: 'folded', first: ends, second: [], when: lapsAtTail },
      {
        name: 'waist-facing-inside',
        sewn: 2,
        kind: 'laid',
        first: [{ piece: 'waist-facing', edge: 'top' }],
        second: [{ piece: 'waist-facing', edge: 'bottom', back: true }],
      },
    ],
  }),
);

/** An elastic goes all the way round the waist, in a casing. */
const elastic = part<{ choices: object; size: never; edge: never }>({
  notions: [{ kind: 'elastic', place: 'waist', length: ({ wearer }) => elasticFor(wearer.of('waist-girth')) }],
});

export const elasticWaistParts = [turned, faced, elastic] as const;
