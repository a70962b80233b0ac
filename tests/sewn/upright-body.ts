import type { Body } from '../../app/body';
import { ellipseArc, ellipsePerimeter } from '../toys/solids';
import type { Figure, Limb } from './figure';
import { fitted, over, type Shape } from './fitted';
import { ellipsoid, level, limb, type Part, union } from './solid';
import { headed, plus, spot } from './space';
import { type Station, trunk } from './trunk';

const ROUND = 2 * Math.PI;
/** How a shoulder falls, radians: as the drafts take it (common practice, no source). */
const SLOPES = { square: 0.06, sloped: 0.35, none: 0.35 } as const;
/** Where arms point: hanging ones stand off the side of a stuffed body (imagined). */
const ARMS = { down: [0.8, 0.6, 0], out: [1, 0.05, 0], forward: [0.55, 0.25, 0.8], up: [0.75, -0.65, 0] } as const;
/** Half thickness of a shoulder's ridge at its arm end, of the chest's radius (imagined). */
const RIDGE = 0.35;
/** How far round the nape lies below the back of the head, radians; how far forward a hood's edge sits, a share: as the toys of solids have it. */
const NAPE = 0.8;
const FORWARD = 0.3;

type Of = (id: keyof Body['sizes']) => number;

/** An upright toy of solids that has the girths of its measures; what lengths it cannot have is told as residuals. */
export function uprightFigure({ sizes, traits }: Pick<Body, 'sizes' | 'traits'>): Figure {
  const of: Of = (id) => sizes[id]?.value ?? 0;
  const neck = of('neck-girth') / ROUND;
  const sits = traits.posture === 'sits';
  const slope = SLOPES[traits.shoulders];
  const shoulder = traits.shoulders === 'none' ? 0 : of('shoulder-length');
  const end = { x: neck + shoulder * Math.cos(slope), y: shoulder * Math.sin(slope) };
  const share = of('front-width') / Math.max(1, of('front-width') + of('back-width'));
  const linesOf = (tall: number) => {
    const underarm = end.y + tall * of('armhole-depth');
    const [waist, hem] = [underarm + tall * of('underarm-to-waist'), underarm + tall * of('side-length')];
    const crotch = Math.max(waist + of('body-rise'), hem + 5);
    return { neck: 0, shoulder: end, underarm, waist, hem, crotch, seat: waist + 0.62 * (crotch - waist) };
  };
  const stations = ({ wide, back, tall }: Shape): Station[] => {
    const { underarm, waist, hem, seat } = linesOf(tall);
    const row = (down: number, girth: number, front: number, backs: number): Station => ({
      down,
      girth,
      across: Math.min(0.24 * girth, (girth / ROUND) * wide),
      front,
      back: backs,
    });
    const rows = [
      ridge(0, neck, neck, back),
      ridge(Math.max(3, end.y), end.x, traits.shoulders === 'none' ? end.x : (RIDGE * of('chest-girth')) / ROUND, back),
      row(underarm, of('chest-girth'), (share + 0.5) / 2, back / 2),
      row((underarm + Math.min(waist, hem)) / 2, of('body-girth'), share, 0),
      row(waist, of('waist-girth'), share, 0),
      row(hem, of('hem-girth'), share, 0),
      row(seat, sits ? levelSeat(of) : of('hip-girth'), 0.5, 0),
    ].sort((a, b) => a.down - b.down);
    return rows.filter((each, n) => n === 0 || each.down - (rows[n - 1]?.down ?? 0) > 3);
  };
  const { shape, residuals } = fitted(stations, linesOf, {
    neck,
    front: of('body-length'),
    behind: of('back-body-length'),
    fork: traits.legs === 'sewn' ? 0 : of('crotch-length'),
  });
  const lines = linesOf(shape.tall);
  const { part, section } = trunk(stations(shape), lines.seat, lines.crotch, shape.full);
  const crease: Crease = { neck, back: shape.back, front: of('front-neck-drop'), behind: of('back-neck-drop') };
  const head = headOf(of, crease);
  const pit = section(lines.underarm);
  const arms = [1, -1].map((side): Limb => {
    const [x, y, z] = ARMS[traits.arms];
    const [thick, way] = [of('arm-root-girth') / ROUND, headed(spot(side * x, y, z))];
    const over = headed(plus(spot(0, -1, 0), way, way.y));
    const root = plus(spot(side * pit.across, lines.underarm, -pit.back), over, thick);
    const sunk = traits.arms === 'forward' ? plus(root, spot(side, 0, 0), -0.5 * thick) : plus(root, way, -0.5 * thick);
    return {
      root: sunk,
      way,
      thick,
      girth: of('upper-arm-girth') / ROUND,
      thin: of('paw-girth') / ROUND,
      length: of('arm-length') + 0.5 * thick,
      side,
    };
  });
  const legs = [1, -1].map((side): Limb => {
    const [thick, thin] = [of('thigh-girth') / ROUND, of('foot-girth') / ROUND];
    const beside = Math.max(thick + 1, 0.5 * section(lines.seat).across);
    return {
      root: spot(side * beside, lines.crotch - (sits ? 1 : 0.6) * thick, 0),
      way: headed(sits ? spot(side * 0.15, 0, 1) : spot(side * 0.06, 1, 0)),
      thick,
      girth: thick,
      thin,
      length: of('inside-leg-length') + 0.6 * thin + (sits ? 0 : 0.6 * thick),
      side,
    };
  });
  const throat = limb(spot(0, 0, -shape.back), head.centre, neck, Math.min(neck, head.half.x * 0.8));
  const solid = union([
    creased(part, lines.underarm, crease),
    throat,
    ellipsoid(head.centre, head.half),
    ...[...arms, ...legs].flatMap(limbOf),
  ]);
  const ends = (length: number, face: 1 | -1) => {
    const reach = Array.from({ length: Math.round(lines.crotch) }, (_, down) => down + 1);
    return reach.find((down) => over(neck, down, section, face) >= length) ?? lines.crotch;
  };
  const hem = { front: ends(of('body-length'), 1), side: lines.hem, back: ends(of('back-body-length'), -1) };
  return { solid, section, head, arms, legs, lines, hem, falls: 'y', residuals };
}

/**
 * The level way round a seat whose girth was taken sitting: low behind and above the legs in front, so aslant by a thigh's
 * thickness. Aslant, a circle becomes an ellipse; the way round it by the mean square of its axes (geometry).
 */
function levelSeat(of: Of): number {
  const [aslant, thigh] = [of('hip-girth'), of('thigh-girth')];
  return Math.sqrt(Math.max(0.5 * aslant ** 2, aslant ** 2 - thigh ** 2 / 2));
}

const ridge = (down: number, across: number, deep: number, back: number): Station => ({
  down,
  girth: ellipsePerimeter(across, deep),
  across,
  front: 0.5,
  back,
});

const limbOf = ({ root, way, thick, girth, thin, length }: Limb) => {
  const middle = plus(root, way, length / 2);
  return [limb(root, middle, thick, girth), limb(middle, plus(root, way, length), girth, thin)];
};

/** Where head and trunk meet: the neck's radius, how far its middle lies back, how low it lies before and behind, mm. */
type Crease = { readonly neck: number; readonly back: number; readonly front: number; readonly behind: number };

/** A trunk whose upper end lies as low before and behind as its crease does: sheared upright, less and less to the underarm. */
function creased(part: Part, underarm: number, { neck, back, front, behind }: Crease): Part {
  const distance = level((x, y, z) => {
    const out = Math.max(-1, Math.min(1, (z + back) / neck));
    const low = (out * (front - behind) + out * out * (front + behind)) / 2;
    return part.distance(x, y - low * Math.max(0, Math.min(1, 1 - y / underarm)), z);
  });
  return { ...part, distance };
}

/** An ellipsoid as round as the head, as high as its crown arc says, its nape on the neck line; it leans as the crease does. */
function headOf(of: Of, { neck, back, front, behind }: Crease): Figure['head'] {
  const deep = of('head-girth') / ROUND;
  let [low, high] = [0.5 * deep, 2 * deep];
  for (let n = 0; n < 30; n++) {
    const middle = (low + high) / 2;
    if (ellipseArc(middle, deep, -Math.PI / 2 - NAPE, Math.asin(FORWARD)) < of('crown-arc')) low = middle;
    else high = middle;
  }
  const lean = Math.atan2(front - behind, 2 * neck);
  const up = low * Math.sin(NAPE);
  return { centre: spot(0, -up * Math.cos(lean), up * Math.sin(lean) - back), half: spot(deep, low, deep) };
}
