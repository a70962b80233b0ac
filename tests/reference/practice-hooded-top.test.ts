import { describe, expect, test } from 'vitest';
import { type Card, MM_PER_INCH } from '../../app/body';
import { draft, fullOrder } from '../../app/drafting/draft';
import type { Draft } from '../../app/drafting/draft-types';
import { pathBounds } from '../../app/drafting/geometry';
import { bodyFrom } from '../../app/measuring';

/**
 * One practised way of drafting by hand for an upright toy about 16 in tall (common practice, no source): each size must
 * come within 3/8 in of the hand-drawn one, except where the draft states an adjustment.
 */
const inch = (length: number) => length * MM_PER_INCH;
const NEAR_MM = inch(3 / 8);

const card: Card = {
  format: 'hemling-card',
  version: 1,
  toy: { name: 'By hand', body: 'upright', traits: { shoulders: 'square', stuffing: 'soft' } },
  unit: 'in',
  taken: '2026-11-20',
  note: '',
  readings: Object.fromEntries(
    Object.entries({
      'body-length': 5.5,
      'body-girth': 17,
      'front-width': 8.5,
      'side-inset': 1.5,
      'shoulder-length': 1,
      'armhole-depth': 2.75,
      'front-neck-drop': 1.5,
      'upper-arm-girth': 8,
      'arm-length': 5.25,
      'underarm-length': 4,
      'face-edge': 15.5,
      'hood-depth': 5,
    }).map(([id, length]) => [id, [inch(length)]]),
  ),
};

function drafted(choices: Record<string, string>): Draft {
  const full = fullOrder({ garment: 'hooded-top', choices, fit: 'close', cloth: 'quilting-cotton' }, card.taken);
  if (!full.ok) throw new Error(full.fault.where);
  const outcome = draft(bodyFrom(card), full.order, full.garment, 'By hand');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.flags));
  return outcome.draft;
}

describe('a hooded top as drawn by hand', () => {
  const made = drafted({ opening: 'none', hood: 'two' });
  const piece = (name: string) => made.pieces.find((each) => each.name === name)?.edges ?? [];
  const edge = (name: string, of: string) => piece(name).find((each) => each.name === of);
  const box = (name: string, of: string) => pathBounds(edge(name, of)?.path ?? []);
  const said = (code: string) => made.adjustments.find((each) => each.code === code);
  const shoulderX = box('front', 'shoulder').right;

  test.each([
    ['length, without its hem', 5.5, () => box('front', 'centre').bottom, null],
    ['front across the tummy', 8.5, () => 2 * box('front', 'side').right, null],
    ['shoulder in from the side', 1.5, () => box('front', 'armhole').right - shoulderX, null],
    [
      'armhole, with its ease',
      3.25,
      () => box('front', 'armhole').bottom - box('front', 'shoulder').bottom,
      'armhole-deepened',
    ],
    ['shoulder', 1, () => edge('front', 'shoulder')?.length ?? 0, null],
    ['neck drop for a hood', 1.5, () => box('front', 'neckline').bottom, null],
    ['round the arm, with its ease', 8.5, () => box('sleeve', 'back-cap').right * 2, 'sleeve-widened'],
    ['outer arm', 5.25, () => box('sleeve', 'cuff').top, null],
    ['underarm', 4, () => edge('sleeve', 'back-underarm')?.length ?? 0, 'cap-changed'],
    ['half the face edge and a little more', 8, () => edge('hood', 'face')?.length ?? 0, null],
    ['hood depth', 5.5, () => box('hood', 'crown').right, null],
  ] as const)('%s', (_, byHand, ours, adjusted) => {
    const off = Math.abs(ours() - inch(byHand));
    if (off > NEAR_MM) expect(said(adjusted ?? 'nothing'), `off by ${off / MM_PER_INCH} in`).toBeDefined();
    else expect(off).toBeLessThanOrEqual(NEAR_MM);
  });

  test('the back neckline is higher than the front', () => {
    expect(box('back', 'neckline').bottom).toBeLessThan(box('front', 'neckline').bottom);
  });

  test('a cap about 15 % too long by hand is matched to its armhole, and what changed is said', () => {
    const seam = made.seams.find((each) => each.name === 'armhole');
    expect(seam?.ratio).toBeLessThanOrEqual(1.03);
    expect(said('armhole-deepened') ?? said('cap-changed')).toBeDefined();
  });

  test('half the finished length is about where the armhole ends (common practice, no source: 35–65 %)', () => {
    const depth = box('front', 'armhole').bottom / box('front', 'centre').bottom;
    expect(depth).toBeGreaterThan(0.35);
    expect(depth).toBeLessThan(0.75);
  });
});
