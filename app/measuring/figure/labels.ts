import { distance, lerp, moved, type Point, point, right, toward } from '../../body/point';
import type { Crowd } from './crowd';
import type { Box, Frame, Label } from './drawing';

/** Room kept for a word, in frame units: longer than any language's "start" or "end" at 13 units high. */
export const WORD_ROOM = { width: 58, height: 17 };
/** And for "start and end". */
export const MEET_ROOM = { width: 104, height: 17 };
/** And for "side line". */
export const LINE_ROOM = { width: 70, height: 17 };
export const roomOf = (word: Label['word']) =>
  ({ start: WORD_ROOM, end: WORD_ROOM, meet: MEET_ROOM, 'side-line': LINE_ROOM })[word];
/** Marks reach this far from their place. */
export const MARK_REACH = 8;

/** The page lays a button over the lower right corner, over the left one where a photo would do, and a note over an upper one. */
const BUTTON = { right: 50, left: 126, height: 46, cost: 400 };
const NOTE = { width: 130, height: 28, cost: 30 };

const EDGE = 5;
const STEP = { across: 9, down: 8 };
const SAMPLES = 12;

export type Wanted = { readonly word: Label['word']; readonly mark: Point };

/** What a word must keep off: places on the tape, the figure, and the words placed before it. */
type Around = {
  readonly mark: Point;
  readonly taken: readonly Point[];
  readonly crowd: Crowd;
  /** Eyes, nose and muzzle: nothing is more missed on a toy. */
  readonly face: Crowd;
  readonly placed: readonly Label[];
  /** Whether the measure can be taken from a photo. */
  readonly byPhoto: boolean;
};

type Candidate = { readonly box: Box; readonly from: Point; readonly to: Point; readonly least: number };

/** Places each word where it covers nothing, near its mark, with a leader that crosses as little as can be. */
export function placeLabels(
  frame: Frame,
  wanted: readonly Wanted[],
  toy: Pick<Around, 'taken' | 'crowd' | 'face' | 'byPhoto'>,
): Label[] {
  const placed: Label[] = [];
  for (const { word, mark } of wanted) placed.push(best(frame, word, { mark, placed, ...toy }));
  return placed;
}

/** Candidates are tried nearest first, until nearness alone costs more than the best one found. */
function best(frame: Frame, word: Label['word'], around: Around): Label {
  const candidates = candidatesIn(frame, roomOf(word), around);
  let found = { cost: Number.POSITIVE_INFINITY, box: candidates[0]?.box ?? boxAt(EDGE, EDGE, WORD_ROOM) };
  for (const candidate of candidates) {
    if (candidate.least >= found.cost) break;
    const cost = costOf(candidate, found.cost, around);
    if (cost < found.cost) found = { cost, box: candidate.box };
  }
  return labelIn(word, found.box, around.mark);
}

function candidatesIn(
  frame: Frame,
  room: { width: number; height: number },
  { mark, byPhoto }: Pick<Around, 'mark' | 'byPhoto'>,
): Candidate[] {
  const all: Candidate[] = [];
  for (let top = EDGE; top + room.height + EDGE <= frame.height; top += STEP.down) {
    for (let left = EDGE; left + room.width + EDGE <= frame.width; left += STEP.across) {
      const box = boxAt(left, top, room);
      const { from, to } = ends(box, mark);
      const reach = distance(from, to);
      const level = Math.abs(from.y - to.y) * 0.25;
      all.push({ box, from, to, least: reach + (reach < 12 ? 40 : 0) + level + cornerCost(box, frame, byPhoto) });
    }
  }
  return all.sort((a, b) => a.least - b.least);
}

function cornerCost({ left, top, right, bottom }: Box, { width, height }: Frame, byPhoto: boolean): number {
  const isAtButton = right > width - BUTTON.right || (byPhoto && left < BUTTON.left);
  const button = isAtButton && bottom > height - BUTTON.height ? BUTTON.cost : 0;
  const note = top < NOTE.height && (left < NOTE.width || right > width - NOTE.width) ? NOTE.cost : 0;
  return button + note;
}

/**
 * What a place costs with its distance: covering the tape, a mark or another word all but forbids it. What is dear to
 * work out is left out once the rest costs as much as the best place found.
 */
function costOf({ box, from, to, least }: Candidate, best: number, around: Around): number {
  const { taken, crowd, face, placed } = around;
  const crowded = (crowd(grown(box, 2)) > 0 ? 90 : 0) + crowd(box) * 300 + face(box) * 600;
  const clashes = placed.filter((other) => overlap(grown(box, 4), other.box)).length * 5000;
  const crossing = placed.filter((other) => segmentsCross(from, to, ...leaderEnds(other))).length * 400;
  const cost = least + crowded + clashes + crossing;
  if (cost >= best) return cost;
  const covers = taken.filter((here) => gapTo(box, here) < MARK_REACH + 2).length * 500;
  return cost + covers >= best ? cost + covers : cost + covers + leaderCost(from, to, around);
}

/** A leader may cross fur, had better not cross the tape, and must not cross a word. */
function leaderCost(from: Point, to: Point, { mark, taken, crowd, face, placed }: Around): number {
  const line = Array.from({ length: SAMPLES }, (_, step) => lerp(from, to, step / SAMPLES));
  const onTape = line.filter(
    (here) => distance(here, mark) > 13 && taken.some((each) => distance(here, each) < MARK_REACH),
  );
  const onWords = line.filter((here) => placed.some((other) => gapTo(other.box, here) < 2));
  const on = (seen: Crowd) =>
    line.filter(({ x, y }) => seen({ left: x - 1, right: x + 1, top: y - 1, bottom: y + 1 }) > 0);
  return onTape.length * 15 + onWords.length * 400 + on(crowd).length * 9 + on(face).length * 60;
}

function labelIn(word: Label['word'], box: Box, mark: Point): Label {
  const { from, to, leftward } = ends(box, mark);
  const bend = moved(lerp(from, to, 0.5), right(toward(from, to)), (leftward ? -1 : 1) * 0.12 * distance(from, to));
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
