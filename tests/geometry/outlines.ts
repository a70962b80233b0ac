import {
  add,
  angleBetween,
  type CutEdge,
  cubic,
  distance,
  endTangent,
  line,
  type Path,
  type Point,
  point,
  ringIsSimple,
  rotate,
  scale,
  signedArea,
  startTangent,
  subtract,
  unit,
} from '../../app/drafting/geometry';
import type { Random } from '../toys/seeded';

/**
 * A random outline about 100 mm across, clockwise, four to eight edges, straight or curved as armholes and necklines
 * are: handles up to 45° off the chord. It never crosses itself, nor doubles back at a corner. `random` gives numbers in [0, 1).
 */
export function randomOutline(random: Random): readonly Path[] {
  for (;;) {
    const edges = outline(random);
    const ring = edges.flat();
    if (ringIsSimple(ring) && signedArea(ring) > 0 && !hasHairpin(edges)) return edges;
  }
}

/** The same with random roles: mostly sewn, some turned back deeper, sometimes one edge cut on its line. */
export function randomPiece(random: Random): readonly CutEdge[] {
  return randomOutline(random).map((path) => {
    const turned = random() < 0.3;
    const allowance = turned ? 8 + 12 * random() : random() < 0.1 ? 0 : 3 + 7 * random();
    return { path, allowance, turned, fold: false };
  });
}

export function sewn(paths: readonly Path[], allowance: number): readonly CutEdge[] {
  return paths.map((path) => ({ path, allowance, turned: false, fold: false }));
}

/** Edges that leave a corner as they came have no inside there to speak of: under 6°. */
function hasHairpin(edges: readonly Path[]): boolean {
  return edges.some((edge, i) => {
    const before = edges[(i + edges.length - 1) % edges.length] ?? edge;
    return angleBetween(scale(endTangent(before), -1), startTangent(edge)) < Math.PI / 30;
  });
}

function outline(random: Random): readonly Path[] {
  const count = 4 + Math.floor(random() * 5);
  const corners = Array.from({ length: count }, (_, i) => {
    const angle = ((i + 0.7 * random()) / count) * 2 * Math.PI;
    return scale(point(Math.cos(angle), Math.sin(angle)), 30 + 40 * random());
  });
  return corners.map((from, i) => [side(random, from, corners[(i + 1) % count] ?? from)]);
}

function side(random: Random, from: Point, to: Point) {
  if (random() < 0.4) return line(from, to);
  const chord = unit(subtract(to, from));
  const long = distance(from, to);
  const handle = (): Point => scale(rotate(chord, (random() - 0.5) * (Math.PI / 2)), long * (0.15 + 0.4 * random()));
  return cubic(from, add(from, handle()), subtract(to, handle()), to);
}
