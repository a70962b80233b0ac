// A tape of paper and a gauge for stretch, for who has no soft tape: strips to cut out and glue, true to the hair.

import { MM_PER_INCH, type Mm, type Say } from '../../body';
import { line, type Path } from '../geometry';
import type { Print } from '../sheets/prints';
import { centred, type Paragraph, setIn, wordsOf } from './flow';
import { type Ink, smallestOf, stroke, type TextWidth } from './ink';
import { type Block, wordPages } from './word-pages';

/** How long the whole tape is, and how much of it lies on one strip: as much as both A4 and Letter take across. */
export const TAPE_MM = 1500;
export const STRIP_MM = 250;
/** What is glued under the next strip. */
const TAB_MM = 10;
const LEFT_MM = 9;
const TOP_MM = 34;
const PITCH_MM = 21;
const TEXT_PT = 9;

/** Ticks of a scale: every so many mm, so long, the first that fits wins; numbered where told, in so many units. */
type Scale = {
  readonly step: Mm;
  readonly lengths: readonly (readonly [every: number, length: Mm])[];
  readonly numbered: number;
  readonly units: number;
};
/** How a print sets a strip: its width, how far its numbers stand in from its edges, mm, beside their ticks or below; and its scales. */
type Set = {
  readonly wide: Mm;
  readonly numbers: Mm;
  readonly beside: boolean;
  readonly metric: Scale;
  readonly inches: Scale;
};
const sets: Readonly<Record<Print, Set>> = {
  usual: {
    wide: 17,
    numbers: 6.4,
    beside: true,
    metric: {
      step: 1,
      lengths: [
        [10, 5.5],
        [5, 4],
        [1, 2.4],
      ],
      numbered: 10,
      units: 1,
    },
    inches: {
      step: MM_PER_INCH / 16,
      lengths: [
        [16, 5.5],
        [8, 4.4],
        [4, 3.4],
        [2, 2.6],
        [1, 1.8],
      ],
      numbered: 16,
      units: 1,
    },
  },
  // Lines a millimetre wide leave no room for ticks a millimetre apart.
  large: {
    wide: 29,
    numbers: 9.5,
    beside: false,
    metric: {
      step: 5,
      lengths: [
        [2, 5.5],
        [1, 3.5],
      ],
      numbered: 4,
      units: 2,
    },
    inches: {
      step: MM_PER_INCH / 4,
      lengths: [
        [4, 5.5],
        [2, 4.5],
        [1, 3.2],
      ],
      numbered: 4,
      units: 1,
    },
  },
};
const setOf = ({ print = 'usual' }: TextWidth): Set => sets[print];

/** Of knit at rest this much is held along the gauge, mm; what it reaches is told in steps of a tenth, up to double. */
export const REST_MM = 100;
const GAUGE_STEPS = 10;
/** What it takes down the page in large print, mm. */
const GAUGE_LARGE_MM = 20;

/** One page, 279 mm wide or more and 210 high or more: the tape's strips, and the gauge. */
export function tapeInk(say: Say, widthOf: TextWidth): readonly Ink[] {
  const bottom = TOP_MM + STRIPS.length * PITCH_MM + 8;
  return [
    ...words(tapeWords(say), 8, widthOf),
    ...STRIPS.flatMap((n) => stripInk(n, TOP_MM + n * PITCH_MM, say, widthOf)),
    ...words(gaugeWords(say), bottom - 4, widthOf),
    ...gaugeInk(bottom + 24, say, widthOf),
  ];
}

const STRIPS = Array.from({ length: TAPE_MM / STRIP_MM }, (_, n) => n);

/** In large print, over as many pages as it takes. */
export function largeTapeInk(
  page: { readonly width: Mm; readonly height: Mm },
  say: Say,
  widthOf: TextWidth,
): readonly (readonly Ink[])[] {
  const size = smallestOf(widthOf);
  const even = ({ text, bold = false }: Paragraph): Paragraph => ({ text, bold, before: bold ? 7 : 0 });
  const strips = STRIPS.map(
    (n): Block => ({ before: 4, height: setOf(widthOf).wide, draw: ({ y }) => stripInk(n, y, say, widthOf) }),
  );
  const gauge: Block = { before: 6, height: GAUGE_LARGE_MM, draw: ({ y }) => gaugeInk(y, say, widthOf) };
  return wordPages([...tapeWords(say).map(even), ...strips, ...gaugeWords(say).map(even), gauge], page, size, widthOf)
    .pages;
}

export const tapeWords = (say: Say): readonly Paragraph[] => [
  { text: say('tape.title'), bold: true, large: 1.7 },
  { text: say('tape.how', { whole: TAPE_MM, unit: 'cm' }) },
];

export const gaugeWords = (say: Say): readonly Paragraph[] => [
  { text: say('tape.gauge-title'), bold: true, large: 1.2 },
  { text: say('tape.gauge', { rest: REST_MM, none: 0, unit: 'cm' }) },
];

function words(paragraphs: readonly Paragraph[], y: Mm, widthOf: TextWidth): readonly Ink[] {
  const box = { x: LEFT_MM, y, width: STRIP_MM + TAB_MM, height: 0 };
  return wordsOf(setIn(paragraphs, TEXT_PT, box.width, widthOf), box, 'words');
}

function stripInk(n: number, y: Mm, say: Say, widthOf: TextWidth): readonly Ink[] {
  const from = n * STRIP_MM;
  const { wide, metric, inches } = setOf(widthOf);
  const last = from + STRIP_MM >= TAPE_MM;
  return [
    stroke('cut', 'rule', frame(LEFT_MM, y, STRIP_MM, wide), true),
    ...scaleInk(metric, from, y, 1, widthOf),
    ...scaleInk(inches, from, y + wide, -1, widthOf),
    ...(last ? [] : tabInk(y, say('tape.glue'), widthOf)),
  ];
}

/** What is glued under the next strip; it says so where there is room. */
function tabInk(y: Mm, text: string, widthOf: TextWidth): readonly Ink[] {
  const { wide } = setOf(widthOf);
  const right = LEFT_MM + STRIP_MM;
  const size = smallestOf(widthOf);
  const middle = { x: right + TAB_MM / 2, y: y + wide / 2 };
  return [
    stroke('marks', 'inner', frame(right, y, TAB_MM, wide)),
    ...(widthOf(text, size, false) < wide - 2 ? [centred(text, middle, size, false, widthOf, -Math.PI / 2)] : []),
  ];
}

/** The ticks of one strip along its upper edge (`down` 1) or its lower one (−1). Its ends are its own frame. */
function scaleInk(
  { step, lengths, numbered, units }: Scale,
  from: Mm,
  y: Mm,
  down: 1 | -1,
  widthOf: TextWidth,
): readonly Ink[] {
  const { numbers, beside } = setOf(widthOf);
  const first = Math.ceil(from / step + 1e-9);
  const end = Math.floor((from + STRIP_MM) / step - 1e-9);
  return Array.from({ length: end - first + 1 }, (_, n) => first + n).flatMap((count): readonly Ink[] => {
    const x = LEFT_MM + count * step - from;
    const [, length = 0] = lengths.find(([every]) => count % every === 0) ?? [];
    const tick = stroke('marks', 'rule', [line({ x, y }, { x, y: y + down * length })]);
    if (count % numbered !== 0) return [tick];
    const text = String((units * count) / numbered);
    const size = smallestOf(widthOf);
    const half = widthOf(text, size, true) / 2 + 0.8;
    return [
      tick,
      centred(
        text,
        { x: beside ? besideTick(x, half) : belowTick(x, half), y: y + down * numbers },
        size,
        true,
        widthOf,
      ),
    ];
  });
}

/** Where the middle of a number stands: beside its tick, on its other side where the strip ends; or below it. */
const besideTick = (x: Mm, half: Mm): Mm => x + (x + 2 * half > LEFT_MM + STRIP_MM ? -half : half);
const belowTick = (x: Mm, half: Mm): Mm => Math.max(LEFT_MM + half, Math.min(LEFT_MM + STRIP_MM - half, x));

/** From where knit is held, past where it ends at rest, to double: a tick for every tenth it stretches. */
function gaugeInk(y: Mm, say: Say, widthOf: TextWidth): readonly Ink[] {
  const size = smallestOf(widthOf);
  // Under large words only some ticks have room.
  const every = widthOf.print === 'large' ? GAUGE_STEPS / 2 : 1;
  const ticks = Array.from({ length: GAUGE_STEPS + 1 }, (_, n) => n).flatMap((n): readonly Ink[] => {
    const x = LEFT_MM + REST_MM * (1 + n / GAUGE_STEPS);
    const text = say('tape.stretch', { share: n / GAUGE_STEPS });
    const words = centred(text, { x, y: y + (n === 0 ? 9 : 5) + size / 2.8 }, size, n === 0, widthOf);
    return [
      stroke('marks', 'mark', [line({ x, y }, { x, y: y + (n === 0 ? 9 : 5) })]),
      ...(n % every === 0 ? [words] : []),
    ];
  });
  return [
    stroke('marks', 'mark', [line({ x: LEFT_MM, y }, { x: LEFT_MM + 2 * REST_MM, y })]),
    stroke('marks', 'mark', [line({ x: LEFT_MM, y }, { x: LEFT_MM, y: y + 9 })]),
    ...ticks,
  ];
}

function frame(x: Mm, y: Mm, width: Mm, height: Mm): Path {
  const corners = [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
  return corners.map((corner, n) => line(corner, corners[(n + 1) % corners.length] ?? corner));
}
