import { end, endTangent, hermite, line, pathLength, point, splitPath } from '../geometry';
import { block } from './block';
import { BODICE_OPTIONAL, BODICE_SIZES, bodiceShape } from './bodice';

/** So far below the underarm, the neck and a slit a facing reaches, mm, but over no more than this share of the side (common practice, no source). */
const BELOW_MM = 20;
const MOST_OF_SIDE = 0.5;

/** Half a facing of neck and armhole in one piece: the bodice's own upper edges, and a free edge below them, square to side and centre. */
export const inOneFacing = block({
  sizes: BODICE_SIZES,
  optional: BODICE_OPTIONAL,
  edges: ['neckline', 'shoulder', 'armhole', 'side', 'outer', 'centre'],
  lines: ['slit'],
  draw: (sizes) => {
    const { edges, lines } = bodiceShape('set-in', sizes);
    const { neckline = [], shoulder = [], armhole = [], side: whole = [] } = edges;
    const [side] = splitPath(whole, Math.min(BELOW_MM, pathLength(whole) * MOST_OF_SIDE));
    const down = endTangent(side);
    const low = Math.max(end(side).y, sizes.neckDrop + (sizes.slitLength ?? 0) + BELOW_MM);
    const middle = point(0, low);
    return {
      edges: {
        neckline,
        shoulder,
        armhole,
        side,
        outer: [hermite(end(side), point(-down.y, down.x), middle, point(-1, 0), 1 / 3, 1 / 3)],
        centre: [line(middle, point(0, sizes.neckDrop))],
      },
      lines: lines.slit ? { slit: lines.slit } : {},
    };
  },
});
