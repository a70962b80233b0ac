import { expect, test } from 'vitest';
import type { Words } from '../../app/drafting/output';
import { drawingInk, pencilInk } from '../../app/drafting/output/pencil-ink';
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

test('a number in the drawing lies nearest to its own point, all but a few where points are crowded', async () => {
  const direction = 'ltr' as const;
  const widthOf = Object.assign((text: string, size: number) => text.length * size * 0.18, { direction });
  const lettering = { say: await createSay('en'), units: 'cm' as const, widthOf };
  const nearest = demoDrafts()
    .slice(0, 4)
    .flatMap((draft) =>
      pencilPlan(draft, 'cm').flatMap((plan) => {
        const piece = draft.pieces[plan.piece];
        if (!piece) throw new RangeError('no piece');
        const { ink } = drawingInk(piece, plan, { x: 14, y: 50, width: 95, height: 134 }, lettering);
        const dots = ink.flatMap((each) =>
          each.kind === 'stroke' && each.pen === 'dot' ? (each.path[0]?.from ?? []) : [],
        );
        const numbers = ink.filter((each): each is Words => each.kind === 'words' && each.bold);
        expect(dots).toHaveLength(numbers.length);
        return numbers.map(({ text, at, size }) => {
          const middle = { x: at.x + widthOf(text, size) / 2, y: at.y - size * 0.127 };
          const far = dots.map(({ x, y }) => Math.hypot(x - middle.x, y - middle.y));
          return (far[Number(text) - 1] ?? Infinity) < Math.min(...far) + 0.01;
        });
      }),
    );
  expect(nearest.length).toBeGreaterThan(100);
  expect(nearest.filter((isOwn) => !isOwn).length / nearest.length).toBeLessThan(0.02);
});
