import { describe, expect, test } from 'vitest';
import { leg } from '../../app/drafting/blocks/leg';
import { FRONT_FORK } from '../../app/drafting/curves/crotch';
import { pathLength } from '../../app/drafting/geometry';
import { crotchOf, seamOf } from '../../app/drafting/sizes/leg';
import { edgeNamed, made } from '../measured/made';

const INCH = 25.4;
const unbibbed = { legOpen: null, bibHalf: null, bibBelow: null, strapWidth: null, strapFrom: null };

describe('bloomers: waist 25, hip 43, rise 12, outside 26 in (The Practical Designer, lesson 411, en.wikisource)', () => {
  const book = { quarterHip: 10.75 * INCH, fork: 3.625 * INCH, raised: 0.5 * INCH };
  const [hip, rise, inside] = [43 * INCH, 12 * INCH, 14 * INCH];
  const thigh = hip / 2 + 2 * book.fork;
  // As long as the book's own centre lines: straight down the rise and out to the fork, front and back.
  const crotch = 2 * (rise + book.fork) + book.raised;
  const { leg: ours, gusset } = crotchOf({
    posture: 'stands',
    hip,
    thigh,
    hem: thigh,
    rise,
    inside,
    crotch,
    front: null,
    gussets: true,
  });

  test('each quarter of the hip is as wide as printed', () => {
    expect(ours.legHalfHip / 2).toBeCloseTo(book.quarterHip, 6);
  });

  test('both forks together are as wide as printed; the book shares them evenly, ours puts a third in front', () => {
    expect(ours.legFork).toBeCloseTo(2 * book.fork, 6);
    expect(ours.legFork * FRONT_FORK).toBeCloseTo(book.fork * (2 / 3), 6);
  });

  test('the book raises the back by a 24th of the rise, ours by 0.12: a toy has more seat for its height than a woman', () => {
    expect(book.raised / rise).toBeCloseTo(1 / 24, 3);
    expect(ours.legRaised / rise).toBeCloseTo(0.12, 6);
  });

  test('a corner is longer than the curve that cuts it, and what is left is made up by the gusset', () => {
    expect(gusset).not.toBeNull();
    expect(seamOf(ours) + (gusset?.length ?? 0)).toBeCloseTo(crotch, 2);
    expect(gusset?.length).toBeLessThan(0.25 * crotch);
  });

  test('the fork is a sixth of half the hip, as the book says of its own', () => {
    expect(Math.abs(book.fork - hip / 2 / 6)).toBeLessThan(INCH / 16);
  });
});

describe('the same bloomers drafted whole, for a body with the printed girths and lengths', () => {
  const inches = { 'waist-girth': 25, 'hip-girth': 43, 'body-rise': 12, 'inside-leg-length': 14, 'thigh-girth': 26 };
  const draft = made(
    {
      format: 'hemling-card',
      version: 1,
      toy: { name: 'Bloomers', body: 'upright', traits: { posture: 'stands' } },
      unit: 'in',
      taken: '2026-11-20',
      note: '',
      readings: Object.fromEntries(
        Object.entries({ ...inches, 'crotch-length': 30, 'foot-girth': 12 }).map(([id, inch]) => [id, [inch * INCH]]),
      ),
    },
    'trousers',
    { choices: { hem: 'casing' } },
  );
  const ends = (edge: string) => {
    const path = (draft && edgeNamed(draft, 'leg', edge)?.path) ?? [];
    return { from: path[0]?.from ?? { x: 0, y: 0 }, to: path.at(-1)?.to ?? { x: 0, y: 0 } };
  };
  const [waist, front] = [ends('waist'), ends('front-crotch')];

  test('each quarter of the hip is 10¾ in and the ease of an easy fit, which the book leaves to the gathers', () => {
    const quarter = (waist.to.x - waist.from.x) / 2 / INCH;
    expect(quarter / 10.75).toBeGreaterThan(1.055);
    expect(quarter / 10.75).toBeLessThan(1.065);
  });

  test('the crotch line lies 12 in down and the 6 mm that it hangs lower', () => {
    expect(front.from.y - front.to.y).toBeCloseTo(12 * INCH + 6, 3);
  });

  test('the front fork is narrower than the printed 3⅝ in: ours is what the thigh lacks of half the hip, and a third of it', () => {
    const fork = (front.to.x - front.from.x) / INCH;
    expect(fork).toBeGreaterThan(0.5);
    expect(fork).toBeLessThan(3.625);
  });
});

describe("a child's drawers, 8 years: leg 17, fork 7½ above the hem, front 3 in lower than the back (chestofbooks.com, School Needlework)", () => {
  // Nothing else is printed that a crotch could be drawn from: the back rise is what can be held beside ours.
  const [outside, inside, lower] = [17 * INCH, 7.5 * INCH, 3 * INCH];
  const backRise = outside - inside;
  const share = lower / (backRise - lower);

  test('the book drops its front by 0.46 of what is left: made to sit in, as ours for sitting toys, far above standing', () => {
    expect(share).toBeCloseTo(0.46, 2);
    expect(share).toBeGreaterThan(0.3);
    expect(share).toBeLessThan(0.75);
  });

  test('no crotch is printed: one drawn with our own curve from its back rise is solved back to that rise', () => {
    const rise = backRise - lower;
    const [hip, thigh] = [26 * INCH, 17 * INCH];
    const fork = thigh - hip / 2;
    const drawn = { legHalfHip: hip / 2, legRise: rise, legRaised: lower, legFork: fork, legHem: 13 * INCH };
    const crotch = seamOf({ ...drawn, legInside: inside });
    const { leg: ours } = crotchOf({
      posture: 'sits',
      hip,
      thigh,
      hem: 13 * INCH,
      rise,
      inside,
      crotch,
      front: null,
      gussets: true,
    });
    expect(ours.legRaised).toBeCloseTo(lower, 1);
    const shape = leg.draw({ ...unbibbed, ...ours, legGusset: null, tailAbove: null, tailLong: null, tailLap: null });
    expect(pathLength(shape.edges['back-inseam'] ?? [])).toBeCloseTo(pathLength(shape.edges['front-inseam'] ?? []), 6);
  });
});
