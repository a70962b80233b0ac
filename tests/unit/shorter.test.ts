import { expect, test } from 'vitest';
import { distance, end, pathLength, start } from '../../app/drafting/geometry';
import { lengthNamed, made, pieceNamed } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

const cards = builds.map((build) => buildCard(build));

test.each([
  ['tee', { sleeve: 'long', shorterSleeve: 12 }, 'sleeve', 'cuff', 'front-underarm'],
  ['trousers', { shorterLeg: 12 }, 'leg', 'hem', 'front-inseam'],
] as const)('a line on the %s tells where the shorter side ends, square across', (id, choices, name, edge, beside) => {
  for (const card of cards) {
    const draft = made(card, id, { choices });
    const piece = draft && pieceNamed(draft, name);
    const line = piece?.lines.find((each) => each.name === 'shorter-end')?.path;
    const finished = piece?.edges.find((each) => each.name === edge)?.path;
    if (!draft || !line || !finished) throw new Error(`${card.toy.name} has no line`);
    const by = Math.min(12, 0.6 * lengthNamed(draft, name, beside));
    const gaps = [distance(start(line), start(finished)), distance(end(line), end(finished))];
    for (const gap of gaps) expect(gap).toBeCloseTo(by, 1);
    // A sleeve narrows towards its end, a leg hardly widens: the shorter one passes what the longer one passes.
    expect(pathLength(line)).toBeGreaterThan(0.9 * lengthNamed(draft, name, edge));
    expect(draft.adjustments.find(({ code }) => code === `${name}-one-shorter`)?.by).toBeCloseTo(by, 6);
  }
});

test('what does not end in a hem does not end sooner', () => {
  const [card] = cards;
  const draft = card && made(card, 'tee', { choices: { sleeve: 'long', wrist: 'elastic', shorterSleeve: 12 } });
  expect(draft?.pieces.flatMap(({ lines }) => lines.map(({ name }) => name))).not.toContain('shorter-end');
  expect(draft?.adjustments.map(({ code }) => code)).not.toContain('sleeve-one-shorter');
});
