import type { Point } from '../../body/point';
import type { Frame } from './drawing';
import { boundsOf } from './outline';
import type { Mark, Part, Stage } from './stage';

/** Toy units to frame units: scaled, then moved. */
type Camera = { readonly scale: number; readonly right: number; readonly down: number };

/** Kept free round the toy: the tape is wider than the line it follows, and its marks stand out. */
const EDGE = 10;
/** Kept free at both sides of a wide picture, or under a tall one, for the words. */
const WORDS_ASIDE = 66;
const WORDS_BELOW = 30;
/** Nearer than this and a figure is only a curve. */
const NEAREST = 3;

/** A stage in the frame's units, and how much larger or smaller than its own units that is. */
export type Seen<P extends string = string> = Stage<P> & { readonly scale: number };

/** The stage as the camera sees it when the picture must show `needed`, and leave room for `words` or not. */
export function seen(stage: Stage, needed: readonly Point[], frame: Frame, words: boolean): Seen {
  const camera = aim(needed, frame, words);
  const see = ({ x, y }: Point): Point => ({ x: x * camera.scale + camera.right, y: y * camera.scale + camera.down });
  return {
    scale: camera.scale,
    parts: stage.parts.map((part): Part => ({ ...part, points: part.points.map(see) })),
    places: mapped(stage.places, see),
    shots: mapped(stage.shots, (points) => points.map(see)),
    marks: stage.marks.map((mark): Mark => {
      if (mark.mark === 'side-line') return { ...mark, from: see(mark.from), to: see(mark.to) };
      return { ...mark, at: see(mark.at), toward: see(mark.toward) };
    }),
  };
}

function aim(needed: readonly Point[], { width, height }: Frame, words: boolean): Camera {
  const box = boundsOf(needed);
  const [across, down] = [Math.max(box.right - box.left, 1), Math.max(box.bottom - box.top, 1)];
  const scaleFor = (freeAcross: number, freeDown: number) => Math.min(freeAcross / across, freeDown / down, NEAREST);
  const aside = scaleFor(width - 2 * (words ? WORDS_ASIDE : EDGE), height - 2 * EDGE);
  const above = words ? scaleFor(width - 2 * EDGE, height - 2 * EDGE - WORDS_BELOW) : 0;
  // A tall picture is kept between both: not so near that no corner is left for words.
  const scale = above > aside ? Math.sqrt(above * aside) : aside;
  const room = above > aside ? WORDS_BELOW : 0;
  return {
    scale,
    right: width / 2 - ((box.left + box.right) / 2) * scale,
    down: (height - room) / 2 - ((box.top + box.bottom) / 2) * scale,
  };
}

function mapped<K extends string, A, B>(record: { readonly [P in K]: A }, change: (value: A) => B): { [P in K]: B } {
  const entries = Object.entries<A>(record).map(([key, value]) => [key, change(value)]);
  return Object.fromEntries(entries) as { [P in K]: B };
}
