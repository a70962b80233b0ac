import type { Nature } from '../../body';
import type { Point } from '../../body/point';
import { bandRound, middleOf } from './band';
import type { Strip } from './drawing';
import type { Lay } from './lay';
import { along, boundsOf, inset } from './outline';
import { smoothPoints } from './smooth';
import type { Stage } from './stage';
import { alongLine, bandStrip, lengthOf, lineStrip, rulerStrip, TAPE_WIDTH } from './strip';

/** A tape lying on a stage: what shows, what is behind, and its whole way from start to end. */
export type Laid = {
  readonly ring: boolean;
  readonly visible: readonly Strip[];
  readonly hidden: readonly Strip[];
  readonly way: readonly Point[];
};

/** Where along the near half of a ring its ends meet: off the middle, so that face and seam stay seen. */
const MEETS_AT = 0.36;
/** And far enough in for the end mark to stand before the start mark. */
const MEETS_AFTER = 22;
/** A pencil line keeps this far inside an edge it follows; a tape lies wholly inside. */
const PENCIL_INSET = 4;
const TAPE_INSET = TAPE_WIDTH / 2 + 1;

/** Lays a measure's tape on a stage already in frame units. */
export function layTape<P extends string>(way: Lay<P>, stage: Stage<P>, nature: Nature): Laid {
  const place = (name: P): Point => stage.places[name];
  switch (way.lay) {
    case 'round':
      return round(outlineOf(stage, way.of), place(way.at), place(way.toward));
    case 'across': {
      const { near } = bandRound(outlineOf(stage, way.of), place(way.at), place(way.toward), TAPE_WIDTH);
      return { ring: false, visible: [bandStrip(near)], hidden: [], way: middleOf(near) };
    }
    case 'over': {
      const ring = way.behind?.at(-1) === way.through[0] && way.again === undefined;
      return over(ring, way.through.map(place), way.behind?.map(place) ?? [], way.again?.map(place) ?? []);
    }
    case 'edge': {
      const outline = outlineOf(stage, way.of);
      const edge = along(outline, place(way.from), place(way.to), place(way.by));
      const line = inset(edge, nature === 'wish' ? PENCIL_INSET : TAPE_INSET, middle(outline));
      return { ring: false, visible: [lineStrip(line)], hidden: [], way: line };
    }
    case 'ruler': {
      const [from, to] = [place(way.from), place(way.to)];
      return { ring: false, visible: [rulerStrip(from, to, way.side, way.stands)], hidden: [], way: [from, to] };
    }
  }
}

/** The part a tape lies on, as a closed outline. */
export function outlineOf(stage: Stage, name: string): Point[] {
  const part = stage.parts.find((each) => each.name === name);
  return part ? smoothPoints(part.points, part.closed) : [];
}

function over(ring: boolean, ...runs: readonly (readonly Point[])[]): Laid {
  const [through = [], behind = [], again = []] = runs.map((points) => smoothPoints(points, false));
  const strips = (line: readonly Point[]) => (line.length > 1 ? [lineStrip(line)] : []);
  const way = [...through, ...behind, ...again];
  return { ring, visible: [...strips(through), ...strips(again)], hidden: strips(behind), way };
}

function round(outline: readonly Point[], at: Point, toward: Point): Laid {
  const { near, far } = bandRound(outline, at, toward, TAPE_WIDTH);
  const [front, back] = [middleOf(near), middleOf(far)];
  const meets = Math.min(Math.max(MEETS_AT, MEETS_AFTER / lengthOf(front)), 0.62);
  const steps = Array.from({ length: 13 }, (_, step) => step / 12);
  const before = steps.map((step) => alongLine(front, step * meets));
  const after = steps.map((step) => alongLine(front, meets + step * (1 - meets)));
  return {
    ring: true,
    visible: [bandStrip(near)],
    hidden: [bandStrip(far)],
    way: [...after, ...[...back].reverse().slice(1, -1), ...before],
  };
}

function middle(outline: readonly Point[]): Point {
  const { left, top, right, bottom } = boundsOf(outline);
  return { x: (left + right) / 2, y: (top + bottom) / 2 };
}
