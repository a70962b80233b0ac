import type { Flag, MeasureId, Mm } from '../../body';
import { neckline } from '../curves/neckline';
import type { Adjustment } from '../draft-types';
import { end, splitPath } from '../geometry';
import { THICK_FROM_MM } from './cloths';
import { fullestOf } from './lean';
import { type Made, maker, type Sizes } from './maker';
import { LEAST_INSET_MM, LEAST_SHOULDER_DRAWN_MM } from './shoulder';
import { girthsOf, type Trunk, trunkOf } from './trunk';
import type { Wearer } from './wearer';

/** Ease of the armhole's depth: enough that the underarm does not bind (common practice, no source). */
const DEPTH_EASE_SHARE = 0.06;
const LEAST_DEPTH_EASE_MM = 4;
/** A side must leave room for its hem and this much more. */
export const LEAST_SIDE_MM = 10;
/** A hem dips by at most this share of its half width; the rest is gathered into the side. */
const DIP_SHARE = 0.15;
/** And at most this share of the side is gathered in. */
const MOST_GATHERED = 0.3;
/** A hem that rises from its centre to its side by more than this share of its half width is no hem. */
const STEEPEST_HEM = 1;
/** Deeper than this share of the length, a neckline leaves no front. */
export const DEEPEST_NECK = 0.75;

/** A bodice that hangs from the shoulders: widths from the girths, shared front and back; lengths from the wishes. */
export const bodiceSizes = maker(
  ['slope', 'neckHalfWidth', 'frontNeckDrop', 'backNeckDrop', 'frontNeckKept', 'underarmDeeper'],
  [
    'chest',
    'tummy',
    'hem',
    'chestShare',
    'tummyShare',
    'hemShare',
    'dartMost',
    'shoulder',
    'inset',
    'armDrop',
    'armholeDepth',
    'sideLevel',
    'frontLength',
    'backLength',
    'frontGather',
    'backGather',
  ],
  (wearer, sizes) => {
    const asked = trunkOf(wearer, sizes);
    const chest = Math.min(asked.front.chest, asked.back.chest);
    const arm = armhole(wearer, sizes, chest);
    const lengths = sides(wearer, sizes, asked, arm);
    return {
      sizes: {
        ...girthsOf(asked),
        dartMost: isDarted(wearer) ? Math.min(chest, besideRaglan(sizes, arm, asked.front.chest)) : 0,
        ...arm,
        ...lengths.sizes,
      },
      adjustments: [...shoulderNews(wearer, arm), ...(lengths.adjustments ?? [])],
      stops: [...neckTakesBody(sizes, lengths.sizes), ...hemTooSteep(asked, lengths.sizes, arm)],
    };
  },
);

/** A dart in thick cloth would stand up. */
const isDarted = ({ cloth }: Pick<Wearer, 'cloth'>) => cloth.thickness < THICK_FROM_MM;

/** A dart between a raglan sleeve and the underarm keeps clear of the seam above it by so much, mm, and is no wider than lets it end slender. */
const UNDER_RAGLAN_MM = 10;
const WIDTHS_OF_ROOM = 4;

/** The room for darts below a raglan's seam, which runs down from the neck; no limit beside a sleeve set in. */
function besideRaglan(
  { slope, neckHalfWidth, frontNeckDrop, frontNeckKept, underarmDeeper }: Raglan,
  { armDrop, armholeDepth }: Arm,
  half: Mm,
): Mm {
  if (underarmDeeper === 0) return Number.POSITIVE_INFINITY;
  const [kept] = splitPath(neckline(neckHalfWidth, frontNeckDrop, slope), frontNeckKept);
  const corner = end(kept);
  const aside = UNDER_RAGLAN_MM / Math.max(half - corner.x, UNDER_RAGLAN_MM);
  return Math.max((armDrop + armholeDepth - corner.y) * (1 - aside) - UNDER_RAGLAN_MM, 0) * WIDTHS_OF_ROOM;
}

type Raglan = Sizes<'slope' | 'neckHalfWidth' | 'frontNeckDrop' | 'frontNeckKept' | 'underarmDeeper'>;
type Neck = Sizes<'slope' | 'neckHalfWidth' | 'frontNeckDrop' | 'backNeckDrop'>;
type Lengths = 'sideLevel' | 'frontLength' | 'backLength' | 'frontGather' | 'backGather';

/** Where a trunk that goes down past the tummy is fullest. */
export const fullestSizes = maker([], ['fullest'], ({ traits }) => ({ sizes: { fullest: fullestOf(traits) } }));

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

/** Front or back, where it hangs so far below its side that no hem could run from one to the other. */
function hemTooSteep({ front, back }: Trunk, lengths: Sizes<Lengths>, { armDrop }: Arm): Flag[] {
  const { sideLevel, frontLength, frontGather, backLength, backGather } = lengths;
  const dips = [
    { rises: frontLength - armDrop - sideLevel - frontGather, over: front.hem },
    { rises: backLength - armDrop - sideLevel - backGather, over: back.hem },
  ];
  const steep = dips.find(({ rises, over }) => rises > over * STEEPEST_HEM);
  return steep ? [{ code: 'hem-too-steep', severity: 'impossible', measures: LENGTHS_CHECK, values: steep }] : [];
}

const LENGTHS_CHECK: readonly MeasureId[] = ['body-length', 'back-body-length', 'side-length'];

type Arm = Record<'shoulder' | 'inset' | 'armDrop' | 'armholeDepth', Mm>;

/** The shoulder is cut short where neck, shoulder and arm would not lie side by side within the chest. */
function armhole(wearer: Wearer, { slope, neckHalfWidth }: Neck, chest: Mm): Arm {
  const room = (chest - neckHalfWidth - LEAST_INSET_MM) / Math.cos(slope);
  const measured = wearer.of('shoulder-length');
  const wanted = wearer.traits.shoulders === 'none' ? LEAST_SHOULDER_DRAWN_MM : measured;
  const shoulder = Math.max(Math.min(wanted, room), LEAST_SHOULDER_DRAWN_MM);
  const depth = wearer.of('armhole-depth');
  return {
    shoulder,
    inset: chest - neckHalfWidth - shoulder * Math.cos(slope),
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
function sides(wearer: Wearer, { backNeckDrop }: Neck, { front: ahead, back: behind }: Trunk, arm: Arm): Made<Lengths> {
  const least = arm.armholeDepth + wearer.hem + LEAST_SIDE_MM;
  const front = Math.max(wearer.of('body-length') - arm.armDrop, least);
  const backTaken = wearer.taken('back-body-length');
  const back = backTaken ? backNeckDrop + wearer.of('back-body-length') - arm.armDrop : front;
  const wish = wearer.taken('side-length') ? arm.armholeDepth + wearer.of('side-length') : Math.min(front, back);
  const wished = Math.max(least, Math.min(wish, front, back));
  const over = (length: Mm, half: Mm, level: Mm) => Math.max(length - DIP_SHARE * half - level, 0);
  const raised = backTaken ? Math.min(over(front, ahead.hem, wished), over(back, behind.hem, wished)) : 0;
  const sideLevel = wished + raised;
  const backLevel = backTaken ? Math.max(back, sideLevel) : sideLevel;
  const most = (sideLevel - arm.armholeDepth) * MOST_GATHERED;
  const frontGather = Math.min(over(front, ahead.hem, sideLevel), most);
  const backGather = Math.min(over(backLevel, behind.hem, sideLevel), most);
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

const SIDE_CHECK: readonly MeasureId[] = ['side-length', 'body-length', 'armhole-depth'];

/** Changes under half a millimetre are no news. */
function news(code: string, by: Mm, check: readonly MeasureId[]): Adjustment[] {
  return Math.abs(by) > 0.5 ? [{ code, by, because: 'side', check }] : [];
}
