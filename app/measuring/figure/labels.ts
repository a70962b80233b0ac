import type { Crowd } from './crowd';
import type { Box, Frame, Label } from './drawing';
import { between, distance, moved, type Point, point, toward, turned } from './point';

/** Room kept for a word, in frame units: longer than any language's "start" or "end" at 13 units high. */
export const WORD_ROOM = { width: 58, height: 17 };
/** And for "start and end". */
export const MEET_ROOM = { width: 98, height: 17 };
/** Marks reach this far from their place. */
export const MARK_REACH = 8;

const EDGE = 5;
const STEP = { across: 9, down: 8 };
const SAMPLES = 12;

/** A word that belongs to a mark; `taken` are the places on the tape and the marks that must stay clear. */
type Wanted = { readonly word: Label['word']; readonly mark: Point };

/** Places each word where it covers nothing, near its mark, with a leader that crosses as little as can be. */
export function placeLabels(frame: Frame, wanted: readonly Wanted[], taken: readonly Point[], crowd: Crowd): Label[] {
  const placed: Label[] = [];
  for (const each of wanted) placed.push(best(frame, each, taken, crowd, placed));
  return placed;
}

function best(
  frame: Frame,
  { word, mark }: Wanted,
  taken: readonly Point[],
  crowd: Crowd,
  placed: readonly Label[],
): Label {
  const room = word === 'meet' ? MEET_ROOM : WORD_ROOM;
  let found = { cost: Number.POSITIVE_INFINITY, box: boxAt(EDGE, EDGE, room) };
  for (let top = EDGE; top + room.height + EDGE <= frame.height; top += STEP.down) {
    for (let left = EDGE; left + room.width + EDGE <= frame.width; left += STEP.across) {
      const box = boxAt(left, top, room);
      const cost = costOf(box, mark, taken, crowd, placed);
      if (cost < found.cost) found = { cost, box };
    }
  }
  return labelIn(word, found.box, mark);
}

/** Nearness counts by the unit; covering the tape, a mark or another word all but forbids a place. */
function costOf(box: Box, mark: Point, taken: readonly Point[], crowd: Crowd, placed: readonly Label[]): number {
  const { from, to } = ends(box, mark);
  const reach = distance(from, to);
  const near = reach < 12 ? 40 : 0;
  const level = Math.abs(from.y - to.y) * 0.25;
  const covers =
    taken.filter((here) => gapTo(box, here) < MARK_REACH + 2).length * 500 +
    (crowd(grown(box, 2)) > 0 ? 70 : 0) +
    crowd(box) * 600;
  const clashes = placed.filter((other) => overlap(grown(box, 4), other.box)).length * 5000;
  const crossing = placed.filter((other) => segmentsCross(from, to, ...leaderEnds(other))).length * 400;
  const line = Array.from({ length: SAMPLES }, (_, step) => between(from, to, step / SAMPLES));
  const onTape = line.filter(
    (here) => distance(here, mark) > 13 && taken.some((each) => distance(here, each) < MARK_REACH),
  );
  const onWords = line.filter((here) => placed.some((other) => gapTo(other.box, here) < 2)).length * 400;
  const onFur = line.filter(
    (here) => crowd(grown({ left: here.x, right: here.x, top: here.y, bottom: here.y }, 1)) > 0,
  );
  return reach + near + level + covers + clashes + crossing + onTape.length * 45 + onWords + onFur.length * 4;
}

function labelIn(word: Label['word'], box: Box, mark: Point): Label {
  const { from, to, leftward } = ends(box, mark);
  const bend = moved(between(from, to, 0.5), turned(toward(from, to)), (leftward ? -1 : 1) * 0.12 * distance(from, to));
  const pair = ({ x, y }: Point) => `${Math.round(x * 10) / 10} ${Math.round(y * 10) / 10}`;
  return {
    word,
    at: point(leftward ? box.right - 4 : box.left + 4, box.bottom - 4.5),
    anchor: leftward ? 'end' : 'start',
    box,
    leader: `M${pair(from)}Q${pair(bend)} ${pair(to)}`,
  };
}

/** A leader runs from the side of the box that faces the mark to just off the mark. */
function ends(box: Box, mark: Point) {
  const middle = point((box.left + box.right) / 2, (box.top + box.bottom) / 2);
  const leftward = middle.x < mark.x;
  const from = point(leftward ? box.right : box.left, middle.y);
  return { from, to: moved(mark, toward(mark, from), Math.min(MARK_REACH + 2, distance(mark, from))), leftward };
}

const leaderEnds = ({ leader }: Label): [Point, Point] => {
  const numbers = (leader.match(/-?[\d.]+/g) ?? []).map(Number);
  return [point(numbers[0] ?? 0, numbers[1] ?? 0), point(numbers[4] ?? 0, numbers[5] ?? 0)];
};

const boxAt = (left: number, top: number, room: { width: number; height: number }): Box => ({
  left,
  top,
  right: left + room.width,
  bottom: top + room.height,
});

const grown = (box: Box, by: number): Box => ({
  left: box.left - by,
  top: box.top - by,
  right: box.right + by,
  bottom: box.bottom + by,
});

export const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** How far a place lies outside a box; 0 inside. */
export function gapTo({ left, top, right, bottom }: Box, { x, y }: Point): number {
  return Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom));
}

function segmentsCross(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point) => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}
