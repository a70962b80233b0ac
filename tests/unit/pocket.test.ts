import { expect, test } from 'vitest';
import { pathBounds } from '../../app/drafting/geometry';
import { lineWordings } from '../../app/drafting/output/line-words';
import { pieceInk } from '../../app/drafting/output/piece-ink';
import { widthOf } from '../../app/drafting/output/svg';
import { createSay } from '../../app/words';
import { made, pieceNamed } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

const [bear] = builds;
if (!bear) throw new RangeError('no bear');

/** The bear made shorter, its slit as long as before: room for a pocket is left by as much less. */
const short = (length: number) =>
  made(buildCard({ ...bear, form: { ...bear.form, length } }), 'hooded-top', { choices: { opening: 'slit' } });

test('a pocket that would lie as a strip across a short front is left out, and that is said; one with room for it is kept', () => {
  const drafts = [150, 138].map(short);
  const kept = drafts.flatMap((draft) => (draft && pieceNamed(draft, 'pocket')) ?? []);
  for (const { seamLine } of kept) {
    const { top, bottom, right } = pathBounds(seamLine);
    expect((bottom - top) / right).toBeGreaterThanOrEqual(0.35);
  }
  const said = drafts.map((draft) => draft?.adjustments.some(({ code }) => code === 'pocket-left-out'));
  expect(said).toContain(true);
  expect(kept.length).toBe(said.filter((left) => left === false).length);
  expect(kept.length).toBeGreaterThan(0);
});

test('a pocket’s place is named once, however many lines draw it', async () => {
  const say = await createSay('en');
  const draft = made(buildCard(bear), 'hooded-top', { choices: { opening: 'slit' } });
  const front = draft && pieceNamed(draft, 'front');
  const wordings = lineWordings(front ?? { lines: [] }, say).filter(({ text }) => text === say('line.pocket-top'));
  expect(wordings.length).toBeGreaterThan(1);
  expect(new Set(wordings.map(({ shape }) => shape)).size).toBe(1);
  const ink = front && pieceInk({ piece: front, whole: false, nap: false, to: (p) => p }, say, widthOf);
  const texts = ink?.flatMap((each) => (each.kind === 'words' ? [each.text] : [])) ?? [];
  expect(texts.filter((text) => text === say('line.pocket-top'))).toHaveLength(1);
});
