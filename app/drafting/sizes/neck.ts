import { neckline } from '../curves/neckline';
import { brent, pathLength } from '../geometry';
import { easedNeck } from './ease';
import { maker } from './maker';
import { shoulderSlope } from './shoulder';
import type { Wearer } from './wearer';

/** A neck's half width as a share of its girth, to start from (common practice, no source). */
const HALF_WIDTH_SHARE = 1 / 5.3;
/** A back neckline is at least this share of the half width deep, and this many mm. */
const BACK_DROP_SHARE = 0.3;
const LEAST_BACK_DROP_MM = 3;
/** A wished drop may go as deep as this many half widths before the neckline grows instead. */
const DEEPEST_DROPS = 1.9;
/** A half width that nobody measured takes at most this share of the body's length, for its curve is deeper than wide. */
const WIDEST_GUESS_SHARE = 0.65;
const SOLVED_MM = 1e-4;
/** What stays with front and back beside a raglan sleeve: 0.19 and 0.17 of the whole neck (common practice, no source). */
const FRONT_KEPT = 0.64;
const BACK_KEPT = 0.83;

/**
 * The neckline: girth, one half width for front and back, and both drops. The half width is solved so that the closed
 * neckline is as long as the eased neck; a wished drop may deepen the curve, never make it shallower than its width:
 * `neckLower` is how much lower in front it lies than it was taken.
 */
export const neckSizes = maker(
  [],
  [
    'slope',
    'neck',
    'neckHalfWidth',
    'frontNeckDrop',
    'backNeckDrop',
    'frontNeckKept',
    'backNeckKept',
    'neckBefore',
    'neckBehind',
    'neckLower',
  ],
  (wearer) => {
    const slope = shoulderSlope(wearer.traits);
    const girth = neckGirth(wearer);
    const wishedFront = wearer.of('front-neck-drop');
    const wishedBack = wearer.of('back-neck-drop');
    const front = (half: number) => Math.min(Math.max(half, wishedFront), DEEPEST_DROPS * half);
    const back = (half: number) =>
      Math.min(Math.max(half * BACK_DROP_SHARE, wishedBack, LEAST_BACK_DROP_MM), front(half) * 0.8);
    const along = (half: number, drop: number) => pathLength(neckline(half, drop, slope));
    const closed = (half: number) => 2 * (along(half, front(half)) + along(half, back(half)));
    const start = girth * HALF_WIDTH_SHARE;
    const solved = brent((half) => closed(half) - girth, start / 4, start * 1.6, { tolerance: SOLVED_MM });
    const neckHalfWidth = solved.ok ? solved.x : start;
    const frontNeck = along(neckHalfWidth, front(neckHalfWidth));
    const backNeck = along(neckHalfWidth, back(neckHalfWidth));
    const lower = wearer.taken('front-neck-drop') ? Math.max(front(neckHalfWidth) - wishedFront, 0) : 0;
    return {
      sizes: {
        slope,
        neck: 2 * (frontNeck + backNeck),
        neckHalfWidth,
        frontNeckDrop: front(neckHalfWidth),
        backNeckDrop: back(neckHalfWidth),
        frontNeckKept: frontNeck * FRONT_KEPT,
        backNeckKept: backNeck * BACK_KEPT,
        neckBefore: frontNeck * (1 - FRONT_KEPT),
        neckBehind: backNeck * (1 - BACK_KEPT),
        neckLower: lower,
      },
      adjustments:
        lower > 0.5
          ? [
              {
                code: 'neck-deepened',
                by: lower,
                because: 'neckline',
                check: ['front-neck-drop', 'neck-girth'],
              },
            ]
          : [],
    };
  },
);

/**
 * Eased neck. Where the neck was not taken but the arm's place was, the half width is what the half front leaves beside
 * side inset and shoulder, and the girth follows from it.
 */
function neckGirth(wearer: Wearer): number {
  const fromPlace = !wearer.taken('neck-girth') && wearer.taken('side-inset') && wearer.taken('shoulder-length');
  const beside = wearer.of('front-width') / 2 - wearer.of('side-inset') - wearer.of('shoulder-length');
  const left = Math.min(beside, wearer.of('body-length') * WIDEST_GUESS_SHARE);
  const girth = fromPlace && left > 0 ? left / HALF_WIDTH_SHARE : wearer.of('neck-girth');
  return easedNeck(girth, wearer.cloth);
}
