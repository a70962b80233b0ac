import type { Flag, MeasureId, Mm } from '../../body';
import { FULLEST } from '../curves/shares';
import type { Adjustment } from '../draft-types';
import { type Made, maker, type Sizes } from './maker';
import { LEAST_INSET_MM, LEAST_SHOULDER_DRAWN_MM } from './shoulder';
import type { Wearer } from './wearer';

/** Ease of the armhole's depth: enough that the underarm does not bind (common practice, no source). */
const DEPTH_EASE_SHARE = 0.06;
const LEAST_DEPTH_EASE_MM = 4;
/** Round arms that reach forward the back has this share of the half chest more, and the front as much less (common practice, no source). */
const FORWARD_SHARE = 0.06;
/** A side must leave room for its hem and this much more. */
export const LEAST_SIDE_MM = 10;
/** A hem dips by at most this share of its half width; the rest is gathered into the side. */
const DIP_SHARE = 0.15;
/** And at most this share of the side is gathered in. */
const MOST_GATHERED = 0.3;
/** A hem is hardly narrower than the tummy it has to pass. */
const LEAST_HEM_SHARE = 0.97;
const TWO_SIDE_SEAMS = 2;
/** Deeper than this share of the length, a neckline leaves no front. */
export const DEEPEST_NECK = 0.75;
/** How far a side may lean out at the underarm, as a slope: about 20°. */
const STEEPEST_SIDE = 0.36;
/** What a deepened armhole may leave of the side, as the lean is judged. */
const SIDE_LEFT = 0.7;

/** A bodice that hangs from the shoulders: widths from the girths, shared front and back; lengths from the wishes. */
export const bodiceSizes = maker(
  ['slope', 'neckHalfWidth', 'frontNeckDrop', 'backNeckDrop'],
  [
    'chest',
    'tummy',
    'hem',
    'chestHalf',
    'frontTummy',
    'backTummy',
    'frontHem',
    'backHem',
    'shoulder',
    'inset',
    'armsForward',
    'armDrop',
    'armholeDepth',
    'sideLevel',
    'frontLength',
    'backLength',
    'frontGather',
    'backGather',
  ],
  (wearer, sizes) => {
    const widths = trunk(wearer, sizes);
    const arm = armhole(wearer, sizes, widths.chestHalf);
    const lengths = sides(wearer, sizes, widths, arm);
    const side = lengths.sizes.sideLevel - arm.armholeDepth;
    const straight = straightened(widths, arm, side);
    return {
      sizes: { ...widths, ...arm, ...lengths.sizes, ...straight, armsForward: forward(wearer, straight) },
      adjustments: [...shoulderNews(wearer, arm), ...(lengths.adjustments ?? [])],
      stops: neckTakesBody(sizes, lengths.sizes),
    };
  },
);

type Neck = Sizes<'slope' | 'neckHalfWidth' | 'frontNeckDrop' | 'backNeckDrop'>;
type Lengths = 'sideLevel' | 'frontLength' | 'backLength' | 'frontGather' | 'backGather';

/** A neckline must leave room above the hem, whatever the neck's girth asks for. */
function neckTakesBody({ frontNeckDrop }: Neck, { frontLength }: Sizes<Lengths>): Flag[] {
  const values = { drop: frontNeckDrop, length: frontLength };
  return frontNeckDrop > frontLength * DEEPEST_NECK
    ? [
        {
          code: 'neck-takes-body',
          severity: 'impossible',
          measures: ['neck-girth', 'body-length', 'front-neck-drop'],
          values,
        },
      ]
    : [];
}

type Widths = Record<'chest' | 'tummy' | 'hem' | 'chestHalf' | 'frontTummy' | 'backTummy' | 'frontHem' | 'backHem', Mm>;

/** The chest is cut wide enough that neck, shoulder and armhole lie side by side. */
function trunk(wearer: Wearer, { slope, neckHalfWidth }: Neck): Widths {
  const front = wearer.of('front-width');
  const share = front / (front + wearer.of('back-width'));
  const chestHalf = Math.max(
    wearer.girth('chest-girth', TWO_SIDE_SEAMS) / 4,
    neckHalfWidth + LEAST_SHOULDER_DRAWN_MM * Math.cos(slope) + LEAST_INSET_MM,
  );
  const tummy = wearer.girth('body-girth', TWO_SIDE_SEAMS);
  const hem = Math.max(wearer.girth('hem-girth', TWO_SIDE_SEAMS), tummy * LEAST_HEM_SHARE);
  return {
    chest: 4 * chestHalf,
    tummy,
    hem,
    chestHalf,
    frontTummy: (tummy * share) / 2,
    backTummy: (tummy * (1 - share)) / 2,
    frontHem: (hem * share) / 2,
    backHem: (hem * (1 - share)) / 2,
  };
}

type Arm = Record<'shoulder' | 'inset' | 'armDrop' | 'armholeDepth', Mm>;

/** The shoulder is cut short where neck, shoulder and arm would not lie side by side within the chest. */
function armhole(wearer: Wearer, { slope, neckHalfWidth }: Neck, chestHalf: Mm): Arm {
  const room = (chestHalf - neckHalfWidth - LEAST_INSET_MM) / Math.cos(slope);
  const measured = wearer.of('shoulder-length');
  const wanted = wearer.traits.shoulders === 'none' ? LEAST_SHOULDER_DRAWN_MM : measured;
  const shoulder = Math.max(Math.min(wanted, room), LEAST_SHOULDER_DRAWN_MM);
  const depth = wearer.of('armhole-depth');
  return {
    shoulder,
    inset: chestHalf - neckHalfWidth - shoulder * Math.cos(slope),
    armDrop: shoulder * Math.sin(slope),
    armholeDepth: depth + Math.max(depth * DEPTH_EASE_SHARE, LEAST_DEPTH_EASE_MM),
  };
}

function shoulderNews(wearer: Wearer, arm: Arm): Adjustment[] {
  const short = wearer.of('shoulder-length') - arm.shoulder;
  const told = short > 0.5 && wearer.taken('shoulder-length') && wearer.traits.shoulders !== 'none';
  return told
    ? [{ code: 'shoulder-shortened', by: -short, because: 'chest', check: ['shoulder-length', 'neck-girth'] }]
    : [];
}

/**
 * One side for front and back: the wish, or the shorter of what both lengths allow. What front or back is longer dips
 * at its hem; what a dip cannot take is gathered into the side. `sideLevel` is the side hem below the arm end.
 */
function sides(wearer: Wearer, { backNeckDrop }: Neck, widths: Widths, arm: Arm): Made<Lengths> {
  const least = arm.armholeDepth + wearer.hem + LEAST_SIDE_MM;
  const front = Math.max(wearer.of('body-length') - arm.armDrop, least);
  const backTaken = wearer.taken('back-body-length');
  const back = backTaken ? backNeckDrop + wearer.of('back-body-length') - arm.armDrop : front;
  const wish = wearer.taken('side-length') ? arm.armholeDepth + wearer.of('side-length') : Math.min(front, back);
  const wished = Math.max(least, Math.min(wish, front, back));
  const over = (length: Mm, half: Mm, level: Mm) => Math.max(length - DIP_SHARE * half - level, 0);
  const raised = backTaken ? Math.min(over(front, widths.frontHem, wished), over(back, widths.backHem, wished)) : 0;
  const sideLevel = wished + raised;
  const backLevel = backTaken ? Math.max(back, sideLevel) : sideLevel;
  const most = (sideLevel - arm.armholeDepth) * MOST_GATHERED;
  const frontGather = Math.min(over(front, widths.frontHem, sideLevel), most);
  const backGather = Math.min(over(backLevel, widths.backHem, sideLevel), most);
  return {
    sizes: {
      sideLevel,
      frontLength: front + arm.armDrop,
      backLength: backLevel + arm.armDrop,
      frontGather,
      backGather,
    },
    adjustments: [
      ...news('side-changed', wearer.taken('side-length') ? sideLevel - wish : 0, SIDE_CHECK),
      ...news('side-gathered', frontGather + backGather, SIDE_CHECK),
      ...news('body-lengthened', front + arm.armDrop - wearer.of('body-length'), ['body-length', 'armhole-depth']),
    ],
  };
}

/**
 * A short side cannot bulge far, nor lean in: where it would lean at its ends by more than STEEPEST_SIDE, the hem is cut
 * wider, then the chest, and the armhole moves out with it. `lean` is a side's rise over its ends' thirds, from its inner points.
 */
function straightened(widths: Widths, arm: Arm, whole: Mm): Widths & Pick<Arm, 'inset'> {
  const lean = STEEPEST_SIDE * whole * SIDE_LEFT;
  const bulging = 1 / (FULLEST * (1 - FULLEST));
  const atHem = bulging * (1 - FULLEST) - 1;
  const atChest = bulging * FULLEST - 1;
  const hemFor = (tummy: Mm, hem: Mm) =>
    Math.max(hem, (bulging * tummy - atHem * widths.chestHalf - lean) / (bulging * FULLEST + 1));
  const chestFor = (tummy: Mm, hem: Mm) =>
    Math.max(hem - lean, (bulging * tummy - atChest * hem - lean) / (bulging * (1 - FULLEST) + 1));
  const wideFront = hemFor(widths.frontTummy, widths.frontHem);
  const wideBack = hemFor(widths.backTummy, widths.backHem);
  const chestHalf = Math.max(
    widths.chestHalf,
    chestFor(widths.frontTummy, wideFront),
    chestFor(widths.backTummy, wideBack),
  );
  const frontHem = Math.max(wideFront, chestHalf - lean);
  const backHem = Math.max(wideBack, chestHalf - lean);
  const across = (hem: Mm) => (1 - FULLEST) * chestHalf + FULLEST * hem;
  const frontTummy = Math.max(widths.frontTummy, across(frontHem));
  const backTummy = Math.max(widths.backTummy, across(backHem));
  return {
    chestHalf,
    chest: 4 * chestHalf,
    inset: arm.inset + chestHalf - widths.chestHalf,
    frontHem,
    backHem,
    hem: 2 * (frontHem + backHem),
    frontTummy,
    backTummy,
    tummy: 2 * (frontTummy + backTummy),
  };
}

/** How far both underarms lie before the middle of the side; the front's armhole keeps its least width. */
function forward({ traits }: Wearer, { chestHalf, inset }: Pick<Widths & Arm, 'chestHalf' | 'inset'>): Mm {
  return traits.arms === 'forward' ? Math.min(chestHalf * FORWARD_SHARE, Math.max(inset - LEAST_INSET_MM, 0)) : 0;
}

const SIDE_CHECK: readonly MeasureId[] = ['side-length', 'body-length', 'armhole-depth'];

/** Changes under half a millimetre are no news. */
function news(code: string, by: Mm, check: readonly MeasureId[]): Adjustment[] {
  return Math.abs(by) > 0.5 ? [{ code, by, because: 'side', check }] : [];
}
