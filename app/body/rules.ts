import { usualCrotch } from './formulas';
import { estimate } from './proportions';
import { GEOMETRY, PRACTICE, type Rule, row } from './rule';
import {
  hemTakesAll,
  type Limit,
  notALength,
  partOver,
  readingsApart,
  rulerOver,
  suspected,
  tooSmall,
  widthsOff,
} from './rule-rows';
import type { Mm } from './units';

/** Room for a side seam between armhole and hem, and between neckline and hem. */
const LEAST_SIDE_MM = 10;
const WIDTHS_IMPOSSIBLE: Limit = { share: 0.2, mm: 20 };
const WIDTHS_UNLIKELY: Limit = { share: 0.05, mm: 10 };
/** Arms held out make the underarm as long as the outside; more than this over it, the two were mixed up. */
const STRAIGHT_ARM_MM = 10;
/** How far armhole depth and side inset together may miss half the arm's root girth. */
const ROOT_OFF_SHARE = 0.25;
/** Armhole depth as a share of a hip-length top, about half on plush, a quarter on play dolls; such is one within this share of what the toy suggests. */
const ARMHOLE_SHARE = { least: 0.2, most: 0.65 };
const HIP_LENGTH_SHARE = 0.3;
/** A neckline is about 5.3 times as long as half its width (drafting starts from that). */
const NECK_PER_HALF_WIDTH = 5.3;
/** What reads larger than its whole by no more than this may be the tape's fault. */
const TAPE_SHARE = 0.05;
/** No crotch is shorter than this many rises: it could not be drawn. */
const LEAST_CROTCH_SHARE = 1.5;
/** How far the crotch may miss twice the rise and the hip's thickness, less 8 %. */
const CROTCH_OFF_SHARE = 0.25;
const LEAST_TUBE_MM = 40;
const LEAST_SEAM_MM = 8;

const roomAbove =
  (need: string) =>
  ([taken, length]: readonly [Mm, Mm, Mm], { hemAllowance }: { readonly hemAllowance: Mm }) => {
    const least = hemAllowance + LEAST_SIDE_MM;
    return length - taken < least && { [need]: taken, length, left: length - taken, least };
  };

/** The rule table, impossible first. Adding a row adds a flag; its words are `flag.<code>` in locales. */
export const rules: readonly Rule[] = [
  notALength,
  row(
    'armhole-takes-side',
    'impossible',
    ['armhole-depth', 'body-length'],
    'below the armhole there must be room for a side seam and the hem',
    PRACTICE,
    roomAbove('depth'),
  ),
  row(
    'neckline-under-hem',
    'impossible',
    ['front-neck-drop', 'body-length'],
    'the neckline must end above the hem',
    GEOMETRY,
    roomAbove('drop'),
  ),
  partOver('width-over-girth', 'front-width', 'body-girth'),
  partOver('width-over-girth', 'back-width', 'body-girth'),
  partOver('front-over-crotch', 'front-crotch', 'crotch-length'),
  row(
    'crotch-under-rise',
    'impossible',
    ['crotch-length', 'body-rise'],
    'the way between the legs goes down from the waist and up again: twice the rise, but for fur that gives way',
    `${GEOMETRY}; how much fur gives is ${PRACTICE}`,
    ([crotch, rise]) => crotch < LEAST_CROTCH_SHARE * rise && { crotch, rise },
  ),
  partOver('height-over-whole', 'top-height', 'height'),
  partOver('height-over-whole', 'base-height', 'height'),
  widthsOff('impossible', WIDTHS_IMPOSSIBLE),
  rulerOver('armhole-depth', 'arm-root-girth'),
  rulerOver('side-inset', 'chest-girth'),
  rulerOver('leg-spread', 'chest-girth'),
  rulerOver('ear-base', 'head-girth'),
  rulerOver('wing-base', 'body-girth'),
  hemTakesAll('body-length'),
  hemTakesAll('back-body-length'),
  hemTakesAll('side-length'),
  hemTakesAll('waist-to-hem'),
  hemTakesAll('inside-leg-length'),
  hemTakesAll('cape-length'),
  hemTakesAll('bib-length'),
  hemTakesAll('under-length'),
  hemTakesAll('back-length'),
  hemTakesAll('arm-length'),
  hemTakesAll('front-leg-length'),

  suspected('unit-slip'),
  suspected('tenfold'),
  suspected('digit-doubled'),
  suspected('half-for-whole'),
  suspected('whole-for-half'),
  suspected('tape-end'),
  suspected('swapped'),
  suspected('proportion'),
  widthsOff('unlikely', WIDTHS_UNLIKELY),
  row(
    'underarm-over-arm',
    'unlikely',
    ['underarm-length', 'arm-length'],
    'the underside of an arm is no longer than its outside: probably swapped',
    PRACTICE,
    ([under, outer]) => under - outer > STRAIGHT_ARM_MM && { under, outer, offer: outer, otherOffer: under },
  ),
  row(
    'armhole-off-root',
    'unlikely',
    ['armhole-depth', 'arm-root-girth', 'side-inset'],
    'depth and inset together are about half the way round the root of the arm',
    PRACTICE,
    ([depth, root, inset]) => {
      const half = root / 2;
      return Math.abs(depth + inset - half) > ROOT_OFF_SHARE * half && { depth, inset, half };
    },
  ),
  row(
    'armhole-share',
    'unlikely',
    ['armhole-depth', 'body-length'],
    'an armhole is a fifth to two thirds of a hip-length top',
    'a published play doll has a quarter (stitchwhisperdesigns.com, 2013-07-18); the rest common practice, no source',
    ([depth, length], _, body) => {
      const share = depth / length;
      const hipLength = () => {
        const suggested = estimate(body, 'body-length')?.value ?? length;
        return Math.abs(length / suggested - 1) <= HIP_LENGTH_SHARE;
      };
      return (share > ARMHOLE_SHARE.most || (share < ARMHOLE_SHARE.least && hipLength())) && { depth, length, share };
    },
  ),
  row(
    'shoulders-over-chest',
    'unlikely',
    ['shoulder-length', 'neck-girth', 'chest-girth'],
    'half the neckline and one shoulder fit into a quarter of the chest girth',
    PRACTICE,
    ([shoulder, neck, chest]) => {
      const reach = neck / NECK_PER_HALF_WIDTH + shoulder;
      return reach > (chest / 4) * (1 + TAPE_SHARE) && { shoulder, neck, chest, reach, room: chest / 4 };
    },
  ),
  row(
    'neck-over-head',
    'unlikely',
    ['neck-girth', 'head-girth'],
    'where the neck is clear, it is thinner than the head',
    PRACTICE,
    ([neck, head], _, { kind, traits }) => kind !== 'round' && traits.neck === 'clear' && neck > head && { neck, head },
  ),
  row(
    'paw-off-arm',
    'unlikely',
    ['paw-girth', 'upper-arm-girth'],
    'a paw measures half the arm to twice the arm',
    PRACTICE,
    ([paw, arm]) => (paw < arm / 2 || paw > arm * 2) && { paw, arm },
  ),
  row(
    'foot-off-girth',
    'unlikely',
    ['foot-length', 'foot-girth'],
    'a foot is a fifth to nine tenths as long as it is round heel and instep',
    PRACTICE,
    ([length, girth]) => (length < girth * 0.2 || length > girth * 0.9) && { length, girth },
  ),
  row(
    'ear-over-head',
    'unlikely',
    ['ear-base', 'head-girth'],
    'an ear takes less than a quarter of the way round the head',
    PRACTICE,
    ([ear, head]) => ear > head / 4 && { ear, head },
  ),
  row(
    'crown-off-face',
    'unlikely',
    ['crown-arc', 'face-edge'],
    'the way over the head is 40 to 110 % of the way round the face',
    PRACTICE,
    ([crown, face]) => (crown < face * 0.4 || crown > face * 1.1) && { crown, face },
  ),
  row(
    'back-neck-under-front',
    'unlikely',
    ['back-neck-drop', 'front-neck-drop'],
    'a neckline lies higher at the back than in front',
    PRACTICE,
    ([back, front]) => back > front && { back, front },
  ),
  row(
    'crotch-off-rise',
    'unlikely',
    ['crotch-length', 'body-rise', 'hip-girth'],
    'the way between the legs is about twice the rise and the thickness of the hip, less 8 %',
    PRACTICE,
    ([crotch, rise, hip]) => {
      const usual = usualCrotch(rise, hip);
      return Math.abs(crotch - usual) > CROTCH_OFF_SHARE * usual && { crotch, usual };
    },
  ),
  ...(['top-girth', 'base-girth'] as const).map((id) =>
    row(
      'girth-over-fullest',
      'unlikely',
      [id, 'body-girth'],
      'no girth is over the fullest',
      GEOMETRY,
      ([girth, full]) => {
        return girth > full * (1 + TAPE_SHARE) && { girth, full };
      },
    ),
  ),
  tooSmall('tube-too-small', 'unlikely', 'upper-arm-girth', LEAST_TUBE_MM),
  tooSmall('tube-too-small', 'unlikely', 'front-leg-girth', LEAST_TUBE_MM),
  readingsApart,

  row(
    'straight-topped-sleeve',
    'note',
    ['underarm-length', 'arm-length'],
    'arms held out or up: the sleeve has no cap',
    PRACTICE,
    ([under, outer]) => under > outer && under - outer <= STRAIGHT_ARM_MM && { under, outer },
  ),
  tooSmall('seam-too-short', 'note', 'shoulder-length', LEAST_SEAM_MM),
  tooSmall('seam-too-short', 'note', 'underarm-length', LEAST_SEAM_MM),
];
