import { describe, expect, it } from 'vitest';
import { bodyKinds, estimate, type MeasureId, measures } from '../../app/body';
import { bodyFrom } from '../../app/measuring';
import { leaveOneOut } from '../slips/leave-one-out';
import { published } from '../toys/published';
import { randomCard, seeded } from '../toys/random';

const TOYS = 300;
/** Give is meant to hold for nine toys in ten; a single measure may do a little worse, or the give be kinder. */
const LEAST_COVERED = 0.9;
const LEAST_COVERED_EACH = 0.8;

describe.each(bodyKinds)('estimates of random %s toys', (kind) => {
  const random = seeded(21);
  const counts = new Map<MeasureId, { within: number; all: number }>();
  for (let toy = 0; toy < TOYS; toy++) {
    const body = bodyFrom(randomCard(random, kind, { full: toy % 2 === 0 }));
    for (const { id } of measures) {
      const taken = body.sizes[id];
      const guess = taken?.from === 'tape' ? estimate(body, id) : null;
      if (!taken || !guess) continue;
      const { within, all } = counts.get(id) ?? { within: 0, all: 0 };
      counts.set(id, { within: within + (Math.abs(guess.value - taken.value) <= guess.give ? 1 : 0), all: all + 1 });
    }
  }

  it('lie within their give as often as it says', () => {
    const [within, all] = [...counts.values()].reduce(([a, b], each) => [a + each.within, b + each.all], [0, 0]);
    expect(within / all).toBeGreaterThan(LEAST_COVERED);
    for (const [id, each] of counts) expect(each.within / each.all, id).toBeGreaterThan(LEAST_COVERED_EACH);
  });
});

describe('readings of published bodies, guessed from the others', () => {
  const guessed = leaveOneOut(published);

  it('lie within their give nine times in ten', () => {
    const [within, toys] = guessed.reduce(([a, b], each) => [a + each.within, b + each.toys], [0, 0]);
    expect(toys).toBeGreaterThan(30);
    expect(within / toys).toBeGreaterThanOrEqual(LEAST_COVERED);
  });

  it.each(['arm-length', 'back-body-length'])('%s is neither long nor short on the whole', (id) =>
    expect(Math.abs(guessed.find(({ measure }) => measure === id)?.bias ?? 1)).toBeLessThan(0.15),
  );
});

describe('an estimate', () => {
  const body = (readings: object, traits = {}) => bodyFrom({ toy: { body: 'upright', traits }, readings });

  it('grows with the toy, and its give with it', () => {
    const [small, large] = [body({ 'head-girth': [200] }), body({ 'head-girth': [400] })];
    const [little, much] = [small.sizes['paw-girth'], large.sizes['paw-girth']];
    expect(much?.value).toBeGreaterThan((little?.value ?? 0) * 1.8);
    expect(much?.give).toBeGreaterThan(little?.give ?? 0);
  });

  it('gives less the more is known', () => {
    const few = body({ 'head-girth': [430] }).sizes['hem-girth'];
    const many = body({ 'head-girth': [430], 'body-girth': [430], 'chest-girth': [395] }).sizes['hem-girth'];
    expect(many?.give).toBeLessThan((few?.give ?? 0) / 2);
  });

  it('makes the crotch of rise and hip: 2 · 95 + 435 / π, less 8 %', () => {
    const known = body({ 'body-rise': [95], 'hip-girth': [435] }).sizes['crotch-length'];
    expect(known).toMatchObject({ from: 'estimate' });
    expect(known?.value).toBeCloseTo(302.2, 1);
  });

  it('follows the traits: arms held out have a longer underside', () => {
    const taken = { 'arm-length': [128], 'armhole-depth': [72] };
    const [down, out] = [body(taken), body(taken, { arms: 'out' })];
    expect(out.sizes['underarm-length']?.value).toBeGreaterThan((down.sizes['underarm-length']?.value ?? 0) * 1.1);
  });
});
