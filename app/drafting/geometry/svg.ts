// Paths as SVG path data (W3C SVG 2, chapter 9) in mm: absolute commands only, one subpath.

import { type Point, point } from '../../body/point';
import { type Curve, cubic, line } from './curve';
import { end, type Path } from './path';

/** Output is rounded to 1e-4 mm: engines' trigonometry differs below that. */
const STEPS_PER_MM = 1e4;

/** How many numbers each command takes. */
const NUMBERS = { M: 2, L: 2, H: 1, V: 1, C: 6, Z: 0 } as const;

type Command = keyof typeof NUMBERS;

/** Path data that is not of this kind: `at` is the place in the text. */
export class PathDataError extends Error {
  readonly code = 'path-data';
  constructor(readonly at: number) {
    super(`path-data ${at}`);
  }
}

/** Path data with M L C, and Z where `closed`: Z then draws the last line, if the ring ends in one. */
export function toSvg(path: Path, options: { readonly closed?: boolean } = {}): string {
  const [first] = path;
  if (!first) return '';
  const home = pair(first.from);
  const drawn = path.map((curve) =>
    curve.kind === 'line' ? `L${pair(curve.to)}` : `C${pair(curve.out)} ${pair(curve.into)} ${pair(curve.to)}`,
  );
  if (!options.closed) return [`M${home}`, ...drawn].join('');
  if (drawn.length > 1 && drawn[drawn.length - 1] === `L${home}`) drawn.pop();
  return [`M${home}`, ...drawn, 'Z'].join('');
}

/**
 * Reads absolute M L H V C Z, one subpath; a Z away from the start adds the closing line.
 * @throws PathDataError on any other command, a missing number, or a second subpath
 */
export function fromSvg(d: string): Path {
  const curves: Curve[] = [];
  let home: Point | undefined;
  for (const { command, numbers, at } of commands(d)) {
    if ((command === 'M') !== (home === undefined)) throw new PathDataError(at);
    const from: Point = curves.length > 0 ? end(curves) : (home ?? point(0, 0));
    const [a = 0, b = 0, c = 0, e = 0, f = 0, g = 0] = numbers;
    if (command === 'M') home = point(a, b);
    else if (command === 'L') curves.push(line(from, point(a, b)));
    else if (command === 'H') curves.push(line(from, point(a, from.y)));
    else if (command === 'V') curves.push(line(from, point(from.x, a)));
    else if (command === 'C') curves.push(cubic(from, point(a, b), point(c, e), point(f, g)));
    else if (home && (from.x !== home.x || from.y !== home.y)) curves.push(line(from, home));
  }
  return curves;
}

/** A number of mm as written in files: 1e-4 steps, no exponent, no trailing zeros, no minus zero. */
export function formatMm(mm: number): string {
  return String(Math.round(mm * STEPS_PER_MM) / STEPS_PER_MM + 0);
}

function pair(p: Point): string {
  return `${formatMm(p.x)} ${formatMm(p.y)}`;
}

type Read = { readonly command: Command; readonly numbers: readonly number[]; readonly at: number };

/** Splits the text into commands; numbers that go on after a whole set repeat it (after M they draw lines). */
function* commands(d: string): Generator<Read> {
  const token = /\s*,?\s*(?:([A-Za-z])|([-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?))/y;
  let command: Command | undefined;
  let numbers: number[] = [];
  let at = 0;
  const text = d.trimEnd();
  while (at < text.length) {
    token.lastIndex = at;
    const match = token.exec(text);
    if (!match) throw new PathDataError(at);
    const [, letter, digits] = match;
    if (letter !== undefined) {
      if (numbers.length > 0 || !isCommand(letter)) throw new PathDataError(at);
      command = letter;
    } else numbers.push(Number(digits));
    if (!command) throw new PathDataError(at);
    if (numbers.length > NUMBERS[command]) throw new PathDataError(at);
    if (numbers.length === NUMBERS[command]) {
      yield { command, numbers, at };
      numbers = [];
      if (command === 'M') command = 'L';
    }
    at = token.lastIndex;
  }
  if (numbers.length > 0) throw new PathDataError(at);
}

function isCommand(letter: string): letter is Command {
  return letter in NUMBERS;
}
