import type { Mm } from '../../body';
import {
  angleBetween,
  type Cubic,
  cubic,
  distance,
  line,
  moved,
  type Path,
  type Point,
  point,
  polyline,
  toward,
} from '../geometry';

/** A sock seen from the side, mm: see the block `sockSide`. */
export type SockSide = {
  readonly sockTop: Mm;
  readonly sockLeg: Mm;
  readonly sockEven: Mm;
  readonly sockHigh: Mm;
  readonly sockTall: Mm;
  readonly sockAcross: Mm;
  readonly sockSole: Mm;
  readonly sockTurn: Mm;
};

/** Corners before they are rounded; x right from the middle of the leg, y down from the top. */
export type SockCorners = Readonly<Record<'heel' | 'instep' | 'over' | 'toe', Point>>;

/** The toe is so high, of how high the instep lies above the sole (common practice, no source). */
const TOE_HIGH = 0.5;
/** The instep turns within this share of the way from it to the toe. */
const INSTEP_TURNS = 0.45;
/** The toe's corners within this share of the way between them, at most. */
const TOE_TURNS = 0.5;
/** A cubic as near to an arc as can be has handles of so many radii times the tangent of a quarter of its turn. */
const ARC = 4 / 3;

/** How high the instep lies above the sole: as far from the heel as `sockAcross` says, on the front of the leg. */
export const instepHigh = ({ sockAcross, sockLeg }: Pick<SockSide, 'sockAcross' | 'sockLeg'>): Mm =>
  Math.sqrt(Math.max(sockAcross ** 2 - sockLeg ** 2, 0));

/** How far below the top at least the heel lies where the top's edges stay straight for `even`: below that the instep turns. */
export function leastTall(sock: Omit<SockSide, 'sockTall'>, even: Mm): Mm {
  const { instep, over } = sockCorners({ ...sock, sockTall: 0 });
  return even + instepHigh(sock) + INSTEP_TURNS * distance(instep, over);
}

/** The heel under the back of the leg, the sole level from there to the toe, the instep on the front of the leg. */
export function sockCorners(sock: SockSide): SockCorners {
  const { sockLeg, sockTall, sockSole } = sock;
  const high = instepHigh(sock);
  const heel = point(-sockLeg / 2, sockTall);
  const toe = moved(heel, point(1, 0), sockSole);
  return { heel, toe, over: moved(toe, UP, TOE_HIGH * high), instep: point(sockLeg / 2, sockTall - high) };
}

/**
 * The two seams of a sock in the ring's order: `front` from its top down the leg and over the instep to the tip of the toe; `round`
 * on from there along the sole, round the heel and up behind the leg. Heel, toe and instep are rounded.
 */
export function sockSeams(sock: SockSide): { readonly front: Path; readonly round: Path } {
  const { sockTop, sockLeg, sockEven, sockHigh, sockTurn } = sock;
  const { heel, instep, over, toe } = sockCorners(sock);
  const side = (of: 1 | -1): Point[] => [
    point((of * sockTop) / 2, 0),
    ...(sockTop > sockLeg ? [point((of * sockTop) / 2, sockEven), point((of * sockLeg) / 2, sockHigh)] : []),
  ];
  const tip = TOE_TURNS * distance(over, toe);
  const along = distance(instep, over);
  const atInstep = rounded(moved(instep, UP, 1), instep, over, INSTEP_TURNS * along);
  const atTip = rounded(instep, over, toe, Math.min(TOE_TURNS * along, tip));
  const atToe = rounded(over, toe, heel, Math.min(sockTurn, tip));
  const atHeel = rounded(toe, heel, moved(heel, UP, 1), sockTurn);
  return {
    front: [...polyline([...side(1), atInstep.from]), atInstep, line(atInstep.to, atTip.from), atTip],
    round: [
      ...(distance(atTip.to, atToe.from) > NO_WAY_MM ? [line(atTip.to, atToe.from)] : []),
      atToe,
      line(atToe.to, atHeel.from),
      atHeel,
      ...polyline([atHeel.to, ...side(-1).reverse()]),
    ],
  };
}

const UP = point(0, -1);
/** Shorter, it is the hair that a rounded sum leaves. */
const NO_WAY_MM = 1e-6;

/** A corner rounded from so far before it to as far behind it, by the cubic nearest an arc. */
function rounded(before: Point, corner: Point, after: Point, reach: Mm): Cubic {
  const [back, on] = [toward(corner, before), toward(corner, after)];
  const turn = Math.PI - Math.abs(angleBetween(back, on));
  const handle = (ARC * Math.tan(turn / 4) * reach) / Math.tan(turn / 2);
  const [from, to] = [moved(corner, back, reach), moved(corner, on, reach)];
  return cubic(from, moved(from, back, -handle), moved(to, on, -handle), to);
}
