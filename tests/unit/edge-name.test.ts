import { expect, test } from 'vitest';
import { edgeName } from '../../app/drafting/pieces/edge-name';
import { made } from '../measured/made';
import { buildCard, builds } from '../toys/builds';
import { demoDrafts } from '../toys/demo-drafts';

test.each([
  ['apron', ['apron:bottom'], ['apron-pocket:top', 'apron:bib-side', 'apron:side', 'apron:top']],
  ['skirt', ['skirt-back:bottom', 'skirt-front:bottom'], []],
  ['scarf', [], ['scarf:bottom', 'scarf:side', 'scarf:top']],
] as const)('%s: its lower end alone is the hem, all else that is turned says so', (garment, hems, others) => {
  const [draft] = demoDrafts('quilting-cotton', garment);
  const called = (name: string) => [
    ...new Set(
      draft?.pieces.flatMap((piece) =>
        piece.edges.filter((edge) => edgeName(edge, piece) === name).map((edge) => `${piece.name}:${edge.name}`),
      ),
    ),
  ];
  expect(called('hem').sort()).toEqual(hems);
  expect(called('turned').sort()).toEqual(others);
});

test('on what goes round a toy in one piece, front and back are told apart by words, and by notches: two marks behind', () => {
  for (const id of ['trousers', 'pants']) {
    for (const build of builds.slice(0, 2)) {
      const { pieces } = made(buildCard(build), id) ?? expect.fail(`no ${id}`);
      const [whole] = pieces;
      const words = whole?.edges.map((edge) => edgeName(edge, whole)) ?? [];
      for (const side of ['front', 'back']) expect(words.filter((word) => word?.startsWith(side))).not.toEqual([]);
      const behind = (name: string) => /^back-(crotch|above|gusset|waist)/.test(name);
      for (const { edge, ticks } of whole?.notches ?? []) expect(ticks, edge).toBe(behind(edge) ? 2 : 1);
    }
  }
});
