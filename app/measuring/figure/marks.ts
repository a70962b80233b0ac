import { add, bearing, moved, type Point, right, scale, subtract } from '../../body/point';
import { bandRound, middleOf } from './band';
import type { Seen } from './camera';
import type { Drawn } from './drawing';
import { outlineOf } from './lay-tape';
import { smoothPath, straightPath } from './smooth';
import type { Mark, MarkId } from './stage';

/** In toy units; drawn no smaller or larger than the eye needs. */
const BOW = 5;
const PATCH_LONG = 8;
const PATCH_WIDE = 5;
/** Put on for some clothes only: drawn while they are spoken of. */
const AT_TIMES: readonly MarkId[] = ['hem', 'hood'];

/** The threads, bits of tape and side line on a stage already in frame units; a glow under those of `now`. */
export function drawMarks(stage: Seen, now: readonly MarkId[] = []): Drawn[] {
  const on = stage.marks.filter(({ id }) => now.includes(id) || !AT_TIMES.includes(id));
  return on.flatMap((mark): Drawn[] => {
    const drawn = drawMark(stage, mark);
    const glow = now.includes(mark.id) ? drawn.slice(0, 1).map((each): Drawn => ({ ...each, look: 'glow' })) : [];
    return [...glow, ...drawn];
  });
}

function drawMark(stage: Seen, mark: Mark): Drawn[] {
  const size = Math.min(Math.max(stage.scale, 0.8), 1.3);
  const layer = 'marks';
  switch (mark.mark) {
    case 'thread': {
      const { near } = bandRound(outlineOf(stage, mark.of), mark.at, mark.toward, 1);
      const line = middleOf(near);
      const knot = line[Math.round(line.length * 0.62)] ?? mark.at;
      const thread: Drawn = { layer, look: 'thread', path: smoothPath(line, false) };
      return mark.bow ? [thread, { layer, look: 'thread', path: bowPath(knot, BOW * size) }] : [thread];
    }
    case 'patch':
      return [{ layer, look: 'patch', path: patchPath(mark.at, bearing(subtract(mark.toward, mark.at)), size) }];
    case 'side-line':
      return [{ layer, look: 'side-line', path: straightPath([mark.from, mark.to], false) }];
  }
}

/** Two loops and two ends. */
function bowPath(knot: Point, size: number): string {
  const loop = (sign: number) =>
    smoothPath(
      [knot, add(knot, { x: sign * size * 0.7, y: -size * 0.55 }), add(knot, { x: sign * size, y: size * 0.15 })],
      true,
    );
  const tail = (sign: number) => straightPath([knot, add(knot, { x: sign * size * 0.5, y: size })], false);
  return [loop(1), loop(-1), tail(1), tail(-1)].join('');
}

/** A small slip of tape, its long way along `ahead`. */
function patchPath(at: Point, ahead: Point, size: number): string {
  const aside = scale(right(ahead), (PATCH_WIDE / 2) * size);
  const [near, far] = [moved(at, ahead, -0.35 * PATCH_LONG * size), moved(at, ahead, 0.65 * PATCH_LONG * size)];
  return straightPath([add(near, aside), add(far, aside), subtract(far, aside), subtract(near, aside)], true);
}
