import { waistLine } from '../curves/crotch';
import { legEdge } from '../curves/pants';
import { line, point } from '../geometry';
import { block } from './block';

/**
 * Half a pair of pants beside its fold, which runs from the front waist between the legs to the back waist: no seam lies between
 * the legs. x right from the fold, y down from the middle of the front waist. Sizes in mm: half widths `pantsFront` and `pantsBack`
 * (wider where the back laps over the front), `pantsSide` down each side, `pantsLong` in all, `pantsCrotch` half as wide between
 * the legs, `pantsMiddle` how far down that is, `pantsRaised` how far the waist comes down in front and rises behind. A tail comes
 * out `tailAbove` below the back waist, through `tailLong` of the fold, slit. With `tailLap` there is a seam instead of the fold, all above the tail opens,
 * and laps by so much past the centre.
 */
export const pants = block({
  sizes: ['pantsFront', 'pantsBack', 'pantsSide', 'pantsLong', 'pantsCrotch', 'pantsMiddle', 'pantsRaised'],
  optional: ['tailAbove', 'tailLong', 'tailLap'],
  edges: ['front-waist', 'front-side', 'leg', 'back-side', 'back-waist', 'tail-closure', 'tail-end', 'tail', 'centre'],
  lines: ['slit', 'centre-line'],
  draw: (sizes) => {
    const { pantsFront, pantsBack, pantsSide, pantsLong, pantsRaised, tailAbove, tailLong, tailLap } = sizes;
    const high = pantsLong - pantsRaised;
    const [waist, top] = [point(0, pantsLong), pantsLong - (tailAbove ?? 0)];
    const foot = top - (tailLong ?? 0);
    const lap = tailLap ?? 0;
    const down = (from: number, to: number) => [line(point(0, from), point(0, to))];
    const behind = waistLine(point(pantsBack, high), waist);
    return {
      edges: {
        'front-waist': waistLine(point(0, 0), point(pantsFront, -pantsRaised)),
        'front-side': [line(point(pantsFront, -pantsRaised), point(pantsFront, pantsSide - pantsRaised))],
        leg: legEdge(sizes),
        'back-side': [line(point(pantsBack, high - pantsSide), point(pantsBack, high))],
        'back-waist': lap > 0 ? [...behind, line(waist, point(-lap, pantsLong))] : behind,
        ...(lap > 0
          ? {
              'tail-closure': [line(point(-lap, pantsLong), point(-lap, top))],
              'tail-end': [line(point(-lap, top), point(0, top))],
              tail: down(top, foot),
            }
          : {}),
        centre: down(lap > 0 ? foot : pantsLong, 0),
      },
      lines: {
        ...(tailLong !== null && lap === 0 ? { slit: down(foot, top) } : {}),
        ...(lap > 0 ? { 'centre-line': down(pantsLong, top) } : {}),
      },
    };
  },
});
