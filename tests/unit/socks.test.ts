import { expect, test } from 'vitest';
import { type Body, usualTraits } from '../../app/body';
import { draft, fullOrder } from '../../app/drafting/draft';
import { bodyFrom } from '../../app/measuring';
import { buildCard, builds } from '../toys/builds';

const toys = builds.map((build) => [build.name, bodyFrom(buildCard(build))] as const);

function drafted(body: Body, order: object = {}) {
  const full = fullOrder({ garment: 'socks', cloth: 'jersey', ...order }, '2026-11-20');
  if (!full.ok) throw new RangeError(`${full.fault.code} ${full.fault.where}`);
  return draft(body, full.order, full.garment, 'x');
}

function made(body: Body, order: object = {}) {
  const outcome = drafted(body, order);
  if (!outcome.ok) throw new RangeError(outcome.flags.map(({ code }) => code).join());
  const length = (name: string, of = 'sock') =>
    outcome.draft.pieces.find((piece) => piece.name === of)?.edges.find((edge) => edge.name === name)?.length ?? 0;
  return { ...outcome.draft, length };
}

const of = (body: Body, id: 'foot-girth' | 'foot-length' | 'inside-leg-length') => body.sizes[id]?.value ?? 0;

test.each(toys)('%s: as long down the front, round the toes and up behind as the foot and its leg', (_, body) => {
  const [girth, long] = [of(body, 'foot-girth'), of(body, 'foot-length')];
  const round = 2 * (0.3 * girth + long) - girth / 3.5;
  const low = made(body);
  const around = low.length('centre') + low.length('round');
  // On the smallest foot the hem asks for a little more.
  expect(around).toBeGreaterThan(round - 0.1);
  expect(around).toBeLessThan(round + 2.5);
  const high = made(body, { choices: { sock: 'high' } });
  const longer = high.length('centre') + high.length('round') - around;
  // A leg that widens upward makes the seam a little longer than the fold.
  expect(longer).toBeGreaterThan(of(body, 'inside-leg-length') - 3);
  expect(longer).toBeLessThan(of(body, 'inside-leg-length') * 1.1);
});

test.each(toys)('%s: a knit sits by its stretch, other cloth has ease; either lets the foot in', (_, body) => {
  const girth = of(body, 'foot-girth');
  for (const [cloth, least, most] of [
    ['jersey', 0.92, 1],
    ['quilting-cotton', 1.05, 1.3],
  ] as const) {
    const { length, openings, flags } = made(body, { cloth });
    expect((2 * length('top')) / girth).toBeGreaterThan(least);
    expect((2 * length('top')) / girth).toBeLessThan(most);
    expect(openings.every(({ needs, gives }) => gives >= needs)).toBe(true);
    expect(flags.some(({ code }) => code === 'sock-not-knit')).toBe(cloth === 'quilting-cotton');
  }
});

test('a firm foot is given the room that stretch does not give', () => {
  const [, bear] = toys[0] ?? [];
  if (!bear) throw new RangeError('no bear');
  const firm = { ...bear, traits: { ...usualTraits, stuffing: 'firm' as const } };
  for (const cloth of ['jersey', 'polar-fleece', 'quilting-cotton'])
    expect(
      made(firm, { cloth }).openings.every(({ needs, gives }) => gives >= needs),
      cloth,
    ).toBe(true);
});

test('a rib goes round the whole top, and the sock is shorter by it', () => {
  const [, bear] = toys[0] ?? [];
  if (!bear) throw new RangeError('no bear');
  const [plain, ribbed] = [made(bear), made(bear, { choices: { hem: 'rib' } })];
  expect(ribbed.length('top', 'sock-rib')).toBeCloseTo(0.85 * ribbed.length('top'), 3);
  expect(plain.length('centre') - ribbed.length('centre')).toBeCloseTo(ribbed.length('side', 'sock-rib') / 2, 3);
});

test('legs that are sewn together end the socks above the feet, and that is said', () => {
  const [, bear] = toys[0] ?? [];
  if (!bear) throw new RangeError('no bear');
  const sewn = made({ ...bear, traits: { ...bear.traits, legs: 'sewn' } }, { choices: { sock: 'high' } });
  expect(sewn.length('round')).toBe(made(bear).length('round'));
  expect(sewn.flags.map(({ code }) => code)).toContain('feet-sewn');
  expect(sewn.adjustments.map(({ code }) => code)).toContain('sock-to-the-seam');
});
