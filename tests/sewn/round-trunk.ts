import type { Point } from '../../app/drafting/geometry';
import type { Figure } from './figure';
import type { Panel } from './panels';
import type { Placing } from './place';
import { lowest, mean, rows } from './reach';
import { spot } from './space';

/**
 * Round the trunk as it is drawn: what lies before the sides and what lies behind share the way round by their widths.
 * Above the underarm the pieces lean to each other. `other` is the panel on the other face.
 */
export function roundTrunk(panel: Panel, other: Panel | undefined, side: number, face: 1 | -1, top: number): Placing {
  const [widths, beyond] = [rows(panel), other ? rows(other) : rows(panel)];
  const ends = [...panel.edges].filter(([name]) => /side$/u.test(name)).flatMap(([, edge]) => edge);
  const underarm = Math.min(...ends.map(({ point }) => panel.points[point]?.y ?? 0), lowest(panel));
  return ({ x, y }) => {
    const down = Math.max(y, underarm);
    const both = widths(down).to + beyond(down).to;
    const [angle, radius] = [(Math.PI * x) / both, both / Math.PI];
    const lean = y < underarm ? 0.25 + (0.75 * Math.max(0, y)) / Math.max(underarm, 1) : 1;
    return spot(side * radius * Math.sin(angle), top + y, face * radius * Math.cos(angle) * lean);
  };
}

/** Which way six gores look, from the front over the side to the back, radians. */
const GORES: Readonly<Record<string, number>> = {
  front: 0,
  before: Math.PI / 3,
  behind: (2 * Math.PI) / 3,
  back: Math.PI,
};

/** A sixth of the way round; `seam` is the side of a gore that lies at the body's side. */
export function asGore(panel: Panel, side: number, { lines }: Figure): Placing {
  const widths = rows(panel);
  const name = panel.half.piece.name.replace(/^tunic-/u, '');
  const middle = GORES[name] ?? 0;
  const turn = name === 'back' ? -1 : mean(panel, /^seam/u) < mean(panel, /^side/u) === (name === 'before') ? -1 : 1;
  return ({ x, y }) => {
    const { from, to } = widths(y);
    const half = /front|back/u.test(name) ? to : (to - from) / 2;
    const angle = middle + ((Math.PI / 6) * turn * x) / half;
    const radius = (6 * half) / Math.PI;
    return spot(side * radius * Math.sin(angle), lines.neck + y, radius * Math.cos(angle));
  };
}

/** A ruff lies so flat: it falls this much for each mm that it stands out. */
const RUFF = 0.15;

/**
 * A sector, its middle behind, as the cone it rolls up to; but where arms or forelegs are in its way (beside the body, or
 * before it) stretched to a ruff that lies above them, as it is put on.
 */
export function asCape(panel: Panel, { arms, legs, falls }: Figure): (side: number) => Placing {
  const neck = [...panel.edges]
    .filter(([name]) => /^neck/u.test(name))
    .flatMap(([, edge]) => edge.map(({ point }) => panel.points[point]));
  const tip = centreOf(neck.flatMap((p) => p ?? []));
  const polar = (p: Point) => ({
    out: Math.hypot(p.x - tip.x, p.y - tip.y),
    turn: Math.abs(Math.atan2(p.x - tip.x, p.y - tip.y)),
  });
  const all = panel.points.map(polar);
  const whole = Math.min(Math.PI, Math.max(...all.map(({ turn }) => turn)));
  const least = Math.min(...all.map(({ out }) => out));
  const slope = Math.sqrt(Math.max(0.05, 1 - (whole / Math.PI) ** 2));
  const inTheWay = (angle: number) => {
    if (arms.length + legs.length === 0) return 0;
    return falls === 'y' ? Math.sin(angle) : (1 + Math.cos(angle)) / 2;
  };
  return (side) => (p) => {
    const { out, turn } = polar(p);
    const angle = Math.PI * (1 - turn / whole);
    const [flat, stands] = [inTheWay(angle), out - least];
    const cone = { down: stands * slope, radius: (out * whole) / Math.PI };
    const ruff = { down: stands * RUFF, radius: (least * whole) / Math.PI + stands * Math.sqrt(1 - RUFF ** 2) };
    const radius = flat * ruff.radius + (1 - flat) * cone.radius;
    return spot(side * radius * Math.sin(angle), flat * ruff.down + (1 - flat) * cone.down, radius * Math.cos(angle));
  };
}

/** The middle of a circle on the fold (x = 0), by the first and last of points on it. */
function centreOf(points: readonly Point[]): Point {
  const [a, b] = [points[0], points[points.length - 1]];
  if (!a || !b) return { x: 0, y: 0 };
  // On x = 0 and as far from both ends.
  const y = Math.abs(b.y - a.y) < 1e-6 ? a.y : (b.x ** 2 - a.x ** 2 + b.y ** 2 - a.y ** 2) / (2 * (b.y - a.y));
  return { x: 0, y: y };
}
