import { USUAL_CASING_MM } from '../../../body';
import { flare } from '../../blocks/flare';
import type { RefTo } from '../../rows/names';
import { part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { elasticFor } from '../../sizes/fastening';
import { isCutAslant } from './binding';
import { type PantsChoices as Choices, hasLegs, isNappy, isSewn } from './pants-names';

type Takes = { readonly choices: Choices; readonly size: never; readonly edge: 'pants.leg' };
type Gives = { readonly size: never; readonly edge: EdgesOf<'leg-casing', typeof flare> };
type Names = { readonly choices: Choices; readonly size: never; readonly edge: Takes['edge'] | Gives['edge'] };
type Ref = RefTo<Gives['edge']>;

const casing =
  (edge: 'top' | 'bottom', back?: true) =>
  (choices: Choices): Ref[] => [
    { piece: 'leg-casing', edge, ...(isSewn(choices) ? { times: 2 } : {}), ...(back ? { back } : {}) },
  ];
/** A strip round each leg: a ring of its two halves, or, where the sides open, from end to end. */
const strip = (when: (choices: Choices) => boolean, ring: boolean) =>
  piece<Names>()('leg-casing', flare, {
    copies: 2,
    mirrored: !ring,
    onFold: ring,
    bias: isCutAslant,
    sizes: {
      flareTop: ({ length }) => length('pants.leg') / (ring ? 2 : 1),
      flareBottom: ({ length }) => length('pants.leg') / (ring ? 2 : 1),
      flareHeight: ({ wearer }) => USUAL_CASING_MM[wearer.scale],
    },
    roles: () => ({
      top: 'seam',
      side: ring ? 'seam' : 'opening',
      bottom: 'seam',
      centre: ring ? 'fold' : 'opening',
    }),
    when,
  });
/** A strip sewn round each leg's hollow edge and folded inside: an elastic goes between. */
export const legCasingPart = part<Takes, Gives>({
  pieces: [strip(isSewn, true), strip(isNappy, false)],
  seams: [
    {
      name: 'leg-casing-end',
      sewn: 2,
      first: [{ piece: 'leg-casing', edge: 'side' }],
      second: [{ piece: 'leg-casing', edge: 'side' }],
      when: isSewn,
    },
    {
      name: 'leg-casing-end',
      sewn: 2,
      kind: 'folded',
      first: [
        { piece: 'leg-casing', edge: 'side' },
        { piece: 'leg-casing', edge: 'centre' },
      ],
      second: [],
      when: isNappy,
    },
    {
      name: 'leg-casing',
      sewn: 2,
      after: (choices) => (isNappy(choices) ? ['leg-casing-end'] : []),
      first: [{ piece: 'pants', edge: 'leg' }],
      second: casing('top'),
      cornered: true,
      when: hasLegs,
    },
    {
      name: 'leg-casing-inside',
      sewn: 2,
      kind: 'laid',
      first: casing('top'),
      second: casing('bottom', true),
      when: hasLegs,
    },
  ],
  notions: [
    {
      kind: 'elastic',
      place: 'leg-casing',
      count: 2,
      length: ({ wearer }) => elasticFor(wearer.of('thigh-girth')),
      when: hasLegs,
    },
  ],
});
