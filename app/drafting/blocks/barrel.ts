import { edgeCurve, hemCurve, intoFold, legEdge } from '../curves/barrel';
import { end, line, pathLength, point, reversePath, splitPath } from '../geometry';
import { block } from './block';

/** A hood leaves no more than this share of the neck edge free. */
const MOST_CHIN = 0.8;

/**
 * Half of what lies round a body on four legs, back or belly, beside its fold; x right from the fold, y down from its neck edge
 * there. The side has a hollow for a leg, half an oval; it meets neck, legs and hem along the fold but for a lean at the neck,
 * `lean`, so that all joins run smooth. Sizes in mm, turns in radians, down from the fold to the corner positive:
 * `neckX`, `neckTurn` the corner of the neck edge, as far down as an arc that turns so, `neckEnds` how it leans there; `legHalf`, `legAt` half the width at the legs and where the hollow begins, `legDeep`, `legHigh` its
 * depth and half its height; `hemX`, `hemTurn` the corner of the hem, as far down as an arc that turns so; `centreLong` along the fold; `past` how far it goes on past an
 * open centre. `chinGap` mm of the neck edge, beside the fold or centre, are an edge of their own: a hood leaves them free.
 */
export const barrel = block({
  sizes: [
    'neckX',
    'neckTurn',
    'neckEnds',
    'lean',
    'legHalf',
    'legAt',
    'legDeep',
    'legHigh',
    'hemX',
    'hemTurn',
    'centreLong',
  ],
  optional: ['past', 'chinGap'],
  edges: ['neck-end', 'chin', 'neckline', 'fore-side', 'leg', 'hind-side', 'hem', 'hem-end', 'centre'],
  lines: ['centre-line'],
  draw: ({
    neckX,
    neckTurn,
    neckEnds,
    lean,
    legHalf,
    legAt,
    legDeep,
    legHigh,
    hemX,
    hemTurn,
    centreLong,
    past,
    chinGap,
  }) => {
    const whole = edgeCurve(0, neckX, neckTurn, neckEnds);
    const gap = Math.min(chinGap ?? 0, pathLength(whole) * MOST_CHIN);
    const [chin, neckline] = gap > 0 ? splitPath(whole, gap) : [null, whole];
    const hem = hemCurve(centreLong, hemX, hemTurn);
    const fore = point(legHalf, legAt);
    const leg = legEdge(fore, legDeep, legHigh);
    const edge = past === null ? 0 : -past;
    return {
      edges: {
        ...(past === null ? {} : { 'neck-end': [line(point(edge, 0), point(0, 0))] }),
        ...(chin ? { chin } : {}),
        neckline,
        'fore-side': [intoFold(end(neckline), fore, lean)],
        leg,
        'hind-side': [intoFold(end(leg), end(hem), 0)],
        hem: reversePath(hem),
        ...(past === null ? {} : { 'hem-end': [line(point(0, centreLong), point(edge, centreLong))] }),
        centre: [line(point(edge, centreLong), point(edge, 0))],
      },
      lines: past === null ? {} : { 'centre-line': [line(point(0, 0), point(0, centreLong))] },
    };
  },
});
