import { hemLine } from '../curves/hem';
import { inOne } from '../curves/in-one';
import { neckline } from '../curves/neckline';
import { RAGLAN_DEEPER_MM, sideSeam, sideSizes } from '../curves/side';
import {
  add,
  cubic,
  distance,
  dot,
  end,
  endTangent,
  hermite,
  line,
  norm,
  type Path,
  type Point,
  pathLength,
  point,
  right,
  scale,
  splitPath,
  startTangent,
  subtract,
} from '../geometry';
import { block, type Fed, type Shape } from './block';
import { dartIn, dartLines, dartSizes } from './dart';
import { gapAtEnd } from './gap';
import { pocketedBy, pocketLines, pocketPlace, pocketSizes } from './pocket';

export const BODICE_SIZES = [
  'neckHalfWidth',
  'neckDrop',
  'slope',
  'shoulder',
  'armDrop',
  'chestHalf',
  'centreLength',
  'neckShare',
  ...sideSizes,
] as const;
/** What a sleeve cut in one with it is drawn from besides. */
const IN_ONE = ['armTurn', 'armReach', 'cuffHalf', 'armRadius'] as const;
export const BODICE_OPTIONAL = [
  'past',
  'slitLength',
  'turnGap',
  'chinGap',
  'plumbHem',
  ...IN_ONE,
  ...pocketSizes,
  ...dartSizes,
] as const;
const EDGES = [
  'neck-end',
  'chin',
  'neckline',
  'shoulder',
  'armhole',
  'cuff',
  'underarm',
  'side',
  'hem',
  'gap',
  'hem-end',
  'centre',
] as const;
const LINES = [...pocketPlace, ...dartLines, 'centre-line', 'slit'] as const;

type Sized = Fed<(typeof BODICE_SIZES)[number], (typeof BODICE_OPTIONAL)[number]>;

/** A raglan body's underarm lies no lower below an armhole's than this share of its depth (common practice, no source). */
const MOST_DEEPER = 0.1;
type Handles = { readonly out: number; readonly into: number; readonly least: number };
/**
 * Handles of the armhole: down beside the arm first, then out to the side, as shares of how far it goes either way. Where the side leans out, the
 * curve still arrives from this share of its chord: no hook.
 */
const SET_IN: Handles = { out: 0.5, into: 0.62, least: 0.3 };
/** A raglan's turns near its ends alone, as the sleeve's does: hollow all along, both would draw the chest together. It comes down aslant, and so has farther to turn. */
const RAGLAN: Handles = { out: 0.2, into: 0.5, least: 0.45 };
/** Under a hood at most this share of what the body has of the half neckline stays free. */
const MOST_CHIN = 0.6;
/** At most this share of a half neckline stays with the body. */
const MOST_NECK_KEPT = 0.98;

/**
 * Half a bodice hanging from the shoulder; x right from the centre line, y down from the high shoulder point. Curves
 * end square to the seam they end on. Sizes in mm, `slope` in radians, `past` how far an open centre lies past the
 * centre line, `neckShare` the length of neckline left beside a raglan sleeve, `slitLength` down the centre, `turnGap` what of
 * the hem a lining is turned through, beside the fold, `chinGap` what stays free of a hood under the chin, half of it; with `plumbHem` the side ends upright on a straight hem. With
 * its sleeve cut in one it has no armhole: the shoulder runs on to a cuff, and the underarm from there into the side.
 */
export function bodice(arm: Cut) {
  return block({
    sizes: BODICE_SIZES,
    optional: BODICE_OPTIONAL,
    edges: EDGES,
    lines: LINES,
    draw: (sizes) => bodiceShape(arm, sizes),
  });
}

export type Cut = 'set-in' | 'raglan' | 'in-one';

export function bodiceShape(cut: Cut, s: Sized): Shape<(typeof EDGES)[number], (typeof LINES)[number]> {
  const { slope, armholeDepth, armDrop, chestHalf, past, centreLength, neckDrop, slitLength } = s;
  const wholeNeck = neckline(s.neckHalfWidth, neckDrop, slope);
  const deep = armholeDepth + (cut === 'raglan' ? Math.min(RAGLAN_DEEPER_MM, armholeDepth * MOST_DEEPER) : 0);
  const underarm = point(chestHalf, armDrop + deep);
  // The side is as much shorter, so that it ends where any other does.
  const drawn = sideSeam(underarm, { ...s, armholeDepth: deep }, s.plumbHem !== null);
  const side =
    cut === 'in-one' && s.sideGather > 0 ? leavingAlike(drawn, sideSeam(underarm, { ...s, sideGather: 0 })) : drawn;
  const arm = armOf(cut, s, { wholeNeck, underarm, side });
  const edge = past === null ? 0 : -past;
  // A zip joins edge to edge: nothing lies past the centre.
  const lap = past === null || past === 0 ? null : past;
  const low = s.plumbHem === null ? centreLength : end(side).y;
  const hem = hemLine(side, point(0, low));
  const under = arm.armhole ?? arm.underarm ?? [];
  const pocket = pocketLines(s, {
    armhole: under,
    side,
    hem,
    high: neckDrop + (slitLength ?? 0),
    darts: s.dartWidth === null ? 0 : (s.dartCount ?? 1),
  });
  const above = [...arm.neckline, ...(arm.shoulder ?? []), ...(arm.armhole ?? [])];
  return {
    edges: {
      ...(lap === null ? {} : { 'neck-end': [line(point(-lap, neckDrop), point(0, neckDrop))] }),
      ...withChin(arm, s.chinGap),
      side,
      ...(s.turnGap === null ? { hem } : gapAtEnd('hem', hem, s.turnGap)),
      ...(lap === null ? {} : { 'hem-end': [line(point(0, low), point(-lap, low))] }),
      centre: [line(point(edge, low), point(edge, neckDrop))],
    },
    lines: {
      ...pocket,
      ...dartIn(s, { above, underarm, hem, pocket: pocketedBy(pocket) }),
      ...(lap !== null ? { 'centre-line': [line(point(0, neckDrop), point(0, low))] } : {}),
      ...(slitLength !== null ? { slit: [line(point(0, neckDrop), point(0, neckDrop + slitLength))] } : {}),
    },
  };
}

type Arm = {
  readonly neckline: Path;
  readonly shoulder?: Path;
  readonly armhole?: Path;
  readonly cuff?: Path;
  readonly underarm?: Path;
};
type Beside = { readonly wholeNeck: Path; readonly underarm: Point; readonly side: Path };

function armOf(cut: Cut, s: Sized, { wholeNeck, underarm, side }: Beside): Arm {
  if (cut === 'raglan') return raglan(wholeNeck, s.neckShare, underarm, side);
  if (cut === 'set-in') return setIn(s, underarm, side);
  const { armTurn, armReach, cuffHalf, armRadius } = s;
  const sleeve = {
    armTurn: armTurn ?? s.slope,
    armReach: armReach ?? 1,
    cuffHalf: cuffHalf ?? 1,
    armRadius: armRadius ?? 1,
  };
  const { over, cuff, underarm: under } = inOne({ ...s, ...sleeve }, startTangent(side));
  return { neckline: wholeNeck, shoulder: over, cuff, underarm: under };
}

/** The neckline from where a hood begins, and what is left free before it. */
function withChin(arm: Arm, gap: number | null): Arm & { readonly chin?: Path } {
  if (gap === null) return arm;
  const [chin, neckline] = splitPath(arm.neckline, Math.min(gap, pathLength(arm.neckline) * MOST_CHIN));
  return { chin, ...arm, neckline };
}

function setIn(s: Sized, underarm: Point, side: Path): Arm {
  const { slope, shoulder, neckHalfWidth, armDrop, neckDrop } = s;
  const armEnd = point(neckHalfWidth + shoulder * Math.cos(slope), armDrop);
  const down = point(-Math.sin(slope), Math.cos(slope));
  return {
    neckline: neckline(neckHalfWidth, neckDrop, slope),
    shoulder: [line(point(neckHalfWidth, 0), armEnd)],
    armhole: [curveInto(armEnd, down, underarm, outward(side), SET_IN)],
  };
}

/** An armhole, its handles shares of how far it goes down and how far out, so that it never overshoots either. */
function curveInto(from: Point, down: Point, to: Point, out: Point, handles: Handles) {
  const way = subtract(to, from);
  const depth = Math.max(dot(way, down), 1);
  const reach = Math.max(dot(way, out), handles.least * norm(way));
  const chord = norm(way);
  return hermite(from, down, to, out, (handles.out * depth) / chord, (handles.into * reach) / chord);
}

/** The neckline up to the raglan sleeve, and the edge from there to the underarm, square to both ends' seams. */
function raglan(wholeNeck: Path, share: number, underarm: Point, side: Path): Arm {
  const [kept] = splitPath(wholeNeck, Math.min(share, pathLength(wholeNeck) * MOST_NECK_KEPT));
  const corner = end(kept);
  const leaving = right(endTangent(kept));
  return { neckline: kept, armhole: [curveInto(corner, leaving, underarm, outward(side), RAGLAN)] };
}

/** A side into which something is gathered leaves the underarm as the one it is sewn to: sleeves cut in one end alike. */
function leavingAlike(side: Path, other: Path): Path {
  const [curve] = side;
  if (curve?.kind !== 'cubic') return side;
  const reach = distance(curve.from, curve.out);
  return [cubic(curve.from, add(curve.from, scale(startTangent(other), reach)), curve.into, curve.to)];
}

/** Square to the side at the underarm, pointing out of the piece. */
function outward(side: Path): Point {
  const down = startTangent(side);
  return point(down.y, -down.x);
}
