import type { Mm } from '../../body';
import { ROUND_STRAP_SHARE, STITCHED_DOWN_MM } from '../curves/shares';
import type { Bodices, Straps } from '../heads/choices';
import { DEEPEST_NECK, LEAST_SIDE_MM } from './bodice';
import { STEEPEST_SIDE } from './lean';
import { maker } from './maker';
import { PAST_CENTRE_MM } from './scale';
import { frontShare } from './trunk';
import type { Wearer } from './wearer';

const TWO_SEAMS = 2;
const LEAST_WAIST_EASE_MM = 4;
/** Nothing bulges above the waist, wherever that would be (a share of the side). */
const ANYWHERE = 0.5;
const STEEPEST_SLOPE = Math.tan(STEEPEST_SIDE);

/**
 * A bodice from the shoulders that ends at the waist: level there, without a dip, a skirt hung from it. Its widest place is its
 * waist, shared by front and back as the chest is, where a side of this length leans out that far.
 */
export const waistSizes = maker(
  ['armholeDepth', 'armDrop', 'frontNeckDrop', 'tummy', 'hem'],
  [
    'waist',
    'tummy',
    'hem',
    'tummyShare',
    'hemShare',
    'fullest',
    'frontLength',
    'backLength',
    'frontGather',
    'backGather',
    'sideLevel',
  ],
  (wearer, { armholeDepth, armDrop, frontNeckDrop }) => {
    const wished = sideOf(wearer);
    const side = Math.max(wished, frontNeckDrop / DEEPEST_NECK - armDrop - armholeDepth);
    const level = armholeDepth + side;
    const waist = waistOf(wearer);
    const share = frontShare(wearer);
    return {
      sizes: {
        waist,
        hem: waist,
        tummy: 0,
        fullest: ANYWHERE,
        tummyShare: share,
        hemShare: share,
        frontLength: level + armDrop,
        backLength: level + armDrop,
        frontGather: 0,
        backGather: 0,
        sideLevel: level,
      },
      adjustments:
        side > wished + 0.5
          ? [
              {
                code: 'body-lengthened',
                by: side - wished,
                because: 'neckline',
                check: ['underarm-to-waist', 'neck-girth'],
              },
            ]
          : [],
    };
  },
);

export function waistOf(wearer: Wearer): number {
  return wearer.girth('waist-girth', TWO_SEAMS, LEAST_WAIST_EASE_MM);
}

function sideOf(wearer: Wearer): number {
  return Math.max(wearer.of('underarm-to-waist'), LEAST_SIDE_MM + wearer.hem);
}

/** Share of a band's height that its front dips, of the neck that a halter's top and strap are, and a strap's own width. */
const DIP = { straight: 0, dipped: 0.3 } as const;
/** And at most this share of half the top, or it would be a slit. */
const DEEPEST_DIP = 0.5;
const HALTER_SHARE = 0.09;
/** And of the half chest below it, at most. */
const WIDEST_HALTER = 0.95;
const STRAP_SHARE = 0.06;
const NARROWEST_STRAP_MM = 8;
const STRAP_AT = 0.5;

/** A bodice without shoulders, from the underarm or above to the waist, held by straps. */
export const bandSizes = maker(
  [],
  [
    'waist',
    'chest',
    'topHalf',
    'hemHalf',
    'sideBack',
    'bandHeight',
    'frontDip',
    'halterHalf',
    'halterHeight',
    'roundHeight',
    'strapWidth',
    'strapLength',
    'strapAt',
  ],
  (wearer: Wearer<Bodices & Straps>) => {
    const kind = wearer.choices.bodice;
    const waistHalf = waistOf(wearer) / 4;
    const height = Math.max(wearer.of('bodice-height'), LEAST_SIDE_MM + wearer.hem);
    const topHalf = Math.max(wearer.girth('chest-girth', TWO_SEAMS) / 4, waistHalf - STEEPEST_SLOPE * height);
    const hemHalf = Math.max(waistHalf, topHalf - STEEPEST_SLOPE * height);
    const strapWidth = Math.min(
      Math.max(wearer.of('chest-girth') * STRAP_SHARE, NARROWEST_STRAP_MM),
      Math.min(topHalf, hemHalf) * 0.4,
    );
    const roundHeight = height + wearer.of('armhole-depth') * 0.5;
    const attached = { topHalf, strapWidth, roundHeight };
    const sideBack = kind === 'half-circle' ? 0 : sideBackOf(wearer, { topHalf, hemHalf });
    return {
      sizes: {
        waist: 4 * hemHalf,
        chest: 4 * topHalf,
        topHalf,
        hemHalf,
        sideBack,
        bandHeight: height,
        frontDip: kind === 'dipped' ? Math.min(height * DIP.dipped, topHalf * DEEPEST_DIP) : DIP.straight,
        halterHalf: Math.min(
          Math.max(wearer.of('neck-girth') * HALTER_SHARE, strapWidth + 1),
          (topHalf + sideBack) * WIDEST_HALTER,
        ),
        halterHeight: wearer.of('armhole-depth') * 0.8,
        roundHeight,
        strapWidth,
        strapLength: Math.max(strapOf(wearer, attached), 3 * strapWidth),
        strapAt: STRAP_AT,
      },
    };
  },
);

/** Its side seam lies no farther back than this share of a quarter of the chest: the arms come out beside it. */
const MOST_BACK = 0.16;

/** How far the side seam lies behind the middle, above as below, so that front and back share the waist as the toy's own do. */
function sideBackOf(wearer: Wearer, { topHalf, hemHalf }: Record<'topHalf' | 'hemHalf', Mm>): Mm {
  const back = (2 * frontShare(wearer) - 1) * hemHalf;
  return Math.max(-MOST_BACK * topHalf, Math.min(back, MOST_BACK * topHalf));
}

/** How much of the armhole's depth a halter and a half circle reach up already, and how much of the neck a strap goes round. */
type Kind = Bodices['bodice'];
const REACHED: { readonly [K in Kind]?: number } = {
  halter: 1,
  'half-circle': 0.5,
};
const ROUND_NECK: { readonly [K in Kind]?: number } = { 'half-circle': 0.4 };
const USUAL_ROUND_NECK = 0.35;

type Attached = Record<'topHalf' | 'strapWidth' | 'roundHeight', Mm>;

/**
 * The way from where a strap is attached to where it is attached, and what is stitched down at its ends. Over the shoulder to
 * the back edge, aslant where the two cross; or up to the neck and round behind it, where a halter, a half circle and straps
 * that ask for it are fastened.
 */
function strapOf(wearer: Wearer<Bodices & Straps>, attached: Attached): Mm {
  const kind = wearer.choices.bodice;
  if (wearer.choices.straps === 'neck' || kind in REACHED) {
    const up = wearer.of('armhole-depth') * (1 - (REACHED[kind] ?? 0));
    return (
      below(kind, attached) + up + roundNeck(kind, wearer.of('neck-girth'), attached) + 2 * PAST_CENTRE_MM[wearer.scale]
    );
  }
  const over = wearer.of('strap-length');
  const across = 2 * attached.topHalf * STRAP_AT + attached.strapWidth;
  const way = wearer.choices.straps === 'crossed' ? over / 2 + Math.hypot(over / 2, across) : over;
  return way + 2 * STITCHED_DOWN_MM;
}

/** From the top down to the strap's end: the circle is wide enough for it farther down. */
function below(kind: Kind, { roundHeight }: Attached): Mm {
  return kind === 'half-circle' ? roundHeight * ROUND_STRAP_SHARE : STITCHED_DOWN_MM;
}

/** A halter's straps stand side by side at the centre, so each goes half round the neck. */
function roundNeck(kind: Kind, neck: Mm, { strapWidth }: Attached): Mm {
  return kind === 'halter' ? neck / 2 - strapWidth / 2 : neck * (ROUND_NECK[kind] ?? USUAL_ROUND_NECK);
}
