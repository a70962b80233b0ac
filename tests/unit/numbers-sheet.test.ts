import { expect, test } from 'vitest';
import { toNumbersPdf } from '../../app/drafting/output';
import { asking, bodyFrom, demoCards, plan } from '../../app/measuring';
import { sheetOf } from '../../app/screens/steps/sheet-of';
import { createSay } from '../../app/words';
import en from '../../locales/en.json';
import { readPdf } from '../reference/pdf-reading';

/** Nothing is printed nearer to the edge of the paper than this, mm. */
const EDGE_MM = 10;
/** A line to write on is so long, mm, and words are no smaller than this, points. */
const prints = { usual: { line: 26, least: 7 }, large: { line: 50, least: 18 } } as const;

test.each(
  (['bramble', 'sorrel'] as const).flatMap((name) =>
    (['usual', 'large'] as const).map((print) => [name, print] as const),
  ),
)(
  'a sheet for %s in %s print has each number once, with a line to write on, and stays on its paper',
  async (name, print) => {
    const card = demoCards.find(({ toy }) => toy.name.toLowerCase() === name);
    if (!card) throw new Error('no such toy');
    const body = bodyFrom({ ...card, readings: {} });
    const needs = (['height', 'neck-girth', 'foot-girth', 'bib-length'] as const).map((measure) => ({ measure }));
    const { steps } = plan(asking(body, needs).asked, body);
    const say = await createSay('en');
    const sheet = sheetOf({ toy: card.toy, garment: { order: { garment: 'bib' } }, also: [], body, steps });
    const { pages } = await readPdf(toNumbersPdf(sheet, { say, units: 'cm', print, date: '2026-11-26' }));
    const texts = pages.flatMap((page) => page.texts.map(({ text }) => text));
    const written = texts.join(' ').replace(/\s+/g, ' ');
    steps.forEach(({ measure }, index) => {
      const title = `${index + 1}. ${en.measure[measure].name}`;
      expect(written.split(title).length - 1, title).toBe(1);
    });
    const lines = pages.flatMap(({ strokes }) =>
      strokes.filter(
        ({ points: [a, b], points }) =>
          points.length === 2 && a && b && a.y === b.y && Math.abs(b.x - a.x - prints[print].line) < 0.1,
      ),
    );
    expect(lines.length).toBe(steps.length);
    expect(pages.flatMap((page) => page.texts).filter(({ size }) => size < prints[print].least)).toEqual([]);
    for (const { width, height, strokes } of pages)
      for (const { x, y } of strokes.flatMap(({ points }) => points))
        expect(x > EDGE_MM && y > EDGE_MM && x < width - EDGE_MM && y < height - EDGE_MM).toBe(true);
  },
);
