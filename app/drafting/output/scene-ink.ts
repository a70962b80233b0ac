// A step's picture on paper: the same pieces as on the screen, in black and grey.

import type { Say } from '../../body';
import { arc, type Path, type Point, transformPath } from '../geometry';
import { type Part, placeNames, type Scene } from '../guide';
import type { Box } from '../packing';
import { centred } from './flow';
import { type Ink, MM_PER_PT, SMALLEST_PT, stroke, type TextWidth } from './ink';

/** Room for numbers and thick lines at the picture's edge, mm. */
const MARGIN_MM = 3.5;
const NUMBER_MM = 2.3;
const NUMBER_PT = 8;
const NAME_PT = 9;
/** How large a step's picture is beside its words, mm. */
export const SCENE = { width: 78, height: 56 } as const;

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
  const nameOf = ({ piece }: Part) => say(`piece.${piece}`);
  const names = placeNames(scene, {
    widthOf: (part) => widthOf(nameOf(part), NAME_PT, false) / scale,
    letters: (NAME_PT * MM_PER_PT) / scale,
    smallest: SMALLEST_PT / NAME_PT,
    ring: NUMBER_MM / scale,
    edge: {
      left: (box.x - left) / scale,
      right: (box.x + box.width - left) / scale,
      top: (box.y - top) / scale,
      bottom: (box.y + box.height - top) / scale,
    },
  });
  return [
    ...scene.parts.flatMap((part) => partInk(part, put)),
    ...scene.threads.map(({ path }) => stroke('marks', 'inner', put(path))),
    ...scene.ties.map((tie) => stroke('marks', 'trim', put(tie))),
    ...scene.meets.flatMap((meet) => numberInk(meet.number, at(meet.at), widthOf)),
    ...scene.parts.flatMap((part, index): readonly Ink[] => {
      const place = names[index];
      return place ? [centred(nameOf(part), at(place.at), NAME_PT * place.share, false, widthOf)] : [];
    }),
  ];
}

function partInk(part: Part, put: (path: Path) => Path): readonly Ink[] {
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
  ];
}

function numberInk(number: number, at: Point, widthOf: TextWidth): readonly Ink[] {
  const ring = arc(at, NUMBER_MM, 0, 2 * Math.PI);
  return [
    { kind: 'fill', layer: 'marks', grey: 1, path: ring },
    stroke('marks', 'mark', ring, true),
    centred(String(number), at, NUMBER_PT, true, widthOf),
  ];
}
