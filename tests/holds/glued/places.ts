import type { Fault } from './index';
import type { Place, Surface } from './surface';

const ROUND = 2 * Math.PI;
/** Corners of a trued joint add to 180° ± 3°; two joints meet at a point. */
const EACH = (3 * Math.PI) / 180;
/** Edges that show when the garment is worn: they cross a seam without a corner, turned equally far. */
const SHOWN: readonly string[] = ['hem', 'casing', 'edge', 'finished'];
/** Here pieces meet at an angle by design: chins, the ends of collars, bindings and slits, gathers, the points of a gusset. */
const CORNERED =
  /^(hood-neck-.*|chin|collar-.*|bib-.*|bag-.*|lining-.*|facing-neck|.*binding.*|waist.*|tier-.*|cuff-band.*|back-casing|((lining|tail)-)?slit|gusset-.*)$/;
const SAME_ALLOWANCE_MM = 0.01;

/** Points inside the garment that do not lie flat, and shown edges that cross a seam with a corner or a jump in their turning. */
export function flatness({ places }: Surface, layered: ReadonlySet<string>): Fault[] {
  return places.flatMap((place) => {
    if (place.corners.some(({ half }) => layered.has(half.piece.name))) return [];
    return place.rim.length > 0 ? crossing(place) : point(place);
  });
}

/** Two corners alone are the corner of a bag. */
function point({ angle, corners, seams }: Place): Fault[] {
  if (corners.length <= 2 || seams.some((name) => CORNERED.test(name)) || partsLegs(corners, seams)) return [];
  const off = angle - ROUND;
  return Math.abs(off) > 2 * EACH
    ? [{ code: 'point', where: [...seams].sort().join('+'), told: `${degrees(off)} off flat` }]
    : [];
}

/** Without a fork two legs part as two tubes do: every seam runs straight on there. */
function partsLegs(corners: Place['corners'], seams: Place['seams']): boolean {
  return seams.includes('inseam') && corners.every(({ angle }) => Math.abs(angle - Math.PI) < EACH);
}

function crossing({ angle, corners, seams, rim }: Place): Fault[] {
  const [one, two] = rim;
  if (!one || !two || corners.length < 2 || seams.some((name) => CORNERED.test(name))) return [];
  if (one.side.role !== two.side.role || !SHOWN.includes(one.side.role)) return [];
  const where = [...new Set(rim.map(({ half, side }) => `${half.piece.name}.${side.name}`))].sort().join('+');
  const off = Math.min(Math.abs(angle - Math.PI), Math.abs(angle - ROUND));
  const apart = Math.abs(one.side.allowance - two.side.allowance);
  return [
    ...(off > EACH * (corners.length / 2) ? [{ code: 'corner', where, told: `${degrees(off)} off straight` }] : []),
    ...(apart > SAME_ALLOWANCE_MM ? [{ code: 'turned-unequally', where, told: `${apart} mm` }] : []),
  ];
}

const degrees = (radians: number) => `${((radians * 180) / Math.PI).toFixed(1)}°`;
