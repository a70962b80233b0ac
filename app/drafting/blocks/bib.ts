import { gapIn } from '../curves/gap';
import { BIB_REACH } from '../curves/shares';
import { arc, ellipseQuarter, end, endTangent, hermite, line, type Path, pathLength, point } from '../geometry';
import { block } from './block';
import { gapAtEnd } from './gap';

/** Where the arm round the neck passes into the front, radians from its middle. */
const ARM_UNTIL = 1.45;
/** The front is widest this share of its way down, and about this share as wide as it reaches below the neck's middle. */
const WIDEST_AT = 0.35;
const WIDE_SHARE = 0.66;

/**
 * Half a bib beside its fold; x right from the centre line, y down from the neck's lowest place. Narrow arms go round a neck
 * cut to a circle, and widen to a round front. Sizes in mm: `bibNeck` half the neck edge, `bibLength` down the middle,
 * `bibArm` how wide an arm is. Below the middle a gap is left open to turn it through.
 */
export const bib = block({
  sizes: ['bibNeck', 'bibLength', 'bibArm'],
  edges: ['top', 'side', 'bottom', 'gap', 'centre'],
  draw: ({ bibNeck, bibLength, bibArm }) => {
    const radius = bibNeck / BIB_REACH;
    const centre = point(0, -radius);
    const down = Math.PI / 2;
    const top = arc(centre, radius, down, down - BIB_REACH);
    const arm = arc(centre, radius + bibArm, down - BIB_REACH, down - ARM_UNTIL);
    const widest = point(Math.max((radius + bibLength) * WIDE_SHARE, radius + bibArm), bibLength * WIDEST_AT);
    const bottom: Path = [
      ...arm,
      hermite(end(arm), endTangent(arm), widest, point(0, 1), 1 / 3, 1 / 3),
      ellipseQuarter(widest, point(0, 1), point(0, bibLength), point(-1, 0)),
    ];
    return {
      edges: {
        top,
        side: [line(end(top), arm[0]?.from ?? end(top))],
        ...gapAtEnd('bottom', bottom, gapIn(2 * pathLength(bottom)) / 2),
        centre: [line(point(0, bibLength), point(0, 0))],
      },
      lines: {},
    };
  },
});
