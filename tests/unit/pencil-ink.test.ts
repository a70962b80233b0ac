import { expect, test } from 'vitest';
import type { Words } from '../../app/drafting/output';
import { pencilInk } from '../../app/drafting/output/pencil-ink';
import { pencilPlan } from '../../app/drafting/pencil';
import { createSay } from '../../app/words';
import { demoDrafts } from '../toys/demo-drafts';

test.each(['ltr', 'rtl'] as const)('where lines run %s, so do the rows of the pencil plan', async (direction) => {
  const [draft] = demoDrafts();
  const [plan] = draft ? pencilPlan(draft, 'cm') : [];
  if (!draft || !plan) throw new RangeError('no demo toy');
  const widthOf = Object.assign((text: string, size: number) => text.length * size * 0.18, { direction });
  const page = { width: 210, height: 297 };
  const [ink = []] = pencilInk(draft, plan, page, { say: await createSay('en'), units: 'cm', widthOf });
  const words = ink.filter((each): each is Words => each.kind === 'words');
  const numbers = words.filter(({ text, bold, turn }) => bold && turn === 0 && /^\d+$/.test(text));
  const ends = ({ at, text, size }: Words) => at.x + widthOf(text, size);
  const nearest = numbers.flatMap((number) => {
    const row = words.filter(({ at, bold, turn }) => !bold && turn === 0 && at.y === number.at.y);
    return row
      .map((each) => ends(each) - ends(number))
      .sort((a, b) => Math.abs(a) - Math.abs(b))
      .slice(0, 1);
  });
  expect(nearest.length).toBeGreaterThan(20);
  expect(nearest.filter((away) => (direction === 'ltr' ? away < 0 : away > 0))).toEqual([]);
  for (const { at, text, size } of words) {
    expect(at.x).toBeGreaterThan(0);
    expect(at.x + widthOf(text, size)).toBeLessThan(page.width);
  }
});
