import { beforeAll, describe, expect, test } from 'vitest';
import type { Say } from '../../app/body';
import type { Draft } from '../../app/drafting/draft-types';
import { flatten, type Path, type Point } from '../../app/drafting/geometry';
import { toPdf } from '../../app/drafting/output';
import {
  BOTTOM_MARGIN_MM,
  EDGE_MARGIN_MM,
  findPaper,
  formed,
  type Layout,
  layOut,
  moved,
  type Placed,
} from '../../app/drafting/sheets';
import { createSay } from '../../app/words';
import { demoDrafts } from '../toys/demo-drafts';
import { handMade } from '../toys/drafts';
import { farthest } from './near-lines';
import { type ReadPage, readPdf } from './pdf-reading';

/** How far a line read back may lie from the draft, mm; and how long the check lines may measure. */
const TRUE_MM = 0.02;
const CHECKS = [
  { words: '50 mm', length: 50 },
  // International yard and pound agreement, 1959: 1 in = 25.4 mm.
  { words: '2 in', length: 50.8 },
];
/** Strokes are 0.35 mm or thicker, print 7 pt or larger. */
const THINNEST_MM = 0.35;
const SMALLEST_PT = 7;
/** Curves are laid on pages by chords this close to them, mm. */
const FOLLOWED_MM = 0.05;

let say: Say;
beforeAll(async () => {
  say = await createSay('en');
});

const laid = (draft: Draft, paper: string, more = {}): Layout => {
  const found = findPaper(paper) ?? expect.fail(`no paper ${paper}`);
  return layOut(draft, found, { effort: 4, seed: 1, ...more });
};
const printed = async (draft: Draft, layout: Layout) => readPdf(toPdf([{ draft, layout }], { say, units: 'in' }));

/** The level line under its words: all strokes of two points below and around the middle of them. */
function measured(page: ReadPage, words: string): number[] {
  const label = page.texts.filter((text) => text.text === words);
  return label.flatMap(({ at }) =>
    page.strokes
      .filter(({ points: [a, b], points }) => a && b && points.length === 2 && a.y === b.y && a.x < at.x && b.x > at.x)
      .map(({ points: [a, b] }) => ({ y: a?.y ?? 0, length: (b?.x ?? 0) - (a?.x ?? 0) }))
      .filter(({ y }) => y > at.y && y < at.y + 6)
      .map(({ length }) => length),
  );
}

const cases: readonly (readonly [string, Draft, string, object])[] = [
  ['small toy', handMade(0.5), 'a4', {}],
  ['middling toy', handMade(1), 'letter', {}],
  ['unfolded', handMade(1), 'a4', { halves: false }],
  ['toy of a metre', handMade(2.6), 'a4', {}],
  ['on either paper', handMade(1), 'either', {}],
  ['in the copy shop', handMade(2.6), 'a0', {}],
  ['on a roll', handMade(1), 'roll:610', {}],
  ['without allowances', handMade(1), 'letter', { form: 'sewn' }],
  ['as cards', handMade(0.7), 'a4', { form: 'card', without: [1] }],
  ...demoDrafts()
    .slice(0, 4)
    .map((draft) => [draft.toy, draft, 'a4', {}] as const),
];

describe.each(cases)('%s', (_, draft, paper, more) => {
  const layout = laid(draft, paper, more);
  let pages: readonly ReadPage[] = [];
  beforeAll(async () => {
    pages = (await printed(draft, layout)).pages;
  });

  test('pages are as large as the paper', () => {
    expect(pages).toHaveLength(layout.pages.length);
    pages.forEach((page, i) => {
      expect(page.width).toBeCloseTo(layout.pages[i]?.width ?? 0, 3);
      expect(page.height).toBeCloseTo(layout.pages[i]?.height ?? 0, 3);
      if (!layout.paper.roll)
        expect([page.width, page.height].map((mm) => mm.toFixed(3))).toEqual(
          [layout.paper.width, layout.paper.height].map((mm) => mm.toFixed(3)),
        );
    });
  });

  test('on every page the check lines are as long as they say', () => {
    for (const page of pages) {
      for (const { words, length } of CHECKS) {
        const lines = measured(page, words);
        expect(lines).toHaveLength(1);
        expect(Math.abs((lines[0] ?? 0) - length)).toBeLessThanOrEqual(TRUE_MM);
      }
    }
  });

  test('on one page, the first wherever that costs none, a line is 200 mm long', () => {
    const at = layout.pages.findIndex((page) => page.long);
    const page = pages[at] ?? expect.fail('no page has it');
    const lengths = page.strokes.map(({ points: [a, b] }) => (a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0));
    expect(page.texts.map(({ text }) => text)).toContain('200 mm, end to end');
    expect(lengths.some((length) => Math.abs(length - 200) <= TRUE_MM)).toBe(true);
  });

  test('every edge lies where the draft and the layout put it', () => {
    layout.pages.forEach((page, i) => {
      const lines = (pages[i]?.strokes ?? []).map((stroke) => stroke.points);
      for (const placed of page.placed)
        expect(farthest(edgesOn(formed(draft, layout.form), placed), lines)).toBeLessThanOrEqual(TRUE_MM);
    });
  });

  test('lines and print are large enough, inside the margins, and never upside down', () => {
    for (const page of pages) {
      for (const { width } of page.strokes) expect(width).toBeGreaterThanOrEqual(THINNEST_MM);
      for (const { size, turn } of page.texts) {
        expect(size).toBeGreaterThanOrEqual(SMALLEST_PT - 1e-6);
        expect(Math.cos(turn)).toBeGreaterThan(-1e-6);
      }
      const drawn = [
        ...page.strokes.flatMap((stroke) => stroke.points),
        ...page.fills.flat(),
        ...page.texts.map((text) => text.at),
      ];
      for (const { x, y } of drawn) {
        expect(x).toBeGreaterThanOrEqual(EDGE_MARGIN_MM - FOLLOWED_MM);
        expect(x).toBeLessThanOrEqual(page.width - EDGE_MARGIN_MM + FOLLOWED_MM);
        expect(y).toBeGreaterThanOrEqual(EDGE_MARGIN_MM - FOLLOWED_MM);
        expect(y).toBeLessThanOrEqual(page.height - BOTTOM_MARGIN_MM + FOLLOWED_MM);
      }
    }
  });
});

/** Points along a piece's seam and cut line on its page, those outside a tile's window left out; mirrored too where whole. */
function edgesOn(draft: Draft, { piece: index, whole, move, window }: Placed): readonly Point[] {
  const piece = draft.pieces[index] ?? expect.fail('no such piece');
  const points = [...piece.edges.map((edge) => edge.path), piece.cutLine].flatMap(close);
  const both = whole ? [...points, ...points.map(({ x, y }) => ({ x: -x, y }))] : points;
  const inside = ({ x, y }: Point): boolean =>
    !window || (x >= window.x && x <= window.x + window.width && y >= window.y && y <= window.y + window.height);
  return both.map(moved(move)).filter(inside);
}

/** Points along a path no farther apart than its chords at 0.002 mm, and their middles. */
function close(path: Path): readonly Point[] {
  const points = flatten(path, 0.002);
  return points.flatMap((p, i) => {
    const next = points[i + 1];
    return next ? [p, { x: (p.x + next.x) / 2, y: (p.y + next.y) / 2 }] : [p];
  });
}

test('the measure of edges rejects a piece moved by a twentieth of a millimetre', async () => {
  const draft = handMade(1);
  const layout = laid(draft, 'a3');
  const { pages } = await printed(draft, layout);
  const placed = layout.pages[0]?.placed[0] ?? expect.fail('something is placed');
  const lines = (pages[0]?.strokes ?? []).map((stroke) => stroke.points);
  const off = { ...placed, move: { ...placed.move, x: placed.move.x + 0.05 } };
  expect(farthest(edgesOn(draft, placed), lines)).toBeLessThanOrEqual(TRUE_MM);
  expect(farthest(edgesOn(draft, off), lines)).toBeGreaterThan(TRUE_MM);
});

describe('a printer that is off', () => {
  // 50 mm came out 48.5: a Letter page fitted on A4.
  const correction = 50 / 48.5;
  const draft = handMade(1);

  test('is corrected: drawn larger by as much, on the same paper', async () => {
    const layout = laid(draft, 'a4', { correction });
    const { pages } = await printed(draft, layout);
    for (const page of pages) {
      expect(page.width).toBeCloseTo(210, 3);
      expect(page.height).toBeCloseTo(297, 3);
      expect(Math.abs((measured(page, '50 mm')[0] ?? 0) - 50 * correction)).toBeLessThanOrEqual(TRUE_MM);
    }
  });

  test('that enlarges loses its edges, and nothing lies there', async () => {
    const layout = laid(draft, 'a4', { correction: 0.92 });
    const { pages } = await printed(draft, layout);
    const lost = ((1 - 0.92) * 210) / 2;
    for (const page of pages) {
      for (const { x } of page.strokes.flatMap((stroke) => stroke.points)) {
        expect(x).toBeGreaterThanOrEqual(lost + EDGE_MARGIN_MM * 0.92 - 0.01);
        expect(x).toBeLessThanOrEqual(210 - lost - EDGE_MARGIN_MM * 0.92 + 0.01);
      }
    }
  });
});
