import { expect, test } from 'vitest';
import type { Draft } from '../../app/drafting/draft-types';
import { guideOf } from '../../app/drafting/guide';
import { made } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

const cards = builds.map((build) => buildCard(build));
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
