// A step's picture on paper: the same pieces as on the screen, in black and grey.

import type { Say } from '../../body';
import { arc, type Path, type Point, transformPath } from '../geometry';
import type { Part, Scene } from '../guide';
import type { Box } from '../packing';
import { centred } from './flow';
import { type Ink, SMALLEST_PT, stroke, type TextWidth } from './ink';

/** Room for numbers and thick lines at the picture's edge, mm. */
const MARGIN_MM = 3.5;
const NUMBER_MM = 2.3;
const NUMBER_PT = 8;
const NAME_PT = 9;
/** From the foot of a strip to the middle of the name under it. */
const BENEATH_MM = 3;
/** No piece is drawn larger than life. */
const LARGEST_SCALE = 1;

/** The picture set into a box, as large as it fits. */
export function sceneInk(scene: Scene, box: Box, say: Say, widthOf: TextWidth): readonly Ink[] {
  const [width, height] = [box.width - 2 * MARGIN_MM, box.height - 2 * MARGIN_MM];
  const scale = Math.min(LARGEST_SCALE, width / scene.width, height / scene.height);
  const left = box.x + (box.width - scene.width * scale) / 2;
  const top = box.y + (box.height - scene.height * scale) / 2;
  const at = (p: Point): Point => ({ x: left + p.x * scale, y: top + p.y * scale });
  const put = (path: Path) => transformPath(path, at);
  return [
    ...scene.parts.flatMap((part) => partInk(part, put, at, say, widthOf)),
    ...scene.threads.map(({ path }) => stroke('marks', 'inner', put(path))),
    ...scene.ties.map((tie) => stroke('marks', 'trim', put(tie))),
    ...scene.meets.flatMap((meet) => numberInk(meet.number, at(meet.at), widthOf)),
  ];
}

function partInk(
  part: Part,
  put: (path: Path) => Path,
  at: (p: Point) => Point,
  say: Say,
  widthOf: TextWidth,
): readonly Ink[] {
  const name = say(`piece.${part.piece}`);
  const room = at({ x: part.room, y: 0 }).x - at({ x: 0, y: 0 }).x;
  const size = widthOf(name, NAME_PT, false) <= room ? NAME_PT : SMALLEST_PT;
  const strokes = (pen: Parameters<typeof stroke>[1], paths: readonly Path[]) =>
    paths.map((path) => stroke('marks', pen, put(path)));
  return [
    { kind: 'fill', layer: 'marks', grey: 0.95, path: put(part.outline) },
    ...strokes('pale', part.also),
    ...strokes('band', part.now),
    stroke('marks', 'mark', put(part.outline), true),
    ...strokes('inner', [...(part.middle.length > 0 ? [part.middle] : []), ...part.lines]),
    ...strokes('stitch', [...part.now, ...part.sewn]),
    ...strokes('notch', [...part.ticks, ...part.folds]),
    centred(name, part.beneath ? below(at(part.label)) : at(part.label), size, false, widthOf),
  ];
}

const below = ({ x, y }: Point): Point => ({ x, y: y + BENEATH_MM });

function numberInk(number: number, at: Point, widthOf: TextWidth): readonly Ink[] {
  const ring = arc(at, NUMBER_MM, 0, 2 * Math.PI);
  return [
    { kind: 'fill', layer: 'marks', grey: 1, path: ring },
    stroke('marks', 'mark', ring, true),
    centred(String(number), at, NUMBER_PT, true, widthOf),
  ];
}
