import { gapIn } from '../curves/gap';
import { BIB_REACH } from '../curves/shares';
import { arc, end, endTangent, hermite, line, type Path, pathLength, point } from '../geometry';
import { block } from './block';
import { gapAtEnd } from './gap';

/** A tab passes into the side where it is widest, a quarter round from the middle of the back; the side is down at its width this share of the way. */
const TAB_UNTIL = Math.PI / 2;
const WIDE_AT = 0.3;
/** The corner behind is rounded by this share of half the width. */
const ROUNDED = 0.6;

/**
 * Half a coat for four legs beside its fold along the spine; x right from it, y down from the nape, where the neck is cut to a
 * circle. Tabs go round the neck on to the chest. Sizes in mm: `coatNeck` half the neck edge with its lap, `coatTab` how wide a
 * tab is, `coatHalf` half the width, `coatLong` from nape to the end; a band `bandWide` wide is fastened `bandUnder` inside the side.
 */
export const coat = block({
  sizes: ['coatNeck', 'coatTab', 'coatHalf', 'coatLong', 'bandWide', 'bandUnder'],
  edges: ['top', 'side', 'bottom', 'gap', 'centre'],
  lines: ['band-place'],
  draw: ({ coatNeck, coatTab, coatHalf, coatLong, bandWide, bandUnder }) => {
    const radius = coatNeck / BIB_REACH;
    const centre = point(0, -radius);
    const down = Math.PI / 2;
    const top = arc(centre, radius, down, down - BIB_REACH);
    const tab = arc(centre, radius + coatTab, down - BIB_REACH, down - TAB_UNTIL);
    const corner = Math.min(coatHalf, coatLong * (1 - WIDE_AT)) * ROUNDED;
    const wide = point(coatHalf, coatLong * WIDE_AT);
    const low = point(coatHalf, coatLong - corner);
    const [inside, middle] = [coatHalf - bandUnder, (wide.y + low.y) / 2];
    const round: Path = [
      ...tab,
      hermite(end(tab), endTangent(tab), wide, point(0, 1), 1 / 3, 1 / 3),
      line(wide, low),
      ...arc(point(coatHalf - corner, low.y), corner, 0, down),
      line(point(coatHalf - corner, coatLong), point(0, coatLong)),
    ];
    return {
      edges: {
        top,
        side: [line(end(top), tab[0]?.from ?? end(top))],
        ...gapAtEnd('bottom', round, gapIn(2 * pathLength(round)) / 2),
        centre: [line(point(0, coatLong), point(0, 0))],
      },
      lines: { 'band-place': [line(point(inside, middle - bandWide / 2), point(inside, middle + bandWide / 2))] },
    };
  },
});
