import { beforeAll, expect, test } from 'vitest';
import type { Say } from '../../app/body';
import { flatten, fromSvg, pathBounds } from '../../app/drafting/geometry';
import { type Ink, toSvg } from '../../app/drafting/output';
import { widthOf } from '../../app/drafting/output/svg';
import { outlineOf } from '../../app/drafting/pieces/outline';
import { createSay } from '../../app/words';
import { demoDrafts } from '../toys/demo-drafts';
import { handMade, oblong } from '../toys/drafts';
import { wordsOver } from './words-over';

let say: Say;
beforeAll(async () => {
  say = await createSay('en');
});

const layer = (svg: string, id: string): string => new RegExp(`<g id="${id}"[^>]*>([^]*?)</g>`).exec(svg)?.[1] ?? '';

/** Strokes and words of a drawing, read back. */
function inkOf(svg: string): readonly Ink[] {
  const strokes = [...svg.matchAll(/<path d="([^"]+)" stroke-width/g)].map(
    ([, d = '']): Ink => ({ kind: 'stroke', layer: 'cut', pen: 'cut', path: fromSvg(d), closed: false }),
  );
  const words = [...svg.matchAll(TEXT)].map(
    ([, x, y, degrees = 0, size, bold, text = '']): Ink => ({
      kind: 'words',
      layer: 'words',
      at: { x: Number(x), y: Number(y) },
      turn: (Number(degrees) * Math.PI) / 180,
      size: Number(size) / MM_PER_PT,
      bold: bold !== undefined,
      text,
    }),
  );
  return [...strokes, ...words];
}
const MM_PER_PT = 25.4 / 72;
const TEXT =
  /<text x="([-\d.]+)" y="([-\d.]+)"(?: transform="rotate\(([-\d.]+)[^"]*")? font-family="[^"]*" font-size="([\d.]+)"( font-weight="bold")?[^>]*>([^<]*)</g;

const paths = (text: string): readonly string[] => [...text.matchAll(/ d="([^"]+)"/g)].map((found) => found[1] ?? '');

test('one unit is one millimetre', () => {
  const svg = toSvg(handMade(1), say);
  const [, width, height, box] =
    /<svg [^>]*width="([\d.]+)mm" height="([\d.]+)mm" viewBox="0 0 ([\d. ]+)"/.exec(svg) ?? [];
  expect(`${width} ${height}`).toBe(box);
  expect(svg).not.toContain('scale(');
});

test('a layer each for cut lines, seam lines, marks and words', () => {
  const svg = toSvg(handMade(1), say);
  for (const id of ['cut', 'seam', 'marks']) expect(paths(layer(svg, id)).length).toBeGreaterThan(5);
  expect(layer(svg, 'words')).toContain('>Slit facing</text>');
  expect(svg.match(/<g /g)).toHaveLength(4);
});

test('an oblong is cut exactly as large as drafted', () => {
  const [d = ''] = paths(layer(toSvg(handMade(1, { pieces: [oblong('front', 123.4, 56.7)] }), say), 'cut'));
  const box = pathBounds(fromSvg(d));
  expect(box.right - box.left).toBeCloseTo(123.4, 6);
  expect(box.bottom - box.top).toBeCloseTo(56.7, 6);
});

test('pieces lie apart, unfolded, inside the drawing', () => {
  for (const draft of [handMade(0.5), ...demoDrafts()]) {
    const svg = toSvg(draft, say);
    const [, width = '', height = ''] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
    const points = paths(layer(svg, 'cut')).flatMap((d) => flatten(fromSvg(d), 0.1));
    expect(Math.min(...points.map((p) => p.x))).toBeGreaterThan(5);
    expect(Math.max(...points.map((p) => p.x))).toBeLessThan(Number(width));
    expect(Math.max(...points.map((p) => p.y))).toBeLessThan(Number(height));
    const folded = draft.pieces.filter((piece) => piece.onFold);
    for (const piece of folded) {
      const whole = outlineOf(piece.cutLine, true).map((p) => p.x);
      expect(Math.min(...whole)).toBeCloseTo(-Math.max(...whole), 6);
    }
  }
});

test('labels lie within their piece or beside it, never over a line, whatever size it is', async () => {
  const german = await createSay('de');
  for (let width = 30; width <= 110; width += 20)
    for (let height = 30; height <= 110; height += 20) {
      const pieces = [oblong('front', width, height), oblong('back', height, width)];
      const svg = toSvg(handMade(1, { pieces }), german);
      expect(svg.match(/<text/g)?.length ?? 0).toBeGreaterThanOrEqual(8);
      expect(wordsOver(inkOf(svg), widthOf), `${width} × ${height}`).toEqual([]);
    }
});

test('a name cannot break out of its text', () => {
  const svg = toSvg({ ...handMade(1), toy: `</text><script>"&'\u0000` }, say);
  expect(svg).not.toContain('<script');
  expect(svg).toContain('&lt;/text&gt;&lt;script&gt;&quot;&amp;&apos;’s ');
});
