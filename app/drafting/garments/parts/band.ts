import { type BandTop, band } from '../../blocks/band';
import { flare } from '../../blocks/flare';
import {
  type Bodices,
  isBand,
  isOpen,
  isRound,
  isRoundNeck,
  type Linings,
  type Opens,
  type Straps,
} from '../../heads/choices';
import { part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import type { SeamRow } from '../../rows/rows';
import type { SizesOf } from '../../sizes/maker';
import { PAST_CENTRE_MM } from '../../sizes/scale';
import { bandSizes } from '../../sizes/waist';
import type { Side } from './top';

/** How each of the bodices that hang from straps ends above. */
const tops: { readonly [Kind in Bodices['bodice']]?: BandTop } = {
  band: 'straight',
  dipped: 'straight',
  'half-circle': 'round',
  halter: 'halter',
};

export const isHalter = ({ bodice }: Bodices) => bodice === 'halter';
const isStrapped = ({ straps }: Straps) => straps !== 'none';
/** A strap behind the neck leaves the back alone, and so do a halter's and a half circle's. */
const behindNeck = isRoundNeck;

/** A lining is sewn to it round the top and the opening, and turned inside; else the top is bound. */
export const isLined = ({ lining }: Linings) => lining;

export type BandChoices = Bodices & Straps & Linings & Opens;
export type BandGives = {
  readonly size: SizesOf<typeof bandSizes>;
  readonly edge: EdgesOf<Side | `${Side}-lining`, ReturnType<typeof band>> | EdgesOf<'strap', typeof flare>;
};
type Names = BandGives & { readonly choices: BandChoices };

/** The shell, or its lining cut alike: without a strap's place. */
function row(layer: '' | '-lining', side: Side, top: BandTop, open: boolean) {
  const lining = layer !== '';
  return piece<Names>()(`${side}${layer}`, band(top), {
    copies: open ? 2 : 1,
    mirrored: open,
    onFold: !open,
    sizes: {
      dip: side === 'front' ? 'frontDip' : null,
      topHalf: ({ sizes }) => sizes.topHalf + (side === 'front' ? sizes.sideBack : -sizes.sideBack),
      hemHalf: ({ sizes }) => sizes.hemHalf + (side === 'front' ? sizes.sideBack : -sizes.sideBack),
      ...(top === 'round' ? { bandHeight: 'roundHeight' as const } : {}),
      past: open ? ({ wearer }) => PAST_CENTRE_MM[wearer.scale] : null,
      strapWidth: ({ choices, sizes }) =>
        lining || !isStrapped(choices) || (side === 'back' && behindNeck(choices)) ? null : sizes.strapWidth,
    },
    roles: (choices) => ({
      'hem-end': 'opening',
      centre: !open ? 'fold' : isLined(choices) ? 'seam' : 'closure',
    }),
    ...(side === 'back' ? { back: true as const } : {}),
    when: (choices) =>
      isBand(choices) &&
      (isLined(choices) || !lining) &&
      isOpen(side)(choices) === open &&
      topOf(side, choices) === top &&
      !(side === 'back' && isRound(choices)),
  });
}

function topOf(side: Side, { bodice }: Bodices): BandTop | undefined {
  return side === 'back' ? 'straight' : tops[bodice];
}

const strap = (side: Side): SeamRow<Names> => ({
  name: `strap-${side}`,
  sewn: 2,
  kind: 'laid',
  first: [{ piece: side, edge: 'strap' }],
  second: [{ piece: 'strap', edge: side === 'front' ? 'top' : 'bottom' }],
  // Caught in the seam of a lining; on a bound top, stitched on over the binding.
  after: (choices) => (isLined(choices) ? [] : ['strap-long', 'top-binding-inside']),
  when: (choices) => isStrapped(choices) && (side === 'front' || !behindNeck(choices)),
});

/** A bodice from the underarm to the waist, straight, dipped, round or drawn up to the neck, and its straps. */
export const bandPart = part<{ choices: BandChoices; size: never; edge: never }, BandGives>({
  centre: [{ length: ({ bandHeight }) => bandHeight }],
  sizes: [bandSizes],
  pieces: [
    ...(['', '-lining'] as const).flatMap((layer) => [
      ...(['straight', 'round', 'halter'] as const).map((top) => row(layer, 'front', top, false)),
      row(layer, 'back', 'straight', false),
      row(layer, 'back', 'straight', true),
    ]),
    piece<Names>()('strap', flare, {
      copies: 2,
      mirrored: false,
      onFold: false,
      sizes: { flareTop: 'strapWidth', flareBottom: 'strapWidth', flareHeight: 'strapLength' },
      roles: (choices) => ({
        top: 'seam',
        side: 'opening',
        bottom: behindNeck(choices) ? 'closure' : 'seam',
        centre: 'opening',
      }),
      when: isStrapped,
    }),
  ],
  seams: [
    {
      name: 'side',
      sewn: 2,
      first: [{ piece: 'back', edge: 'side' }],
      second: [{ piece: 'front', edge: 'side' }],
      when: (choices) => !isRound(choices),
    },
    {
      name: 'back-closure',
      sewn: 2,
      kind: 'folded',
      first: [{ piece: 'back', edge: 'centre' }],
      second: [],
      when: (choices) => isOpen('back')(choices) && !isRound(choices) && !isLined(choices),
    },
    {
      name: 'back-waist-end',
      sewn: 2,
      kind: 'folded',
      first: [{ piece: 'back', edge: 'hem-end' }],
      second: [],
      when: (choices) => isOpen('back')(choices) && !isRound(choices) && !isLined(choices),
    },
    {
      name: 'strap-long',
      sewn: 2,
      kind: 'folded',
      first: [
        { piece: 'strap', edge: 'side' },
        { piece: 'strap', edge: 'centre' },
      ],
      second: [],
      when: isStrapped,
    },
    {
      name: 'strap-end',
      sewn: 2,
      kind: 'folded',
      first: [{ piece: 'strap', edge: 'bottom' }],
      second: [],
      // How far two ends lap is tried on: they hang from the dress by then.
      after: () => ['strap-front', 'waist'],
      when: (choices) => isStrapped(choices) && behindNeck(choices),
    },
    strap('front'),
    strap('back'),
  ],
  fit: [
    {
      place: 'chest',
      measure: 'chest-girth',
      garment: ({ sizes }) => sizes.chest,
      asked: ({ wearer }) => wearer.girth('chest-girth', 2),
      because: () => 'lean',
      when: (choices) => !isRound(choices),
    },
  ],
  notions: [
    {
      kind: 'closure',
      place: 'back-closure',
      length: (look) => look.length('back.centre'),
      when: (choices) => isOpen('back')(choices) && !isRound(choices),
    },
    {
      kind: 'closure',
      place: 'strap-end',
      length: ({ sizes }) => sizes.strapWidth,
      when: (choices) => isStrapped(choices) && behindNeck(choices),
    },
  ],
});
