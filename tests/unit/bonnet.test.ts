import { expect, test } from 'vitest';
import { guideOf } from '../../app/drafting/guide';
import { brokenIn } from '../holds';
import { made } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

const cards = builds.map((build) => buildCard(build));

/** A bonnet is closed once: by straps that lap, or by ribbons that are tied (common practice, no source). */
test.each([
  ['ties', false, ['ribbon']],
  ['auto', true, ['hook-and-loop']],
  ['snaps', true, ['snaps']],
])('a bonnet closed by %s: straps %s', (closedBy, straps, kinds) => {
  for (const card of cards) {
    const draft = made(card, 'bonnet', { choices: { closedBy } }) ?? expect.fail('refused');
    expect(draft.pieces.some(({ name }) => name === 'chin-strap')).toBe(straps);
    expect(draft.seams.some(({ name }) => name.startsWith('chin-strap'))).toBe(straps);
    expect(
      draft.notions.flatMap(({ kind }) => (['cloth', 'bias', 'strip', 'thread'].includes(kind) ? [] : kind)),
    ).toEqual(kinds);
    expect(brokenIn(draft)).toEqual([]);
    const notes =
      guideOf(draft)
        .steps.at(-1)
        ?.notes.map(({ code }) => code) ?? [];
    expect(notes.includes('tie-turned')).toBe(!straps);
    expect(notes).not.toContain('close-turned');
  }
});
