import { type BandTop, band } from '../../blocks/band';
import { flare } from '../../blocks/flare';
import type { Part, PieceRow, SeamRow } from '../../rows/garment';
import { bandSizes } from '../../sizes/waist';
import type { Choices } from '../../sizes/wearer';
import { isOpen } from './bodice';

/** The bodices that hang from straps, and how each ends above. */
const tops: Readonly<Record<string, BandTop>> = {
  band: 'straight',
  dipped: 'straight',
  'half-circle': 'round',
  halter: 'halter',
};
export const isBand = (choices: Choices) => String(choices.bodice) in tops;
export const isRound = (choices: Choices) => choices.bodice === 'half-circle';
export const isHalter = (choices: Choices) => choices.bodice === 'halter';
const isStrapped = (choices: Choices) => choices.straps !== 'none';
/** A strap behind the neck leaves the back alone, and so do a halter's and a half circle's. */
const behindNeck = (choices: Choices) => choices.straps === 'neck' || isHalter(choices) || isRound(choices);

/** A lining is sewn to it round the top and the opening, and turned inside; else the top is bound. */
export const isLined = (choices: Choices) => choices.lining === true;

const PAST_CENTRE_MM = 10;

/** The shell, or its lining cut alike: without a strap's place. */
function row(layer: '' | '-lining', side: 'front' | 'back', top: BandTop, open: boolean): PieceRow {
  const lining = layer !== '';
  const strap = side === 'back' ? 'backStrapWidth' : 'strapWidth';
  return {
    name: side + layer,
    copies: open ? 2 : 1,
    mirrored: open,
    onFold: !open,
    block: band(top, open ? 'open' : 'fold'),
    sizes: {
      dip: side === 'front' ? 'frontDip' : 'noDip',
      ...(top === 'round' ? { bandHeight: 'roundHeight' } : {}),
      strapWidth: lining ? 'noStrap' : strap,
    },
    takes: ({ choices, sizes }) => ({
      past: PAST_CENTRE_MM,
      backStrapWidth: behindNeck(choices) ? 0 : (sizes.strapWidth ?? 0),
    }),
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
  };
}

function topOf(side: 'front' | 'back', choices: Choices): BandTop | undefined {
  return side === 'back' ? 'straight' : tops[String(choices.bodice)];
}

const strap = (side: 'front' | 'back'): SeamRow => ({
  name: `strap-${side}`,
  sewn: 2,
  kind: 'laid',
  first: [{ piece: side, edge: 'strap' }],
  second: [{ piece: 'strap', edge: side === 'front' ? 'top' : 'bottom' }],
  when: (choices) => isStrapped(choices) && (side === 'front' || !behindNeck(choices)),
});

/** A bodice from the underarm to the waist, straight, dipped, round or drawn up to the neck, and its straps. */
export const bandPart: Part = {
  needs: (['chest-girth', 'waist-girth', 'bodice-height', 'neck-girth', 'armhole-depth', 'strap-length'] as const).map(
    (measure) => ({ measure }),
  ),
  sizes: [bandSizes],
  pieces: [
    ...(['', '-lining'] as const).flatMap((layer) => [
      ...(['straight', 'round', 'halter'] as const).map((top) => row(layer, 'front', top, false)),
      row(layer, 'back', 'straight', false),
      row(layer, 'back', 'straight', true),
    ]),
    {
      name: 'strap',
      copies: 2,
      mirrored: false,
      onFold: false,
      block: flare,
      sizes: { flareTop: 'strapWidth', flareBottom: 'strapWidth', flareHeight: 'strapLength', flareOpen: 'notOpen' },
      roles: (choices) => ({
        top: 'seam',
        side: 'opening',
        bottom: behindNeck(choices) ? 'closure' : 'seam',
        centre: 'opening',
      }),
      when: isStrapped,
    },
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
    strap('front'),
    strap('back'),
  ],
  fit: [
    {
      place: 'chest',
      measure: 'chest-girth',
      garment: ({ sizes }) => sizes.chest ?? 0,
      when: (choices) => !isRound(choices),
    },
  ],
};
