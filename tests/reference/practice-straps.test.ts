import { expect, test } from 'vitest';
import { lengthNamed, made, reading } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

/** Enough of a strap for two rows of stitches across (common practice, no source). */
const STITCHED_DOWN_MM = 10;

const cards = builds.map((build) => [build.name, buildCard(build)] as const);

function strap(card: (typeof cards)[number][1], bodice: string, straps: string): number {
  const draft = made(card, 'dress', { choices: { bodice, straps } });
  if (!draft) throw new Error('no draft');
  return lengthNamed(draft, 'strap', 'side');
}

test.each(cards)('%s: a strap is as long as the way measured and what is stitched down at both ends', (_, card) => {
  const way = reading(card, 'strap-length');
  expect(strap(card, 'band', 'straight')).toBeCloseTo(way + 2 * STITCHED_DOWN_MM, 3);
  expect(strap(card, 'band', 'crossed')).toBeGreaterThan(way + 2 * STITCHED_DOWN_MM);
});

test.each(cards)('%s: two halter straps and what they stand on go round the neck', (_, card) => {
  const draft = made(card, 'dress', { choices: { bodice: 'halter' } });
  if (!draft) throw new Error('no draft');
  const round = 2 * strap(card, 'halter', 'neck') + lengthNamed(draft, 'strap', 'top');
  expect(round).toBeGreaterThan(reading(card, 'neck-girth') + 2 * STITCHED_DOWN_MM);
});
