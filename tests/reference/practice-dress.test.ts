import { describe, expect, test } from 'vitest';
import { type Card, type MeasureId, MM_PER_INCH } from '../../app/body';
import { draft, fullOrder } from '../../app/drafting/draft';
import type { Draft } from '../../app/drafting/draft-types';
import { pathBounds } from '../../app/drafting/geometry';
import { bodyFrom } from '../../app/measuring';

/**
 * One practised way of drafting a dress by hand, in inches (common practice, no source): each size must come within 1/16 in
 * of the hand-drawn one, or as near as is said beside it. By hand a waist is a finished size; the readings here are what
 * the tape says under it, so that a whole waist differs by the ease that is put on by feel.
 */
const inch = (length: number) => length * MM_PER_INCH;
const NEAR = 1 / 16;
const ROUND_WAIST = 1 / 8;
/** Tape of 10 mm for a chest under 450 mm, and 3 (common practice, no source). */
const LAP = 13 / MM_PER_INCH;

type Inches = Partial<Record<MeasureId, number>>;
const toy: Inches = {
  'chest-girth': 14,
  'hip-girth': 14,
  'body-girth': 14.5,
  'head-girth': 13,
  'neck-girth': 9,
  'armhole-depth': 2.75,
};

function drafted(garment: string, readings: Inches, choices: Record<string, string | boolean>): Draft {
  const card: Card = {
    format: 'hemling-card',
    version: 1,
    toy: { name: 'By hand', body: 'upright', traits: { shoulders: 'square', stuffing: 'soft' } },
    unit: 'in',
    taken: '2026-11-20',
    note: '',
    readings: Object.fromEntries(
      Object.entries({ ...toy, ...readings }).map(([id, length]) => [id, [inch(length ?? 0)]]),
    ),
  };
  const full = fullOrder({ garment, choices, fit: 'close', cloth: 'quilting-cotton' }, card.taken);
  if (!full.ok) throw new Error(full.fault.where);
  const outcome = draft(bodyFrom(card), full.order, full.garment, 'By hand');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.flags));
  return outcome.draft;
}

function edge(made: Draft, piece: string, name: string) {
  const found = made.pieces.find((each) => each.name === piece)?.edges.find((each) => each.name === name);
  if (!found) throw new RangeError(`${piece}.${name}`);
  return found;
}

function cutHeight(made: Draft, piece: string): number {
  const box = pathBounds(made.pieces.find((each) => each.name === piece)?.cutLine ?? []);
  return box.bottom - box.top;
}

const near = (ours: number, byHand: number, within = NEAR) =>
  expect(Math.abs(ours - inch(byHand))).toBeLessThanOrEqual(inch(within));

describe('a skirt on a waist of 14 in, finished', () => {
  const waist: Inches = { 'waist-girth': 13.5, 'waist-to-hem': 4.5 - 1 / 2 - 1 / 4 };
  const half = (made: Draft) => edge(made, 'skirt-front', 'top').length + edge(made, 'skirt-back', 'top').length;

  test('gathered twice as full: 28 in, drawn as a half pattern of 14', () => {
    const made = drafted('skirt', waist, { skirt: 'gathered' });
    near(half(made), 14);
    expect(made.seams.find((seam) => seam.name === 'waist')?.ratio).toBeCloseTo(2, 6);
  });

  test.each(['knife', 'box'])('%s pleats three times as full: 42 in', (skirt) => {
    const made = drafted('skirt', waist, { skirt });
    near(2 * half(made), 42, 3 * ROUND_WAIST);
    expect(made.seams.find((seam) => seam.name === 'waist')?.ratio).toBeCloseTo(3, 6);
  });

  test('4 1/2 in long with its hem and seam', () => near(cutHeight(drafted('skirt', waist, {}), 'skirt-front'), 4.5));
});

/** Of the strap's 4 1/2 in, what lies stitched down on the bodice: 10 mm at each end (our reading; the hand draft does not say). */
const STRAP_ENDS = 20 / 25.4;

describe('a bodice on straps, its waist 13 in, finished', () => {
  const made = drafted(
    'dress',
    { 'waist-girth': 12.6, 'bodice-height': 1.75, 'underarm-to-waist': 1.75, 'strap-length': 4.5 - STRAP_ENDS },
    { bodice: 'band', opening: 'back' },
  );
  const strap = made.pieces.find((piece) => piece.name === 'strap');

  test('13 in and the overlap of its hook and loop: 1 in by hand, tape and 3 mm here, for a toy’s tape is narrow', () => {
    const round = 2 * (edge(made, 'front', 'hem').length + edge(made, 'back', 'hem').length);
    near(round, 13, ROUND_WAIST);
    near(round + 2 * edge(made, 'back', 'hem-end').length, 13 + LAP, ROUND_WAIST);
  });

  test('1 3/4 in from underarm to waist, and 1/2 for its two seams', () => {
    near(edge(made, 'front', 'side').length, 1.75);
    near(edge(made, 'front', 'side').length + 2 * edge(made, 'front', 'hem').allowance, 2.25);
  });

  test('a strap 4 1/2 in long, 1 in wide, and 1/2 for its two hems', () => {
    near(edge(made, 'strap', 'side').length, 4.5);
    // A strap for a small toy is never as wide as a hand-cut inch: 0.06 of the chest, both sides of its fold.
    near(edge(made, 'strap', 'top').length, 1, 3 / 8);
    const hems = (strap?.edges ?? []).filter((each) => ['side', 'centre'].includes(each.name));
    expect(hems.reduce((sum, each) => sum + each.allowance, 0)).toBeGreaterThanOrEqual(inch(1 / 2) - 1);
  });
});

test('a pocket has 1/4 in all round for its hems', () => {
  const made = drafted(
    'hooded-top',
    { 'body-length': 7, 'front-width': 8, 'shoulder-length': 1, 'paw-girth': 5, 'arm-length': 5, 'underarm-length': 4 },
    { opening: 'none' },
  );
  const sides = ['top', 'hand', 'side', 'bottom'].map((name) => edge(made, 'pocket', name).allowance);
  for (const allowance of sides) expect(Math.abs(allowance - inch(1 / 4))).toBeLessThan(0.5);
});
