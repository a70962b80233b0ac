import { bearing, distance, lerp, moved, type Point, right, subtract } from '../../body/point';
import type { Half } from './band';
import { middleOf } from './band';
import type { Strip } from './drawing';
import { smoothPath, straightPath } from './smooth';

/** Width of the cloth tape and of the ruler, in frame units, however near the camera is. */
export const TAPE_WIDTH = 14;
const RULER_WIDTH = 13;
/** A ruler goes on past the place it is read at. */
const RULER_OVERHANG = 9;
const TICK_GAP = 6;

/** The visible or hidden half of a tape round a part. Ticks crowd toward the edges, where the tape turns away. */
export function bandStrip(half: Half): Strip {
  const middle = middleOf(half);
  const count = Math.max(4, Math.round(lengthOf(middle) / TICK_GAP));
  const ticks = Array.from({ length: count - 1 }, (_, index) => {
    const share = (1 - Math.cos((Math.PI * (index + 1)) / count)) / 2;
    const even = (index + 1) / count;
    return tick(half, (even + share) / 2, index % 5 === 4);
  });
  return { outline: ribbon(half), ticks: ticks.join(''), middle: smoothPath(middle, false), points: middle };
}

/** A tape lying along a line of points. */
export function lineStrip(line: readonly Point[]): Strip {
  const even = evenly(line, Math.max(3, Math.round(lengthOf(line) / (1.5 * TICK_GAP))));
  const edge = (sign: number) =>
    even.map((here, index) => {
      const [before, after] = [even[index - 1] ?? here, even[index + 1] ?? here];
      return moved(here, right(bearing(subtract(after, before))), sign * (TAPE_WIDTH / 2));
    });
  const half = { above: edge(-1), below: edge(1) };
  const count = Math.max(2, Math.round(lengthOf(even) / TICK_GAP));
  const ticks = Array.from({ length: count - 1 }, (_, index) => tick(half, (index + 1) / count, index % 5 === 4));
  return { outline: ribbon(half), ticks: ticks.join(''), middle: smoothPath(even, false), points: even };
}

/** A ruler beside the straight line from `from` to `to`, its scale on the line, its body on one side. */
export function rulerStrip(from: Point, to: Point, side: 1 | -1, stands = false): Strip {
  const ahead = bearing(subtract(to, from));
  const aside = right(ahead);
  const near = moved(from, ahead, stands ? -RULER_OVERHANG : 0);
  const far = moved(to, ahead, stands ? 0 : RULER_OVERHANG);
  const half = {
    above: [near, far],
    below: [moved(near, aside, side * RULER_WIDTH), moved(far, aside, side * RULER_WIDTH)],
  };
  const count = Math.max(2, Math.round(distance(near, far) / TICK_GAP));
  const ticks = Array.from({ length: count - 1 }, (_, index) => tick(half, (index + 1) / count, index % 5 === 4));
  const outline = straightPath([...half.above, ...[...half.below].reverse()], true);
  return {
    outline,
    ticks: ticks.join(''),
    middle: straightPath([from, to], false),
    points: [...half.above, ...half.below],
  };
}

export function lengthOf(line: readonly Point[]): number {
  return line.reduce((sum, here, index) => sum + (index > 0 ? distance(here, line[index - 1] ?? here) : 0), 0);
}

/** The place a share `t` of the way along a line, by length. */
export function alongLine(line: readonly Point[], t: number): Point {
  const goal = t * lengthOf(line);
  let gone = 0;
  for (const [index, here] of line.entries()) {
    const next = line[index + 1];
    if (!next) return here;
    const step = distance(here, next);
    if (gone + step >= goal && step > 0) return lerp(here, next, (goal - gone) / step);
    gone += step;
  }
  return line[0] ?? { x: 0, y: 0 };
}

const evenly = (line: readonly Point[], steps: number): Point[] =>
  Array.from({ length: steps + 1 }, (_, step) => alongLine(line, step / steps));

function ribbon({ above, below }: Half): string {
  const back = smoothPath([...below].reverse(), false).replace('M', 'L');
  return `${smoothPath(above, false)}${back}Z`;
}

function tick({ above, below }: Half, share: number, long: boolean): string {
  const [from, whole] = [alongLine(above, share), alongLine(below, share)];
  return straightPath([from, lerp(from, whole, long ? 0.62 : 0.4)], false);
}
