import type { Body } from '../../app/body';
import type { Figure, Limb } from './figure';
import type { Panel } from './panels';
import { apart, at, dotted, plus, type Spot, spot, spotAt } from './space';
import { type Strained, strained } from './strain';
import type { Worn } from './worn';

/** Seams that stand open further than this are told, mm. */
const OPEN_MM = 0.5;

/** What a garment's wearing tells, a line each: strain (over what the cloth gives), seams, edges, how far it stands off. */
export function report(worn: Worn, body: Pick<Body, 'sizes'>, gives: number): string[] {
  const { figure, panels } = worn;
  const residuals = Object.entries(figure.residuals).filter(([, off]) => Math.abs(off) > 0.02);
  const triangles = eased(strained(worn), worn);
  const pieces = [...new Set(panels.panels.map(({ half }) => half.piece.name))];
  return [
    `body: ${residuals.length > 0 ? residuals.map(([id, off]) => `${id} ${percent(off)}`).join(', ') : 'as measured'}`,
    `mesh: ${worn.cloth.light.length} points, edge ${mm(worn.edge)}, ${worn.steps} steps, still to ${worn.still.toFixed(4)} mm a step`,
    strainRow('strain', triangles, gives),
    ...pieces.map((name) =>
      strainRow(
        `  ${name}`,
        triangles.filter(({ panel }) => panel.half.piece.name === name),
        gives,
      ),
    ),
    gaps(worn),
    ...edgeRows(worn, body),
  ];
}

const mm = (value: number) => value.toFixed(1);
const percent = (share: number) => `${share >= 0 ? '+' : ''}${(100 * share).toFixed(1)} %`;
const of = (worn: Worn, panel: Panel, point: number) => spotAt(worn.cloth.places, at(worn.of, panel.first + point));

/** Each triangle's strain as the mean of those that touch it: what one triangle has is the mesh's own. */
function eased(all: readonly Strained[], { of: points }: Worn): Strained[] {
  const sums = new Map<number, { sum: number; count: number }>();
  const corners = ({ panel, triangle }: Strained) => triangle.map((point) => at(points, panel.first + point));
  for (const each of all)
    for (const point of corners(each)) {
      const so = sums.get(point) ?? { sum: 0, count: 0 };
      sums.set(point, { sum: so.sum + each.strain, count: so.count + 1 });
    }
  const mean = (point: number) => (sums.get(point)?.sum ?? 0) / (sums.get(point)?.count ?? 1);
  return all.map((each) => ({ ...each, strain: corners(each).reduce((sum, point) => sum + mean(point) / 3, 0) }));
}

function strainRow(name: string, triangles: readonly Strained[], gives: number): string {
  const strains = triangles.map(({ strain }) => strain - gives).sort((a, b) => a - b);
  const share = (part: number) => percent(at(strains, Math.min(strains.length - 1, Math.floor(strains.length * part))));
  const worst = triangles.reduce((most, each) => (each.strain > most.strain ? each : most));
  return `${name}: half ${share(0.5)}, p95 ${share(0.95)}, worst ${share(1)} at ${whereOf(worst)}`;
}

/** The piece and the edge next to a triangle, and how far off the edge it is. */
function whereOf({ panel, triangle, corners }: Strained): string {
  const middle = panel.points[triangle[0]] ?? { x: 0, y: 0 };
  const near = [...panel.edges].flatMap(([name, edge]) =>
    edge.map(({ point, along }) => {
      const p = panel.points[point] ?? middle;
      return { name, along, far: Math.hypot(p.x - middle.x, p.y - middle.y) };
    }),
  );
  const { name, along, far } = near.reduce((best, each) => (each.far < best.far ? each : best));
  const [x, y, z] = (['x', 'y', 'z'] as const).map((axis) => corners[0][axis].toFixed(0));
  return `${panel.half.piece.name}.${name} ${along.toFixed(0)} mm along, ${far.toFixed(0)} off it (${x}, ${y}, ${z})`;
}

/** How far each seam stands open at its worst, mm. */
export function gapsOf({
  panels,
  cloth,
  of: points,
}: Pick<Worn, 'panels' | 'cloth' | 'of'>): ReadonlyMap<string, number> {
  const worst = new Map<string, number>();
  for (const { one, two, seam } of panels.sewn) {
    const gap = apart(spotAt(cloth.places, at(points, one)), spotAt(cloth.places, at(points, two)));
    worst.set(seam, Math.max(gap, worst.get(seam) ?? 0));
  }
  return worst;
}

function gaps(worn: Worn): string {
  const worst = gapsOf(worn);
  const open = [...worst].filter(([, gap]) => gap > OPEN_MM).map(([seam, gap]) => `${seam} ${mm(gap)}`);
  return `seams: ${open.length > 0 ? `open ${open.join(', ')} mm` : `closed (within ${mm(Math.max(0, ...worst.values()))} mm)`}`;
}

/** Heights of what no seam joins, in front, at the sides and behind, beside what was measured; how far it stands off. */
function edgeRows(worn: Worn, body: Pick<Body, 'sizes'>): string[] {
  const { panels, figure } = worn;
  const sewn = new Set(panels.sewn.flatMap(({ one, two }) => [one, two]));
  const rows = new Map<string, { at: Spot; panel: Panel }[]>();
  for (const panel of panels.panels)
    for (const [name, edge] of panel.edges) {
      const free = edge.slice(1, -1).every(({ point }) => !sewn.has(panel.first + point));
      const side = panel.half.sides.find((each) => each.name === name);
      if (!free || edge.length < 3 || side?.role === 'fold' || side?.role === 'closure') continue;
      const key = `${panel.half.piece.name}.${name}`;
      rows.set(key, [...(rows.get(key) ?? []), ...edge.map(({ point }) => ({ at: of(worn, panel, point), panel }))]);
    }
  return [...rows].map(([key, spots]) => {
    const off = spots.map(({ at: p }) => figure.solid.distance(p.x, p.y, p.z)).sort((a, b) => a - b);
    const stands = `stands off ${mm(at(off, Math.floor(off.length / 2)))}, p95 ${mm(at(off, Math.floor(off.length * 0.95)))} mm`;
    const limb = limbFor(key, spots[0]?.at ?? spot(0, 0, 0), figure);
    return `edge ${key}: ${
      limb
        ? onLimb(
            limb,
            spots.map((each) => each.at),
            key,
            figure,
            body,
          )
        : roundTrunk(
            spots.map((each) => each.at),
            key,
            figure,
            body,
          )
    }; ${stands}`;
  });
}

function limbFor(key: string, near: Spot, { arms, legs }: Figure): Limb | undefined {
  const limbs = /^sleeve/u.test(key) ? arms : /^leg\.(hem|foot)/u.test(key) ? legs : [];
  return limbs.find(({ side }) => side === Math.sign(near.x || 1));
}

/** How far along the limb an edge lies, its least and most, beside the measure it was cut for. */
function onLimb(
  { root, way, side }: Limb,
  spots: readonly Spot[],
  key: string,
  { lines }: Figure,
  { sizes }: Pick<Body, 'sizes'>,
): string {
  const arm = /^sleeve/u.test(key);
  const from = arm ? spot(side * lines.shoulder.x, lines.shoulder.y, root.z) : spot(side * 1, lines.crotch, 0);
  const alongs = spots.filter(({ x }) => Math.sign(x) === side).map((p) => dotted(plus(p, from, -1), way));
  const wanted = sizes[arm ? 'arm-length' : 'inside-leg-length']?.value ?? 0;
  return `${mm(Math.min(...alongs))} to ${mm(Math.max(...alongs))} mm along the ${arm ? 'arm from the shoulder' : 'leg from the fork'} (measured to ${mm(wanted)})`;
}

const SECTORS = { front: [0, 25], side: [65, 115], back: [155, 180] } as const;

function roundTrunk(spots: readonly Spot[], key: string, figure: Figure, { sizes }: Pick<Body, 'sizes'>): string {
  const size = (id: keyof typeof sizes) => sizes[id]?.value ?? 0;
  const wanted: Readonly<Record<string, { readonly [S in keyof typeof SECTORS]?: number }>> = {
    neck: { front: size('front-neck-drop'), side: 0, back: size('back-neck-drop') },
    hem: figure.hem,
    waist: { front: figure.lines.waist, side: figure.lines.waist, back: figure.lines.waist },
  };
  const line = /neck/u.test(key)
    ? wanted.neck
    : /^(tunic-|coat-)?(front|back|belly)\.hem/u.test(key)
      ? wanted.hem
      : /waist/u.test(key)
        ? wanted.waist
        : undefined;
  return (Object.keys(SECTORS) as (keyof typeof SECTORS)[])
    .flatMap((sector) => {
      const [from, to] = SECTORS[sector];
      const here = spots.filter(({ x, z }) => {
        const angle = (Math.abs(Math.atan2(x, z + figure.section(0).back)) * 180) / Math.PI;
        return angle >= from && angle <= to;
      });
      if (here.length === 0) return [];
      const mean = here.reduce((sum, { y }) => sum + y, 0) / here.length;
      const aim = line?.[sector];
      return [`${sector} ${mm(mean)}${aim === undefined ? '' : ` (${mm(aim)})`}`];
    })
    .join(', ');
}
