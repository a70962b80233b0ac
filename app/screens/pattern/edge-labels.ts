import type { Mm } from '../../body';
import type { Edge, Piece } from '../../drafting/draft-types';

type Spot = { readonly x: Mm; readonly y: Mm };
export type EdgeLabel = { readonly name: string; readonly length: Mm; readonly at: Spot; readonly turn: number };

/** An edge shorter than this share of the piece has no room for its number. */
const LEAST_SHARE = 0.07;
/** The number stands inside the line by this share of the piece. */
const INSIDE_SHARE = 0.035;

/** The finished length of each edge, to stand inside its middle and run along it: degrees, never upside down. */
export function edgeLabels({ edges, seamLine, onFold }: Pick<Piece, 'edges' | 'seamLine' | 'onFold'>): EdgeLabel[] {
  const spots = seamLine.map(({ from }) => from);
  const size = Math.max(reach(spots.map(({ x }) => x)), reach(spots.map(({ y }) => y)));
  return edges
    .filter(({ name, length }) => length > LEAST_SHARE * size && !(onFold && name === 'centre'))
    .flatMap((edge) => labelOf(edge, INSIDE_SHARE * size));
}

function labelOf({ name, length, path }: Edge, inside: Mm): EdgeLabel[] {
  const curve = path[Math.floor((path.length - 1) / 2)];
  const last = path.at(-1);
  if (!curve || !last) return [];
  const middle = path.length % 2 === 0 ? { at: curve.to, ahead: step(curve.from, curve.to) } : halfway(curve);
  const { x, y } = middle.ahead;
  const long = Math.hypot(x, y) || 1;
  // The ring runs clockwise as seen: its inside lies to the right of the way along it.
  const at = { x: middle.at.x - (y / long) * inside, y: middle.at.y + (x / long) * inside };
  const turn = (Math.atan2(y, x) * 180) / Math.PI;
  return [{ name, length, at, turn: turn > 90 ? turn - 180 : turn < -90 ? turn + 180 : turn }];
}

/** The middle of a curve and the way it goes there (de Casteljau at one half). */
function halfway(curve: Edge['path'][number]): { at: Spot; ahead: Spot } {
  if (curve.kind === 'line') return { at: mean(curve.from, curve.to), ahead: step(curve.from, curve.to) };
  const [one, two, three] = [mean(curve.from, curve.out), mean(curve.out, curve.into), mean(curve.into, curve.to)];
  const [before, after] = [mean(one, two), mean(two, three)];
  return { at: mean(before, after), ahead: step(before, after) };
}

const mean = (a: Spot, b: Spot): Spot => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
const step = (a: Spot, b: Spot): Spot => ({ x: b.x - a.x, y: b.y - a.y });
const reach = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
