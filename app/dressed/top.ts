import { lerp, type Point, point } from '../body/point';
import type { Part } from '../measuring/figure';
import { bothHalves, cloth, corner, drawnSeam, fold, hoop, inside, otherHalf, stitches } from './cloth';
import type { Opening, Top } from './clothes';
import { hemOf, OFF, type Wearer } from './wearer';

/** From a sewn hem's edge to its stitches, in figure units. */
const HEM = 4.5;

/** So many lines show a band of rib. */
const RIBS = 15;

/** What else of a garment decides how its top is drawn. */
type With = { readonly sleeved: boolean; readonly raglan: boolean; readonly hooded: boolean };

/** A bodice with shoulders on the trunk: what lies over it but not over the arms' ends. */
export function topParts(top: Top, { sleeved, raglan, hooded }: With, wearer: Wearer): Part[] {
  const { view } = wearer;
  const places = placesOf(top, sleeved, wearer);
  const { neck, tip, underarm, side, hem } = places;
  // A hood is sewn into the neckline and covers it.
  const drop = wearer.down(view === 'front' ? top.frontDrop : top.backDrop);
  const dip = point(0, Math.max(hooded ? Math.min(drop, 9) : drop, neck.y + 3));
  const throat = throatOf(neck, dip);
  const arm = sleeved ? [] : [lerp(lerp(tip, underarm, 0.55), point(0, underarm.y), 0.12)];
  const right = [
    ...corner(neck),
    ...corner(tip),
    ...arm,
    ...corner(underarm),
    ...side,
    ...corner(point(hem.half, hem.y)),
    point(0.55 * hem.half, hem.y + 0.09 * hem.half),
  ];
  const shape = [...bothHalves([...right, point(0, hem.y + 0.12 * hem.half)]), ...otherHalf([throat]), dip];
  const line = (points: Point[]) => [drawnSeam(points), drawnSeam(otherHalf(points))];
  return [
    cloth([...shape, throat]),
    ...(sleeved && !raglan ? line([tip, lerp(lerp(tip, underarm, 0.5), point(0, underarm.y), 0.1), underarm]) : []),
    ...(raglan
      ? line([point(0.9 * neck.x, neck.y + 3), lerp(lerp(neck, underarm, 0.55), point(0, underarm.y), 0.16), underarm])
      : []),
    ...hemParts(top, hem, wearer),
    ...(top.drawnIn ? gathersUnder(0.9 * neck.x, neck.y + 3, 9, 5) : []),
    ...openingParts(top.opening, dip.y, hem.y + 0.12 * hem.half, wearer),
    ...(view === 'front' ? pocketParts(top, underarm, hem, wearer) : []),
    ...collarParts(top, neck, dip),
  ];
}

/** The stitches of a hem, or the ribs of a band. */
function hemParts(top: Top, hem: Places['hem'], { down }: Wearer): Part[] {
  if (top.skirted) return [];
  if (top.rib === 0) return [stitches(hoop(hem.half - 1, hem.y - HEM))];
  const deep = Math.max(down(top.rib), 4);
  const ribs = Array.from({ length: RIBS }, (_, index) => ((index + 0.5) / RIBS) * 2 - 1);
  const low = (x: number) => hem.y + 0.12 * hem.half * (1 - x * x);
  return [
    drawnSeam(hoop(hem.half, hem.y - deep)),
    ...ribs.map((x) => fold([point(x * hem.half, low(x) - deep + 0.6), point(x * hem.half, low(x) - 0.6)])),
  ];
}

/** A neckline is round: where it turns. */
const throatOf = (neck: Point, dip: Point): Point => point(0.74 * neck.x, neck.y + 0.76 * (dip.y - neck.y));

type Places = ReturnType<typeof placesOf>;

/** The right half's corners. */
function placesOf(top: Top, sleeved: boolean, wearer: Wearer) {
  const { form, down } = wearer;
  const neck = point(form.neckHalf * Math.min(Math.max(top.neck, 0.9), 1.35) * 0.98, 0);
  const shoulder = point(form.shoulderHalf + (sleeved ? OFF + 1 : 0), form.shoulderHeight - OFF);
  const tip = lerp(neck, shoulder, sleeved ? 1 : (top.shoulder ?? 1));
  const [first, last] = [top.levels[0], top.levels.at(-1)];
  const lowest = hemOf(wearer, (last?.down ?? 0) + top.rib);
  const high = Math.min(Math.max(down(first?.down ?? 0), 0.75 * form.chestHeight), form.chestHeight + 4, lowest - 6);
  const half = (share: number): number => {
    const y = high + (lowest - high) * share;
    const girth = (first?.girth ?? 0) + ((last?.girth ?? 0) - (first?.girth ?? 0)) * share;
    const body = wearer.trunkAt(y) + OFF;
    return Math.max(body, Math.min(wearer.half(girth), 1.28 * Math.max(body, form.tummyHalf)));
  };
  return {
    neck,
    tip,
    underarm: point(Math.min(half(0), wearer.trunkAt(high) + 5), high),
    side: [0.35, 0.7].map((share) => point(half(share), high + (lowest - high) * share)),
    hem: { y: lowest, half: half(1) },
  };
}

function openingParts(opening: Opening | null, from: number, to: number, { view, down }: Wearer): Part[] {
  if (!opening || opening.side !== view) return [];
  const end = opening.long === 'all' ? to : Math.min(from + down(opening.long), to);
  if (opening.zip) {
    const beside = [-1.6, 1.6].map((x) => stitches([point(x, from + 1), point(x, end - 1)]));
    return [drawnSeam([point(0, from), point(0, end)]), ...beside];
  }
  const dots = opening.long === 'all' ? [0.2, 0.5, 0.8] : [];
  return [
    drawnSeam([point(0, from), point(0, end)]),
    ...dots.map((share) => {
      const y = from + (end - from) * share;
      return stitches([point(-4.5, y), point(4.5, y)]);
    }),
  ];
}

function pocketParts({ pocket }: Top, underarm: Point, hem: Places['hem'], { down }: Wearer): Part[] {
  if (!pocket) return [];
  const wide = Math.min(underarm.x, hem.half) / pocket.half;
  const corners = pocket.corners.map(({ x, y }) => point(x * wide, Math.min(down(y), hem.y - 2)));
  if (pocket.patch) {
    const [inner, outer] = corners;
    const hem = [inner, outer].map((at) => point(at?.x ?? 0, (at?.y ?? 0) + 2));
    const patch = corners.flatMap(corner);
    return [cloth(patch), stitches(hem), cloth(otherHalf(patch)), stitches(otherHalf(hem))];
  }
  return [
    cloth([...corners, ...corners.map(({ x, y }) => point(-x, y)).reverse()].flatMap(corner)),
    stitches([corners[1] ?? underarm, corners[2] ?? underarm].map(({ x, y }) => point(x - 3, y))),
    stitches([corners[1] ?? underarm, corners[2] ?? underarm].map(({ x, y }) => point(3 - x, y))),
  ];
}

function collarParts({ collar }: Top, neck: Point, dip: Point): Part[] {
  if (!collar) return [];
  const wide = collar === 'flat' ? 11 : 4;
  const leaf = [
    ...corner(point(neck.x, neck.y - 1)),
    point(neck.x + wide, neck.y + 0.5 * wide),
    point(0.7 * neck.x, dip.y + wide),
    ...corner(point(collar === 'flat' ? 2 : 0, dip.y + (collar === 'flat' ? 0.9 * wide : wide))),
    ...corner(dip),
    throatOf(neck, dip),
  ];
  return [inside(leaf), inside(otherHalf(leaf))];
}

/** Short creases under a gathered seam. */
export function gathersUnder(half: number, y: number, long: number, count = 7): Part[] {
  return Array.from({ length: count }, (_, index) => {
    const x = ((index + 0.5) / count) * 2 - 1;
    const top = point(x * half * 0.94, y + 0.12 * half * (1 - x * x) + 1);
    return fold([top, point(top.x * 1.06, top.y + long * (index % 2 === 0 ? 1 : 0.6))]);
  });
}
