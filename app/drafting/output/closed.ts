import { type Path, type Point, polyline } from '../geometry';
import type { Box } from '../packing';
import { cornersOf } from '../pieces/outline';
import { type Ink, stroke } from './ink';

export function outline(box: Box): readonly Ink[] {
  return [stroke('marks', 'rule', closedLine(cornersOf(box)), true)];
}

export function closedLine(points: readonly Point[]): Path {
  const [home] = points;
  return polyline(home ? [...points, home] : []);
}
