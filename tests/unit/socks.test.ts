import { expect, test } from 'vitest';
import { type Body, usualTraits } from '../../app/body';
import { draft, fullOrder } from '../../app/drafting/draft';
import { distance, flatten, type Point, point } from '../../app/drafting/geometry';
import { bodyFrom } from '../../app/measuring';
import { buildCard, builds } from '../toys/builds';

/** Curves are followed so closely, mm. */
const FLAT_MM = 0.05;

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

const tube = { heel: 'tube' };

test.each(toys)(
  '%s: a heel as far from the instep as half of what goes round, and a level sole of the foot’s length',
  (_, body) => {
    const [girth, long] = [of(body, 'foot-girth'), of(body, 'foot-length')];
    for (const cloth of ['jersey', 'quilting-cotton']) {
      const { pieces, fit } = made(body, { cloth });
      const sock = pieces.find(({ name }) => name === 'sock');
      if (!sock) throw new RangeError('no sock');
      expect(sock.copies).toBe(4);
      const along = (name: string) => flatten(sock.edges.find((edge) => edge.name === name)?.path ?? [], FLAT_MM);
      const [front, round] = [along('front'), along('round')];
      const [back, low] = [Math.min(...round.map(({ x }) => x)), Math.max(...round.map(({ y }) => y))];
      const least = (from: Point, path: readonly Point[]) => Math.min(...path.map((to) => distance(from, to)));
      // From the middle of the rounded heel to the front, nowhere less than half of what goes round both.
      const corner = point(back, low);
      const heel = round.reduce((best, at) => (distance(at, corner) < distance(best, corner) ? at : best));
      const foot = fit.find(({ place }) => place === 'sock-foot')?.garment ?? 0;
      expect(2 * least(heel, front)).toBeGreaterThan(foot - 0.5);
      expect(2 * least(heel, front)).toBeLessThan(foot * 1.1);
      const tip = Math.max(...front.map(({ x }) => x));
      // The foot's outline, as wide as a leg that goes 3.5 times into the way round heel and instep.
      expect(tip - back).toBeGreaterThan(long + (Math.PI / 2 - 1) * (girth / 3.5));
    }
  },
);

test.each(toys)(
  '%s: a tube as long down the front, round the toes and up behind as the foot and its leg',
  (_, body) => {
    const [girth, long] = [of(body, 'foot-girth'), of(body, 'foot-length')];
    const round = 2 * (0.3 * girth + long) - girth / 3.5;
    const low = made(body, { choices: tube });
    const around = low.length('centre') + low.length('round');
    // On the smallest foot the hem asks for a little more.
    expect(around).toBeGreaterThan(round - 0.1);
    expect(around).toBeLessThan(round + 2.5);
    const high = made(body, { choices: { ...tube, sock: 'high' } });
    const longer = high.length('centre') + high.length('round') - around;
    // A leg that widens upward makes the seam a little longer than the fold.
    expect(longer).toBeGreaterThan(of(body, 'inside-leg-length') - 3);
    expect(longer).toBeLessThan(of(body, 'inside-leg-length') * 1.1);
  },
);

test.each(toys)('%s: a knit sits by its stretch, other cloth has ease; either lets the foot in', (_, body) => {
  const girth = of(body, 'foot-girth');
  for (const [cloth, least, most] of [
    ['jersey', 0.92, 1],
    ['quilting-cotton', 1.05, 1.3],
  ] as const) {
    const { length, openings, flags, fit } = made(body, { cloth });
    const foot = fit.find(({ place }) => place === 'sock-foot')?.garment ?? 0;
    expect(foot / girth).toBeGreaterThan(least);
    expect(foot / girth).toBeLessThan(most);
    // The ankle is slimmer than heel and instep; a foot passes through it.
    expect(2 * length('top')).toBeLessThan(foot + 0.01);
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

test.each(['shaped', 'tube'])('%s: a rib goes round the whole top, and a tube is shorter by it', (heel) => {
  const [, bear] = toys[0] ?? [];
  if (!bear) throw new RangeError('no bear');
  const [plain, ribbed] = [made(bear, { choices: { heel } }), made(bear, { choices: { heel, hem: 'rib' } })];
  expect(ribbed.length('top', 'sock-rib')).toBeCloseTo(0.85 * ribbed.length('top'), 3);
  if (heel === 'tube')
    expect(plain.length('centre') - ribbed.length('centre')).toBeCloseTo(ribbed.length('side', 'sock-rib') / 2, 3);
});

test('a foot that does not stand out in front of its leg is given a tube, and that is said', () => {
  const [, bear] = toys[0] ?? [];
  if (!bear) throw new RangeError('no bear');
  const long = { value: of(bear, 'foot-girth') / 3.4, give: 0, from: 'tape' as const };
  const stub = { ...bear, sizes: { ...bear.sizes, 'foot-length': long } };
  const socks = made(stub, { choices: { heel: 'shaped' } });
  expect(socks.adjustments.map(({ code }) => code)).toContain('sock-tube');
  expect(socks.length('centre')).toBeGreaterThan(0);
  expect(made(bear).adjustments.map(({ code }) => code)).not.toContain('sock-tube');
});

test('legs that are sewn together end the socks above the feet, and that is said', () => {
  const [, bear] = toys[0] ?? [];
  if (!bear) throw new RangeError('no bear');
  const sewn = made({ ...bear, traits: { ...bear.traits, legs: 'sewn' } }, { choices: { sock: 'high' } });
  expect(sewn.length('round')).toBe(made(bear).length('round'));
  expect(sewn.flags.map(({ code }) => code)).toContain('feet-sewn');
  expect(sewn.adjustments.map(({ code }) => code)).toContain('sock-to-the-seam');
});
