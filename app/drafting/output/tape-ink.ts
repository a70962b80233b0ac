// A tape of paper and a gauge for stretch, for who has no soft tape: strips to cut out and glue, true to the hair.

import { MM_PER_INCH, type Mm, type Say } from '../../body';
import { line, type Path } from '../geometry';
import { centred, type Paragraph, setIn, wordsOf } from './flow';
import { type Ink, SMALLEST_PT, stroke, type TextWidth } from './ink';

/** How long the whole tape is, and how much of it lies on one strip: as much as both A4 and Letter take across. */
export const TAPE_MM = 1500;
export const STRIP_MM = 250;
/** What is glued under the next strip. */
const TAB_MM = 10;
const WIDE_MM = 17;
const LEFT_MM = 9;
const TOP_MM = 34;
const PITCH_MM = 21;
const TEXT_PT = 9;

/** Ticks of a scale: every so many mm, so long, the first that fits wins; numbered where told. */
type Scale = {
  readonly step: Mm;
  readonly lengths: readonly (readonly [every: number, length: Mm])[];
  readonly numbered: number;
};
const metric: Scale = {
  step: 1,
  lengths: [
    [10, 5.5],
    [5, 4],
    [1, 2.4],
  ],
  numbered: 10,
};
const inches: Scale = {
  step: MM_PER_INCH / 16,
  lengths: [
    [16, 5.5],
    [8, 4.4],
    [4, 3.4],
    [2, 2.6],
    [1, 1.8],
  ],
  numbered: 16,
};

/** Of knit at rest this much is held along the gauge, mm; what it reaches is told in steps of a tenth, up to double. */
export const REST_MM = 100;
const GAUGE_STEPS = 10;

/** One page, 279 mm wide or more and 210 high or more: the tape's strips, and the gauge. */
export function tapeInk(say: Say, widthOf: TextWidth): readonly Ink[] {
  const strips = Array.from({ length: TAPE_MM / STRIP_MM }, (_, n) => n);
  const bottom = TOP_MM + strips.length * PITCH_MM + 8;
  return [
    ...words(tapeWords(say), 8, widthOf),
    ...strips.flatMap((n) => stripInk(n, TOP_MM + n * PITCH_MM, say, widthOf)),
    ...words(gaugeWords(say), bottom - 4, widthOf),
    ...gaugeInk(bottom + 24, say, widthOf),
  ];
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
  const last = from + STRIP_MM >= TAPE_MM;
  const right = LEFT_MM + STRIP_MM;
  const tab = last
    ? []
    : [
        stroke('marks', 'inner', frame(right, y, TAB_MM, WIDE_MM)),
        centred(
          say('tape.glue'),
          { x: right + TAB_MM / 2, y: y + WIDE_MM / 2 },
          SMALLEST_PT,
          false,
          widthOf,
          -Math.PI / 2,
        ),
      ];
  return [
    stroke('cut', 'rule', frame(LEFT_MM, y, STRIP_MM, WIDE_MM), true),
    ...scaleInk(metric, from, y, 1, widthOf),
    ...scaleInk(inches, from, y + WIDE_MM, -1, widthOf),
    ...tab,
  ];
}

/** The ticks of one strip along its upper edge (`down` 1) or its lower one (−1). Its ends are its own frame. */
function scaleInk(
  { step, lengths, numbered }: Scale,
  from: Mm,
  y: Mm,
  down: 1 | -1,
  widthOf: TextWidth,
): readonly Ink[] {
  const first = Math.ceil(from / step + 1e-9);
  const end = Math.floor((from + STRIP_MM) / step - 1e-9);
  return Array.from({ length: end - first + 1 }, (_, n) => first + n).flatMap((count): readonly Ink[] => {
    const x = LEFT_MM + count * step - from;
    const [, length = 0] = lengths.find(([every]) => count % every === 0) ?? [];
    const tick = stroke('marks', 'rule', [line({ x, y }, { x, y: y + down * length })]);
    if (count % numbered !== 0) return [tick];
    const text = String(count / numbered);
    const aside = widthOf(text, SMALLEST_PT, true) / 2 + 0.8;
    const inwards = x + 2 * aside > LEFT_MM + STRIP_MM ? -1 : 1;
    return [tick, centred(text, { x: x + inwards * aside, y: y + down * 6.4 }, SMALLEST_PT, true, widthOf)];
  });
}

/** From where knit is held, past where it ends at rest, to double: a tick for every tenth it stretches. */
function gaugeInk(y: Mm, say: Say, widthOf: TextWidth): readonly Ink[] {
  const ticks = Array.from({ length: GAUGE_STEPS + 1 }, (_, n) => n).flatMap((n): readonly Ink[] => {
    const x = LEFT_MM + REST_MM * (1 + n / GAUGE_STEPS);
    const text = say('tape.stretch', { share: n / GAUGE_STEPS });
    return [
      stroke('marks', 'mark', [line({ x, y }, { x, y: y + (n === 0 ? 9 : 5) })]),
      centred(text, { x, y: y + (n === 0 ? 11.5 : 7.5) }, SMALLEST_PT, n === 0, widthOf),
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
