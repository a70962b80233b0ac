import type { Point } from '../../app/drafting/geometry';
import type { Figure, Limb } from './figure';
import type { Panel, Panels } from './panels';
import { at, crossed, dotted, headed, plus, type Spot, spot } from './space';

/** Where a point of a panel starts, mm: near where it will be worn, outside a body that is drawn in. */
type Placing = (p: Point) => Spot;

/** Start places of all points, three numbers a point. What has no place of its own starts between what it is sewn to. */
export function placed({ panels, sewn, hands, count }: Panels, figure: Figure): Float64Array {
  const places = new Float64Array(3 * count);
  const put = (point: number, { x, y, z }: Spot) => places.set([x, y, z], 3 * point);
  const later: Panel[] = [];
  for (const panel of panels) {
    const side = panel.half.hand * (hands.get(panel.half.piece.name) ?? 1);
    const place = placing(panel, side, figure, panels);
    if (place) panel.points.forEach((p, n) => void put(panel.first + n, place(p)));
    else later.push(panel);
  }
  for (const panel of later) {
    const met = sewn.flatMap(({ one, two }) => {
      const [own, other] = within(panel, one) ? [one, two] : [two, one];
      if (!within(panel, own) || later.some((each) => within(each, other))) return [];
      return [{ from: panel.points[own - panel.first] ?? { x: 0, y: 0 }, to: other }];
    });
    panel.points.forEach((p, n) => {
      let [sum, weights] = [spot(0, 0, 0), 1e-12];
      for (const { from, to } of met) {
        const weight = 1 / ((p.x - from.x) ** 2 + (p.y - from.y) ** 2 + 1);
        sum = plus(sum, spot(at(places, 3 * to), at(places, 3 * to + 1), at(places, 3 * to + 2)), weight);
        weights += weight;
      }
      put(panel.first + n, spot(sum.x / weights, sum.y / weights, sum.z / weights));
    });
  }
  return places;
}

const within = ({ first, points }: Panel, point: number) => point >= first && point < first + points.length;

function placing(panel: Panel, side: number, figure: Figure, panels: readonly Panel[]): Placing | null {
  const { name } = panel.half.piece;
  const limb = (limbs: readonly Limb[]) => limbs.find((each) => each.side === side);
  const [arm, leg] = [limb(figure.arms), limb(figure.legs)];
  if (/sleeve/u.test(name) && arm) return onArm(panel, arm);
  if (/^leg$/u.test(name) && leg) return onLeg(panel, leg, figure);
  if (/^hood/u.test(name)) return overHead(panel, side, figure);
  if (/^tunic/u.test(name)) return asGore(panel, side, figure);
  if (!/front|back/u.test(name)) return null;
  const bodice = panels.find(({ half }) => half.piece.name === 'front');
  const top = /^skirt/u.test(name) ? (bodice ? lowest(bodice) : figure.lines.waist) : 0;
  return roundTrunk(panel, side, /front/u.test(name) ? 1 : -1, top);
}

const lowest = ({ points }: Pick<Panel, 'points'>) => Math.max(...points.map(({ y }) => y));

/** Round the trunk as it is drawn; above the underarm the pieces lean to each other. */
function roundTrunk(panel: Panel, side: number, face: 1 | -1, top: number): Placing {
  const widths = rows(panel);
  const ends = (panel.edges.get('side') ?? []).map(({ point }) => panel.points[point]?.y ?? 0);
  const underarm = Math.min(...ends, lowest(panel));
  return ({ x, y }) => {
    const width = widths(Math.max(y, underarm)).to;
    const [angle, radius] = [((Math.PI / 2) * x) / width, (2 * width) / Math.PI];
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
function asGore(panel: Panel, side: number, { lines }: Figure): Placing {
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

/** Round the arm's axis, its middle over the top. */
function onArm(panel: Panel, { root, way, thick, side }: Limb): Placing {
  const widths = rows(panel);
  const under = [...panel.edges].filter(([name]) => /under/u.test(name)).flatMap(([, edge]) => edge);
  const underarm = Math.min(...under.map(({ point }) => panel.points[point]?.y ?? 0));
  const { up, ahead } = frame(way, spot(0, -1, 0), side);
  const turn = front(panel);
  return ({ x, y }) => {
    const { from, to } = widths(Math.max(y, underarm));
    const [angle, radius] = [(2 * Math.PI * (x - (from + to) / 2) * turn) / (to - from), (to - from) / (2 * Math.PI)];
    const middle = plus(root, way, y - underarm + 0.25 * thick);
    return plus(plus(middle, up, radius * Math.cos(angle)), ahead, radius * Math.sin(angle));
  };
}

/** Half round the trunk down to the fork, then round the leg. */
function onLeg(panel: Panel, { root, way, side }: Limb, { lines }: Figure): Placing {
  const widths = rows(panel);
  const inseam = panel.edges.get('front-inseam') ?? [];
  // Legs that are sewn together have no fork: what they wear is one tube.
  const fork =
    inseam.length > 0 ? Math.min(...inseam.map(({ point }) => panel.points[point]?.y ?? 0)) : 2 * lowest(panel);
  const { up: out, ahead } = frame(way, spot(side, 0, 0), side);
  const turn = front(panel);
  return ({ x, y }) => {
    const { from, to } = widths(y);
    const share = (turn > 0 ? to - x : x - from) / (to - from);
    const [half, whole] = [(to - from) / Math.PI, (to - from) / (2 * Math.PI)];
    const above = spot(side * half * Math.sin(Math.PI * share), lines.waist + y, half * Math.cos(Math.PI * share));
    const middle = plus(root, way, y - fork);
    const angle = 2 * Math.PI * share;
    const below = plus(plus(middle, out, -whole * Math.cos(angle)), ahead, whole * Math.sin(angle));
    const blend = Math.max(0, Math.min(1, (y - 0.6 * fork) / (0.4 * fork)));
    return plus(plus(spot(0, 0, 0), above, 1 - blend), below, blend);
  };
}

/** Beside the head, its face edge in front. */
function overHead(panel: Panel, side: number, { head }: Figure): Placing {
  const xs = panel.points.map(({ x }) => x);
  const [middle, foot, turn] = [(Math.min(...xs) + Math.max(...xs)) / 2, lowest(panel), face(panel)];
  return ({ x, y }) => spot(side * head.half.x, y - foot + 5, head.centre.z + turn * (x - middle));
}

/** Across a limb: `up` the way that is asked for, `ahead` the one that is in front when it hangs. */
function frame(way: Spot, wanted: Spot, side: number) {
  const up = headed(plus(wanted, way, -dotted(wanted, way)));
  const across = crossed(up, way);
  return { up, ahead: spot(across.x * side, across.y * side, across.z * side) };
}

const mean = (panel: Panel, named: RegExp) => {
  const xs = [...panel.edges]
    .filter(([name]) => named.test(name))
    .flatMap(([, edge]) => edge.map(({ point }) => panel.points[point]?.x ?? 0));
  return xs.reduce((sum, x) => sum + x, 0) / Math.max(1, xs.length);
};
/** 1 where the front lies to the right on the cloth. */
const front = (panel: Panel) => (mean(panel, /^front/u) > mean(panel, /^back/u) ? 1 : -1);
const face = (panel: Panel) => (mean(panel, /^face/u) > mean(panel, /^crown|^back/u) ? 1 : -1);

/** How far a panel reaches left and right at a height. */
function rows({ points, edges }: Panel) {
  const count = 1 + Math.max(...[...edges.values()].flat().map(({ point }) => point));
  const outline = points.slice(0, count);
  return (y: number) => {
    const kept = Math.max(Math.min(...outline.map((p) => p.y)) + 0.01, Math.min(lowest({ points: outline }) - 0.01, y));
    const xs = outline.flatMap((a, n) => {
      const b = outline[(n + 1) % outline.length] ?? a;
      return a.y > kept !== b.y > kept ? [a.x + ((b.x - a.x) * (kept - a.y)) / (b.y - a.y)] : [];
    });
    return { from: Math.min(...xs), to: Math.max(...xs, Math.min(...xs) + 1) };
  };
}
