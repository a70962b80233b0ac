import { expect, test } from 'vitest';
import { made, pieceNamed } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

const dresses = builds.flatMap((build) => made(buildCard(build), 'tube-dress') ?? []);

test('the strip round an armhole runs on at both ends as deep as the casing, and is turned down with it', () => {
  expect(dresses.length).toBeGreaterThan(2);
  for (const draft of dresses) {
    const [front, strip] = ['dress-front', 'armhole-binding'].map((name) => pieceNamed(draft, name));
    const top = front?.edges.find(({ name }) => name === 'top');
    const ends = strip?.edges.filter(({ role }) => role === 'casing') ?? [];
    expect(top?.allowance).toBeGreaterThan(0);
    expect(ends.map(({ allowance }) => allowance)).toEqual(ends.map(() => top?.allowance));
    expect(ends.length).toBeGreaterThan(0);
    // Turned down with the casing, its end has no other finish.
    const sewnTo = (edge: string) =>
      draft.seams.filter(({ first }) => first.some((ref) => ref.piece === 'armhole-binding' && ref.edge === edge));
    for (const { name } of ends)
      expect(sewnTo(name).map((seam) => seam.name)).toEqual(['dress-front-casing', 'dress-back-casing']);
  }
});

test('a casing is turned when its armholes are bound, and the armhole’s strip covers it from casing to casing', () => {
  for (const draft of dresses) {
    const step = (seam: string) => draft.sewing.findIndex(({ seams }) => seams.includes(seam));
    for (const casing of ['dress-front-casing', 'dress-back-casing'])
      expect(step('armhole-binding-inside')).toBeLessThan(step(casing));
    const armholes = ['dress-front', 'dress-back'].map(
      (name) => pieceNamed(draft, name)?.edges.find((edge) => edge.name === 'armhole')?.length ?? 0,
    );
    const bound = draft.seams.find(({ name }) => name === 'armhole-binding-edge');
    // Stretched a little along a hollow edge.
    const stretched = armholes.reduce((sum, length) => sum + length, 0) / (bound?.firstLength ?? 0);
    expect(stretched).toBeGreaterThanOrEqual(1);
    expect(stretched).toBeLessThan(1.04);
  }
});
