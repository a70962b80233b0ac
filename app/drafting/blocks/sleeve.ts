import {
  add,
  cubic,
  line,
  type Path,
  type Point,
  pathLength,
  point,
  scale,
  splitPath,
  subtract,
  unit,
} from '../geometry';
import { block, type Fed } from './block';

/** Handles of the cap, as shares of the half bicep: the cut of a tube aslant, a cosine (geometry), rounded at the top. */
const CAP_UNDERARM = 0.42;
const CAP_TOP = 0.4;

/**
 * A set-in sleeve, laid flat: x right from the shoulder line, front at the left; y down from the cap's top. Sizes in mm:
 * `bicep` and `cuff` round, `capHeight` down to the bicep line, `sleeveLength` down the middle; `capShare` is the front's
 * share of the cap's length, where the shoulder notch lies; `capForward` how far its top lies towards the front.
 */
export const sleeve = block({
  sizes: ['bicep', 'cuff', 'capHeight', 'sleeveLength', 'capShare', 'capForward'],
  edges: ['front-cap', 'back-cap', 'back-underarm', 'cuff', 'front-underarm'],
  draw: (sizes) => {
    const tube = lowerSleeve(sizes);
    const cap = capCurve(tube, Math.max(-farthest(sizes), Math.min(sizes.capForward, farthest(sizes))));
    const [front, back] = splitPath(cap, pathLength(cap) * Math.min(Math.max(sizes.capShare, 0.2), 0.8));
    return { edges: { 'front-cap': front, 'back-cap': back, ...tube.edges }, lines: {} };
  },
});

/** Both underarm seams and the cuff below a bicep line; the directions are those up the two underarm seams. */
export type Tube = {
  readonly edges: Readonly<Record<'back-underarm' | 'cuff' | 'front-underarm', Path>>;
  readonly frontUnderarm: Point;
  readonly backUnderarm: Point;
  readonly taper: Point;
};

/**
 * The tube from the bicep line at y = capHeight to the cuff. The cuff is square to both underarm seams, so it bows; its
 * middle lies at `sleeveLength`. `taper` points down the back underarm seam.
 */
export function lowerSleeve(s: Fed<'bicep' | 'cuff' | 'capHeight' | 'sleeveLength'>): Tube {
  const { bicep, cuff, capHeight, sleeveLength } = s;
  const half = bicep / 2;
  const halfCuff = cuff / 2;
  const drop = Math.max(sleeveLength - capHeight, 1);
  const bow = ((halfCuff * (half - halfCuff)) / drop) * 0.5;
  const low = capHeight + drop + bow;
  const taper = unit(point(halfCuff - half, low - capHeight));
  const inward = point(-taper.y, taper.x);
  const handle = (2 * halfCuff) / 3;
  const [right, left] = [point(halfCuff, low), point(-halfCuff, low)];
  const [back, front] = [point(half, capHeight), point(-half, capHeight)];
  const mirror = point(-inward.x, inward.y);
  return {
    edges: {
      'back-underarm': [line(back, right)],
      cuff: [cubic(right, add(right, scale(inward, handle)), add(left, scale(mirror, handle)), left)],
      'front-underarm': [line(left, front)],
    },
    frontUnderarm: front,
    backUnderarm: back,
    taper,
  };
}

/** A cap's top lies at most this share of the bicep off its middle. */
const FARTHEST_TOP = 0.12;
const farthest = ({ bicep }: Fed<'bicep'>) => bicep * FARTHEST_TOP;

/** From the front underarm over the top, `forward` mm before the middle, to the back one; without height it is as good as level. */
function capCurve(tube: Tube, forward: number): Path {
  const { frontUnderarm: front, backUnderarm: back, taper } = tube;
  const top = point(-forward, 0);
  const leave = point(taper.y, taper.x);
  const [before, behind] = [back.x - forward, back.x + forward];
  return [
    cubic(front, add(front, scale(leave, CAP_UNDERARM * before)), subtract(top, point(CAP_TOP * before, 0)), top),
    cubic(
      top,
      add(top, point(CAP_TOP * behind, 0)),
      add(back, scale(point(-leave.x, leave.y), CAP_UNDERARM * behind)),
      back,
    ),
  ];
}
