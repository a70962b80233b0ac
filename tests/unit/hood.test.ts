import { expect, test } from 'vitest';
import type { Card } from '../../app/body';
import { edgeNamed, made } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

/** On a neck this much thinner a strip of the usual width leaves the crown standing up. */
const THINNER = 0.75;

const doll = builds.map((build) => buildCard(build)).find(({ toy }) => toy.name === 'doll');

function thinNecked(card: Card): Card {
  const neck = card.readings['neck-girth']?.[0] ?? Number.NaN;
  return { ...card, readings: { ...card.readings, 'neck-girth': [neck * THINNER] } };
}

test('over a head far larger than its neck the strip of a hood widens until its crown lies on the head, and that is said', () => {
  const drafts = [doll, doll && thinNecked(doll)].map((card) =>
    card ? made(card, 'hooded-top', { choices: { hood: 'three' } }) : null,
  );
  const [usual, wide] = drafts.map((draft) => ({
    face: draft && edgeNamed(draft, 'strip', 'face')?.length,
    said: draft?.adjustments.find(({ code }) => code === 'strip-widened')?.by,
    crown: (draft && edgeNamed(draft, 'strip', 'centre')?.length) ?? Number.NaN,
  }));
  expect(usual?.said).toBeUndefined();
  // What is said is what was done: the strip's face edge is half its width.
  expect(wide?.said).toBeCloseTo(2 * ((wide?.face ?? 0) - (usual?.face ?? 0)), 3);
  expect(wide?.said).toBeGreaterThan(0.5);
  const arc = doll?.readings['crown-arc']?.[0] ?? Number.NaN;
  for (const each of [usual, wide]) {
    expect((each?.crown ?? 0) / arc).toBeGreaterThan(1);
    expect((each?.crown ?? 0) / arc).toBeLessThan(1.051);
  }
});
