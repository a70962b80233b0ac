import type { Figure, Limb } from './figure';
import type { Panel } from './panels';
import type { Placing } from './place';
import { front, lowest, rows } from './reach';
import { crossed, dotted, headed, plus, type Spot, spot } from './space';

/** Round the arm's axis, its middle over the top. */
export function onArm(panel: Panel, { root, way, thick, side }: Limb): Placing {
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
export function onLeg(panel: Panel, { root, way, side }: Limb, { lines }: Figure): Placing {
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

/** Across a limb: `up` the way that is asked for, `ahead` the one that is in front when it hangs. */
function frame(way: Spot, wanted: Spot, side: number) {
  const up = headed(plus(wanted, way, -dotted(wanted, way)));
  const across = crossed(up, way);
  return { up, ahead: spot(across.x * side, across.y * side, across.z * side) };
}
