import {
  type BodyKind,
  bodyKinds,
  type Knowns,
  type MeasureId,
  measures,
  type TraitId,
  type Traits,
  traitValues,
  usualTraits,
} from '../../app/body';
import type { Figure, Tape } from '../../app/measuring/figure';

type Point = { readonly x: number; readonly y: number };

/** Every kind with every measure it has. */
export const steps: readonly (readonly [BodyKind, MeasureId])[] = bodyKinds.flatMap((kind) =>
  measures.filter(({ typical }) => typical[kind]).map(({ id }) => [kind, id] as const),
);

/** Readings that agree with the typical toy of a kind, each times `size`. */
export function typicalKnowns(kind: BodyKind, size = 1): Knowns {
  const entries = measures.flatMap(({ id, typical }) => {
    const value = typical[kind];
    return value ? [[id, { value: value * size, from: 'tape', give: 2 }]] : [];
  });
  return Object.fromEntries(entries) as Knowns;
}

const NASTY = [0, -5, Number.NaN, Number.POSITIVE_INFINITY, 1e-9, 1e12];

/** Some of a kind's readings: plausible ones, wild ones up to a hundredfold off, and ones that are no length at all. */
export function anyKnowns(kind: BodyKind, random: () => number): Knowns {
  const wild = random() < 0.5 ? 4.6 : 0.3;
  const entries = Object.entries(typicalKnowns(kind)).flatMap(([id, known]) => {
    if (random() < 0.3) return [];
    const nasty = random() < 0.05 ? NASTY[Math.floor(random() * NASTY.length)] : undefined;
    return [[id, { ...known, value: nasty ?? known.value * Math.exp((random() * 2 - 1) * wild) }]];
  });
  return Object.fromEntries(entries) as Knowns;
}

export function anyTraits(random: () => number): Traits {
  const entries = (Object.keys(traitValues) as TraitId[]).map((trait) => {
    const values = traitValues[trait];
    return [trait, values[Math.floor(random() * values.length)]];
  });
  return { ...usualTraits, ...Object.fromEntries(entries) } as Traits;
}

/** Every corner and handle in path data, in order. */
export function pointsIn(path: string): Point[] {
  const numbers = (path.match(/-?[\d.]+(?:e-?\d+)?/g) ?? []).map(Number);
  return Array.from({ length: numbers.length / 2 }, (_, index) => ({
    x: numbers[2 * index] ?? Number.NaN,
    y: numbers[2 * index + 1] ?? Number.NaN,
  }));
}

/** Every path a figure and its tape are drawn with. */
export function pathsOf(figure: Figure, tape?: Tape): string[] {
  const laid = tape
    ? [
        ...[...tape.visible, ...tape.hidden].flatMap(({ outline, ticks, middle }) => [outline, ticks, middle]),
        ...tape.guides,
        ...tape.labels.map(({ leader }) => leader),
        tape.arrow,
        tape.way,
      ]
    : [];
  return [...figure.shapes.map(({ path }) => path), ...laid];
}

/** The smooth line that path data of cubics and straight lines draws, as points. */
export function drawnLine(path: string): Point[] {
  const line: Point[] = [];
  for (const [, command = '', rest = ''] of path.matchAll(/([MLCQZ])([^MLCQZ]*)/g)) {
    const points = pointsIn(rest);
    const from = line.at(-1);
    if (command === 'C' && from) line.push(...bend(from, points));
    else line.push(...points);
  }
  return line;
}

function bend(from: Point, [out, into, to]: readonly Point[]): Point[] {
  if (!out || !into || !to) return [];
  return Array.from({ length: 12 }, (_, step) => {
    const t = (step + 1) / 12;
    const mix = (a: number, b: number, c: number, d: number) =>
      (1 - t) ** 3 * a + 3 * (1 - t) ** 2 * t * b + 3 * (1 - t) * t ** 2 * c + t ** 3 * d;
    return { x: mix(from.x, out.x, into.x, to.x), y: mix(from.y, out.y, into.y, to.y) };
  });
}

/** How far a place lies from the nearest point of a line. */
export const gapToLine = (line: readonly Point[], to: Point) =>
  Math.min(...line.map((here) => Math.hypot(here.x - to.x, here.y - to.y)));

/** Whether a place lies inside a closed outline (even-odd). */
export function isInside(outline: readonly Point[], { x, y }: Point): boolean {
  return outline.reduce((inside, a, index) => {
    const b = outline[(index + 1) % outline.length] ?? a;
    const cuts = a.y > y !== b.y > y && x < a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y);
    return cuts ? !inside : inside;
  }, false);
}
