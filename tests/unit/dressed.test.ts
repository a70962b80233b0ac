import { expect, it } from 'vitest';
import type { Body } from '../../app/body';
import { draft, fullOrder } from '../../app/drafting/draft';
import type { Draft } from '../../app/drafting/draft-types';
import { garments } from '../../app/drafting/garments';
import { dressed, type Side, sidesOf } from '../../app/dressed';
import { bodyFrom, demoCards } from '../../app/measuring';
import { buildCard, builds } from '../toys/builds';

const FRAME = { width: 200, height: 240 };
const bodies = builds.map((build) => bodyFrom(buildCard(build)));
const [bear, rabbit] = bodies as [Body, Body];

it('a bear, a rabbit and a doll are dressed in every garment they wear, front and back, inside the picture', () => {
  for (const { id, bodies: kinds } of garments) {
    if (!kinds.includes('upright')) continue;
    for (const body of bodies.slice(0, 3)) {
      const made = drafted(body, id);
      for (const side of ['front', 'back'] as const) {
        const worn = dressed(body, made, side, FRAME);
        const bare = dressed(body, null, side, FRAME);
        expect(worn.shapes.length, `${id}, ${side}`).toBeGreaterThan(bare.shapes.length - 6);
        expect(
          worn.shapes.some(({ look }) => look === 'cloth'),
          `${id}, ${side}`,
        ).toBe(true);
        const numbers = worn.shapes.flatMap(({ path }) => numbersOf(path));
        expect(numbers.every(isInside), `${id}, ${side}`).toBe(true);
      }
    }
  }
});

it('a dog wears both coats, and sleeves cover more of its legs', () => {
  const card = demoCards.find(({ toy }) => toy.body === 'four-legged');
  if (!card) throw new Error('no dog');
  const dog = bodyFrom(card);
  const cover = (id: string, choices: Draft['order']['choices']) =>
    dressed(dog, drafted(dog, id, choices), 'front', FRAME).shapes.filter(({ look }) => look === 'cloth').length;
  expect(cover('coat', {})).toBeGreaterThan(0);
  expect(cover('fitted-coat', {})).toBeGreaterThan(0);
  expect(cover('fitted-coat', { coatLegs: 'sleeves' })).toBe(cover('fitted-coat', {}) + 2);
});

it('a dog in a coat is shown from its side first, in a hood from there and in front; in a cape from its ends', () => {
  const card = demoCards.find(({ toy }) => toy.body === 'four-legged');
  if (!card) throw new Error('no dog');
  const dog = bodyFrom(card);
  const worn = (id: string, choices: Draft['order']['choices'], side: Side) =>
    dressed(dog, drafted(dog, id, choices), side, FRAME).shapes.filter(({ look }) => look === 'cloth').length;
  for (const id of ['coat', 'fitted-coat']) {
    expect(sidesOf(dog, drafted(dog, id))).toEqual(['side', 'front']);
    expect(worn(id, {}, 'side')).toBeGreaterThan(0);
  }
  for (const side of ['side', 'front'] as const)
    expect(worn('fitted-coat', { coatNeck: 'hood' }, side)).toBeGreaterThan(worn('fitted-coat', {}, side));
  const numbers = dressed(dog, drafted(dog, 'fitted-coat', { coatLegs: 'sleeves' }), 'side', FRAME).shapes;
  expect(numbers.flatMap(({ path }) => numbersOf(path)).every(isInside)).toBe(true);
  expect(sidesOf(dog, drafted(dog, 'cape'))).toEqual(['front', 'back']);
});

it('a bird wears its tunic in front and behind, its wings over it where they come through', () => {
  const card = demoCards.find(({ toy }) => toy.body === 'round');
  if (!card) throw new Error('no round toy');
  const bird = bodyFrom(card);
  for (const side of ['front', 'back'] as const) {
    const drawn = (choices: Draft['order']['choices']) =>
      dressed(bird, drafted(bird, 'tunic', choices), side, FRAME).shapes;
    expect(drawn({}).filter(({ look }) => look === 'cloth')).toHaveLength(1);
    expect(drawn({ wings: 'flat' })).toHaveLength(drawn({}).length + 2);
    expect(drawn({ tunicNeck: 'drawn' }).length).toBeGreaterThan(drawn({}).length);
    expect(
      drawn({})
        .flatMap(({ path }) => numbersOf(path))
        .every(isInside),
    ).toBe(true);
  }
});

it('is bare without a draft', () => {
  expect(dressed(bear, null, 'front').shapes.filter(({ look }) => look.startsWith('cloth'))).toEqual([]);
});

it('a skirt half as long ends higher, and leaves the toy as it is', () => {
  const shorter = withWish(rabbit, 'waist-to-hem', 0.5);
  const [long, short] = [rabbit, shorter].map((body) => dressed(body, drafted(body, 'skirt'), 'front', FRAME));
  expect(lowestOf(short, 'cloth')).toBeLessThan(lowestOf(long, 'cloth') - 15);
  expect(Math.abs(lowestOf(short, 'fur') - lowestOf(long, 'fur'))).toBeLessThan(5);
});

it('a short sleeve leaves more of the arm, a hood less of the head', () => {
  const cover = (id: string, choices: Draft['order']['choices']) =>
    reachOf(dressed(rabbit, drafted(rabbit, id, choices), 'front', FRAME), 'cloth');
  expect(cover('tee', { sleeve: 'short' }).right).toBeLessThan(cover('tee', { sleeve: 'long' }).right - 5);
  expect(cover('hooded-top', {}).top).toBeLessThan(cover('tee', {}).top - 20);
});

it('fullness and make show: each skirt is another drawing', () => {
  const drawn = ['gathered', 'knife', 'a-line', 'circle', 'tiers'].map((skirt) =>
    JSON.stringify(dressed(rabbit, drafted(rabbit, 'skirt', { skirt }), 'front').shapes),
  );
  expect(new Set(drawn).size).toBe(drawn.length);
});

function drafted(body: Body, garment: string, choices: Draft['order']['choices'] = {}): Draft {
  const full = fullOrder({ garment, choices }, '2026-11-20');
  if (!full.ok) throw new Error(full.fault.code);
  const outcome = draft(body, full.order, full.garment, 'x');
  if (!outcome.ok) throw new Error(outcome.flags.map(({ code }) => code).join());
  return outcome.draft;
}

function withWish(body: Body, id: 'waist-to-hem', by: number): Body {
  const known = body.sizes[id];
  if (!known) throw new Error(id);
  return { ...body, sizes: { ...body.sizes, [id]: { ...known, value: known.value * by } } };
}

type Worn = ReturnType<typeof dressed> | undefined;

const numbersOf = (path: string): number[] => (path.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);
const isInside = (number: number) => number >= -1 && number <= Math.max(FRAME.width, FRAME.height) + 1;
const lowestOf = (figure: Worn, look: string): number => Math.max(...heights(figure, look));
const heights = (figure: Worn, look: string): number[] =>
  shapesOf(figure, look).flatMap((path) => numbersOf(path).filter((_, index) => index % 2 === 1));
const shapesOf = (figure: Worn, look: string) =>
  figure?.shapes.filter((shape) => shape.look === look).map(({ path }) => path) ?? [];

function reachOf(figure: Worn, look: string): { right: number; top: number } {
  const across = shapesOf(figure, look).flatMap((path) => numbersOf(path).filter((_, index) => index % 2 === 0));
  return { right: Math.max(...across), top: Math.min(...heights(figure, look)) };
}
