import { legEdge } from '../curves/pants';
import { line, point } from '../geometry';
import { block } from './block';

/**
 * Half a pair of pants beside its fold, which runs from the front waist between the legs to the back waist: no seam lies between
 * the legs. x right from the fold, y down from the front waist. Sizes in mm: half widths `pantsFront` and `pantsBack` (wider where
 * the back laps over the front), `pantsSide` down each side, `pantsLong` in all, `pantsCrotch` half as wide between the legs,
 * `pantsMiddle` how far down that is. A tail comes out `tailAbove` below the back waist, through `tailLong` of the fold.
 */
export const pants = block({
  sizes: ['pantsFront', 'pantsBack', 'pantsSide', 'pantsLong', 'pantsCrotch', 'pantsMiddle'],
  optional: ['tailAbove', 'tailLong'],
  edges: ['front-waist', 'front-side', 'leg', 'back-side', 'back-waist', 'centre'],
  lines: ['tail'],
  draw: (sizes) => {
    const { pantsFront, pantsBack, pantsSide, pantsLong, tailAbove, tailLong } = sizes;
    const low = pantsLong - pantsSide;
    const tail = pantsLong - (tailAbove ?? 0);
    return {
      edges: {
        'front-waist': [line(point(0, 0), point(pantsFront, 0))],
        'front-side': [line(point(pantsFront, 0), point(pantsFront, pantsSide))],
        leg: legEdge(sizes),
        'back-side': [line(point(pantsBack, low), point(pantsBack, pantsLong))],
        'back-waist': [line(point(pantsBack, pantsLong), point(0, pantsLong))],
        centre: [line(point(0, pantsLong), point(0, 0))],
      },
      lines: tailLong !== null ? { tail: [line(point(0, tail - tailLong), point(0, tail))] } : {},
    };
  },
});
