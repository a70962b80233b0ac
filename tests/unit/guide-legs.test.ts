import { expect, test } from 'vitest';
import type { Draft } from '../../app/drafting/draft-types';
import { guideOf, sewsNothing } from '../../app/drafting/guide';
import { made } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

/** A bear, and one that is nothing like it. */
const cards = builds.slice(0, 2).map((build) => buildCard(build));
const drafted = (id: string, choices: Record<string, string>, build = 1): Draft => {
  const card = cards[build] ?? expect.fail(`no build ${build}`);
  return made(card, id, { choices }) ?? expect.fail(`no ${id}`);
};

test.each([
  ['trousers', 'inseam'],
  ['pants', 'pants-side'],
] as const)('%s are tried on at the last seam that makes them go round, not at the diamond between', (id, at) => {
  for (const build of cards.keys()) {
    const { steps } = guideOf(drafted(id, {}, build));
    const tried = steps.filter(({ notes }) => notes.some(({ code }) => code === 'try-closing'));
    expect(tried.flatMap(({ seams }) => seams.map(({ name }) => name))).toContain(at);
  }
});

test('a tube round both legs has one hem, told once, and the elastic that its casing asks for', () => {
  const hemOf = (hem: string) => {
    const draft = drafted('trousers', { legs: 'tube', hem });
    const step = guideOf(draft).steps.find(({ id }) => id === 'hem') ?? expect.fail('no hem');
    expect(step.notes.map(({ code }) => code)).not.toContain('other-side');
    return { draft, step };
  };
  expect(hemOf('turned').draft.notions.filter(({ place }) => place === 'hem')).toEqual([]);
  const { draft, step } = hemOf('casing');
  expect(step.kind).toBe('casing');
  expect(draft.notions.filter(({ place }) => place === 'hem').map(({ kind }) => kind)).toEqual(['elastic']);
});

test('what ends in a point at its fold, and a pair of socks, are sewn twice; the halves of a sock are no bag', () => {
  const guides = new Map(
    ['trousers', 'socks', 'wrist-warmers', 'hat', 'skirt'].map((id) => [id, guideOf(drafted(id, {}, 0)).steps]),
  );
  const all = (id: string, seam: string) =>
    (guides.get(id) ?? [])
      .filter(({ seams }) => seams.some(({ name }) => name === seam))
      .map(({ kind, notes }) => ({ kind, codes: notes.map(({ code }) => code) }));
  for (const [id, seam] of [
    ['trousers', 'gusset-front'],
    ['trousers', 'gusset-back'],
    ['socks', 'sock-top'],
    ['socks', 'sock-round'],
    ['wrist-warmers', 'wrist-warmer-top'],
    ['hat', 'gore-front'],
  ] as const) {
    const told = all(id, seam);
    expect(told, `${id} ${seam}`).not.toEqual([]);
    for (const { codes, kind } of told) {
      expect(codes, `${id} ${seam}`).toContain('other-side');
      expect(kind).not.toBe('bag');
    }
  }
  for (const { codes } of all('socks', 'sock-front')) expect(codes).not.toContain('trim');
  for (const { codes } of all('skirt', 'skirt-hem')) expect(codes).not.toContain('other-side');
});

test('the pillow is begun when its bag is done, filled before it is closed, and what fills it is listed', () => {
  const draft = drafted('sleeping-bag', {});
  const { steps } = guideOf(draft);
  const at = (id: string) => steps.findIndex(({ seams }) => seams.some(({ name }) => name === id));
  expect(at('pillow-top')).toBe(at('bag-round') + 1);
  expect(at('pillow-gap')).toBe(at('pillow-top') + 1);
  expect(steps[at('pillow-gap')]?.notes.map(({ code }) => code)).toContain('fill');
  expect(draft.notions.filter(({ kind }) => kind === 'filling').map(({ place }) => place)).toEqual(['pillow']);
});

test.each([
  ['vest', 'felt', {}, true],
  ['scarf', 'polar-fleece', { hem: 'raw' }, true],
  ['scarf', 'linen', { hem: 'raw' }, false],
  ['scarf', 'polar-fleece', { hem: 'turned' }, false],
] as const)('%s of %s %o: nothing is sewn, neither thread nor machine asked for: %s', (id, cloth, choices, cut) => {
  const card = cards[1] ?? expect.fail('no toy');
  const draft = made(card, id, { cloth, choices }) ?? expect.fail(`no ${id}`);
  expect(sewsNothing(guideOf(draft))).toBe(cut);
  expect(draft.notions.some(({ kind }) => kind === 'thread')).toBe(!cut);
});

test('a tail left inside is said', () => {
  const [build] = builds;
  for (const id of ['trousers', 'pants'])
    for (const tail of [true, false]) {
      const card = buildCard(build ?? expect.fail('no build'), { tail });
      const { flags } = made(card, id, { choices: { tail: 'covered' } }) ?? expect.fail(`no ${id}`);
      expect(flags.some(({ code }) => code === 'tail-inside')).toBe(tail);
    }
});
