// In large print words beside edges and lines have no room: a letter stands there, and the pages of words say what it means.

import type { Say, Unit } from '../../body';
import { isStrip } from '../cloth';
import type { Piece } from '../draft-types';
import { add, distance, left, type Path, type Point, pathLength, pointAtLength, scale } from '../geometry';
import { type Board, block, blockOutside, nearestRoom } from '../packing';
import type { Page, Placed } from '../sheets/layout';
import { CLEAR_MM, withMarks } from '../sheets/marks';
import { moved } from '../sheets/move';
import { furnished, outlineOn, withInk, withinWindow } from './boards';
import { inkOutline } from './crossing';
import { edgeText } from './edge-words';
import { centred } from './flow';
import { type Ink, MM_PER_PT, smallestOf, type TextWidth, type Words } from './ink';
import { lineText } from './line-words';

/** A letter, what it means, and all paths it stands at. */
export type Lettered = { readonly letter: string; readonly text: string; readonly paths: readonly Path[] };

/** Where along a path its letter may stand, as shares of its length, the best first; and how far from it at most, mm. */
const PLACES = [0.5, 0.35, 0.65, 0.2, 0.8];
const FARTHEST_MM = 10;

const FIRST = 'a'.charCodeAt(0);

/** What is named of a piece: edges, then lines; what is called alike has one letter. */
export function letteredOf(piece: Piece, say: Say, units: Unit): readonly Lettered[] {
  if (isStrip(piece)) return [];
  const named = [
    ...piece.edges.flatMap((edge) => {
      const text = edgeText(edge, piece, say, units);
      return text === undefined ? [] : [{ text, path: edge.path }];
    }),
    ...piece.lines.map((line) => ({ text: lineText(line.name, say), path: line.path })),
  ];
  const texts = [...new Set(named.map(({ text }) => text))];
  return texts.map((text, at) => ({
    letter: String.fromCharCode(FIRST + at),
    text,
    paths: named.filter((each) => each.text === text).map(({ path }) => path),
  }));
}

/** The letters of one piece on its page, inside it and clear of all ink; none where a path has no room beside it. */
export function lettersInk(
  { shown, lettered }: { readonly shown: Piece; readonly lettered: readonly Lettered[] },
  page: Page,
  placed: Placed,
  ink: readonly Ink[],
  widthOf: TextWidth,
): readonly Words[] {
  const to = moved(placed.move);
  const size = smallestOf(widthOf);
  const [wide, high] = [widthOf('m', size, false), size * MM_PER_PT];
  const marked = withMarks(furnished(page), shown, placed.whole, to, widthOf.print);
  const clear = withInk(blockOutside(marked, outlineOn(shown.cutLine, placed), CLEAR_MM / 2), ink, widthOf);
  let board = ink.filter(isWords).reduce((free, each) => withWords(free, each, widthOf), clear);
  if (placed.window) board = withinWindow(board, placed.window);
  const drawn = [...shown.edges, ...shown.lines].map(({ path }) => path);
  const along = drawn.map((path) => ({ path, points: pointsAlong(path, to) }));
  const found: Words[] = [];
  for (const { letter, paths } of lettered) {
    for (const path of paths) {
      const others = along.filter((each) => !paths.includes(each.path)).flatMap(({ points }) => points);
      const place = placeBeside(path, to, { wide, high, board, others });
      if (!place) continue;
      const words = centred(letter, place, size, false, widthOf);
      found.push(words);
      board = withWords(board, words, widthOf);
    }
  }
  return found;
}

type Beside = {
  readonly wide: number;
  readonly high: number;
  readonly board: Board;
  /** Points along everything else that has a letter or is an edge. */
  readonly others: readonly Point[];
};

/** The middle of the letter, on either side of its path and nearer to it than to any other. */
function placeBeside(path: Path, to: (p: Point) => Point, { wide, high, board, others }: Beside): Point | undefined {
  const length = pathLength(path);
  const own = pointsAlong(path, to);
  for (const share of PLACES) {
    for (const side of [-1, 1]) {
      const { point, tangent } = pointAtLength(path, share * length);
      const wish = to(add(point, scale(left(tangent), side * (high / 2 + CLEAR_MM))));
      const room = nearestRoom(board, wide, high, wish);
      const middle = room && { x: room.x + wide / 2, y: room.y + high / 2 };
      const away = middle ? nearest(middle, own) : Infinity;
      if (middle && away <= FARTHEST_MM && away < nearest(middle, others)) return middle;
    }
  }
  return undefined;
}

/** Close enough to tell which of two lines a letter is nearer to. */
const STEPS = 60;

function pointsAlong(path: Path, to: (p: Point) => Point): readonly Point[] {
  const length = pathLength(path);
  return Array.from({ length: STEPS + 1 }, (_, step) => to(pointAtLength(path, (length * step) / STEPS).point));
}

const nearest = (at: Point, points: readonly Point[]): number =>
  Math.min(Infinity, ...points.map((each) => distance(each, at)));

const isWords = (ink: Ink): ink is Words => ink.kind === 'words';

const withWords = (board: Board, words: Words, widthOf: TextWidth): Board =>
  block(board, inkOutline(words, widthOf), CLEAR_MM / 2);
