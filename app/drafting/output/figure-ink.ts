import type { Mm } from '../../body';
import { cubic, line, type Path, type Point, point } from '../geometry';
import { type Ink, type pens, stroke } from './ink';

/** A drawn figure from outside: shapes one over the other, each SVG path data of `M`, `C`, `L`, `Z`, and what it is. */
export type DrawnFigure = {
  readonly frame: { readonly width: number; readonly height: number };
  readonly shapes: readonly { readonly look: string; readonly path: string }[];
};

/** How each look is put on paper: filled with a grey, its outline in a pen; what has no row is left out. */
export type InkLooks = Readonly<Record<string, { readonly grey?: number; readonly pen?: keyof typeof pens }>>;

/** A figure's shapes as ink, each place of the frame taken to the page by `to`. */
export function figureInk({ shapes }: DrawnFigure, looks: InkLooks, to: (at: Point) => Point): readonly Ink[] {
  return shapes.flatMap(({ look, path }): Ink[] => {
    const { grey, pen } = looks[look] ?? {};
    return pathsOf(path, to).flatMap(({ drawn, closed }): Ink[] => [
      ...(grey === undefined ? [] : [{ kind: 'fill' as const, layer: 'marks' as const, grey, path: drawn }]),
      ...(pen === undefined ? [] : [stroke('marks', pen, drawn, closed)]),
    ]);
  });
}

type Drawn = { readonly drawn: Path; readonly closed: boolean };

/** Path data as lines of curves, each from one `M` to the next. */
function pathsOf(data: string, to: (at: Point) => Point): Drawn[] {
  return data
    .split(/(?=M)/)
    .map((part) => ({ drawn: pathOf(part, to), closed: part.trim().endsWith('Z') }))
    .filter(({ drawn }) => drawn.length > 0);
}

function pathOf(data: string, to: (at: Point) => Point): Path {
  const curves: Path[number][] = [];
  let here = point(0, 0);
  for (const [, letter = '', numbers = ''] of data.matchAll(/([MCL])([^MCLZ]*)/g)) {
    const [first, ...rest] = pairsOf(numbers).map(to);
    if (!first) continue;
    const last = rest.at(-1) ?? first;
    if (letter === 'L') curves.push(line(here, first));
    if (letter === 'C' && rest[0] && rest[1]) curves.push(cubic(here, first, rest[0], rest[1]));
    here = letter === 'C' ? last : first;
  }
  return curves;
}

function pairsOf(numbers: string): Point[] {
  const all: Mm[] = numbers
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  return all.flatMap((x, index) => (index % 2 === 0 ? [point(x, all[index + 1] ?? 0)] : []));
}
