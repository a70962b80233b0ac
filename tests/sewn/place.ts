import type { Point } from '../../app/drafting/geometry';
import type { Figure, Limb } from './figure';
import type { Panel, Panels } from './panels';
import { face as faceOf, lowest } from './reach';
import { onArm, onLeg } from './round-limbs';
import { asCape, asGore, roundTrunk } from './round-trunk';
import { at, plus, type Spot, spot } from './space';

/** Where a point of a panel starts, mm: near where it will be worn, outside a body that is drawn in. */
export type Placing = (p: Point) => Spot;

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
  if (name === 'cape') return asCape(panel, figure)(side);
  const face = /front|belly/u.test(name) ? 1 : /back/u.test(name) ? -1 : 0;
  if (face === 0) return null;
  const bodice = panels.find(({ half }) => half.piece.name === 'front');
  const beyond = name.replace(/front|belly|back/u, (part) => (part === 'back' ? '(front|belly)' : 'back'));
  const other = panels.find(({ half }) => new RegExp(`^${beyond}$`, 'u').test(half.piece.name));
  const top = /^skirt/u.test(name) ? (bodice ? lowest(bodice) : figure.lines.waist) : 0;
  return roundTrunk(panel, other, side, face, top);
}

/** Beside the head, its face edge in front. */
function overHead(panel: Panel, side: number, { head }: Figure): Placing {
  const xs = panel.points.map(({ x }) => x);
  const [middle, foot, turn] = [(Math.min(...xs) + Math.max(...xs)) / 2, lowest(panel), faceOf(panel)];
  return ({ x, y }) => spot(side * head.half.x, y - foot + 5, head.centre.z + turn * (x - middle));
}
