import { expect, test } from 'vitest';
import type { Card } from '../../app/body';
import type { Draft } from '../../app/drafting/draft-types';
import { flatten, lerp } from '../../app/drafting/geometry';
import { guideOf, placeNames } from '../../app/drafting/guide';
import { made } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

const cards = builds.map((build) => buildCard(build));
const drafted = (id: string, card: Card): Draft => {
  const draft = made(card, id);
  if (!draft) throw new Error(`no ${id}`);
  return draft;
};

test.each(['hooded-top', 'dress', 'tank', 'nightshirt', 'trousers', 'dungarees', 'hat'])(
  'no piece’s name lies under a number, and no number on another, in the pictures of %s',
  (id) => {
    const [letters, ring] = [14, 9];
    for (const card of cards)
      for (const { id: step, scene } of guideOf(drafted(id, card)).steps) {
        const px = Math.max(scene.width / 294, scene.height / 174);
        const [x, y] = [(330 * px - scene.width) / 2, (210 * px - scene.height) / 2];
        const widthOf = ({ piece }: { readonly piece: string }) => piece.length * 0.58 * letters * px;
        const edge = { left: -x, right: scene.width + x, top: -y, bottom: scene.height + y };
        const names = placeNames(scene, { widthOf, letters: letters * px, smallest: 0.7, ring: ring * px, edge });
        const under = scene.parts.filter((part, index) => {
          const { at, share } = names[index] ?? { at: { x: 0, y: 0 }, share: 0 };
          return scene.meets.some(({ at: number }) => {
            const [away, down] = [Math.abs(number.x - at.x), Math.abs(number.y - at.y)];
            const beside = Math.hypot(
              Math.max(0, away - (widthOf(part) * share) / 2),
              Math.max(0, down - (letters * px * share) / 2),
            );
            return beside < 0.9 * ring * px;
          });
        });
        expect(under.map(({ piece }) => `${step}: ${piece}`)).toEqual([]);
        const over = scene.meets.filter(({ at: one }, index) =>
          scene.meets
            .slice(index + 1)
            .some(({ at: two }) => Math.hypot(one.x - two.x, one.y - two.y) < 1.5 * ring * px),
        );
        expect(over.map(({ number }) => `${step}: ${number}`)).toEqual([]);
      }
  },
);

test.each(['cape', 'hooded-top', 'tank'])(
  'nothing that ties numbers or pieces runs through a name in the pictures of %s',
  (id) => {
    const [across, high, letters] = [360, 210, 14];
    for (const card of cards)
      for (const { id: step, scene } of guideOf(drafted(id, card)).steps) {
        const px = Math.max(scene.width / (across - 36), scene.height / (high - 36));
        const [x, y] = [(across * px - scene.width) / 2, (high * px - scene.height) / 2];
        const widthOf = ({ piece }: { readonly piece: string }) => (piece.length + 5) * 0.58 * letters * px;
        const edge = { left: -x, right: scene.width + x, top: -y, bottom: scene.height + y };
        const names = placeNames(scene, { widthOf, letters: letters * px, smallest: 0.7, ring: 9 * px, edge });
        const lines = [...scene.ties, ...scene.threads.map(({ path }) => path)].map((path) => flatten(path, 0.1));
        const struck = scene.parts.filter((part, index) => {
          const { at, share } = names[index] ?? { at: { x: 0, y: 0 }, share: 0 };
          const [half, tall] = [(widthOf(part) * share) / 2, 0.4 * letters * px * share];
          return lines.some(([from, to]) =>
            Array.from({ length: 101 }, (_, n) => lerp(from ?? at, to ?? at, n / 100)).some(
              (p) => from && Math.abs(p.x - at.x) < half && Math.abs(p.y - at.y) < tall,
            ),
          );
        });
        expect(struck.map(({ piece }) => `${step}: ${piece}`)).toEqual([]);
      }
  },
);
