import { describe, expect, it } from 'vitest';
import { type BodyKind, bodyKinds, findMeasure, type TraitId, traitValues, usualTraits } from '../../app/body';
import {
  compared,
  diagram,
  figure,
  markPicture,
  marksOf,
  portrait,
  traitPicture,
  viewOf,
} from '../../app/measuring/figure';
import english from '../../locales/en.json';
import { pathsOf, steps, typicalKnowns } from './figure-support';

const tapeWords: Readonly<Record<string, string>> = english.figure.tape;

/** The traits each kind shows; the others change nothing on it. */
const shown: Readonly<Record<BodyKind, readonly TraitId[]>> = {
  upright: ['shoulders', 'neck', 'arms', 'limbs', 'posture', 'legs', 'ears', 'tail'],
  'four-legged': ['posture', 'ears', 'tail'],
  round: ['neck', 'arms', 'ears', 'tail'],
};

const isDrawnFor = (kind: BodyKind, knowns: Parameters<typeof diagram>[2], id: Parameters<typeof diagram>[3]) =>
  JSON.stringify(diagram(kind, usualTraits, knowns, id));

describe('every measure of every kind', () => {
  it.each(steps)('%s, %s: has a tape, and words for who does not see it', (kind, id) => {
    const drawn = diagram(kind, usualTraits, {}, id);
    expect(drawn).not.toBeNull();
    expect(tapeWords[drawn?.tape.text ?? '']).toMatch(/\.$/);
    expect(viewOf(kind, usualTraits, id)).toBe(drawn?.tape.view);
    expect(drawn?.tape.nature).toBe(findMeasure(id)?.nature);
  });

  it.each(steps)('%s, %s: a wrong number shows', (kind, id) => {
    const right = typicalKnowns(kind);
    const typical = right[id];
    expect(typical).toBeDefined();
    if (!typical) return;
    const wrong = { ...right, [id]: { ...typical, value: 2.54 * typical.value } };
    expect(isDrawnFor(kind, wrong, id)).not.toBe(isDrawnFor(kind, right, id));
    const [one, other] = compared(kind, usualTraits, id, [wrong, right]);
    expect(JSON.stringify(one)).not.toBe(JSON.stringify(other));
  });

  it('says nothing of words that no tape uses', () => {
    const used = new Set(
      steps.flatMap(([kind, id]) =>
        traitValues.posture.map((posture) => diagram(kind, { ...usualTraits, posture }, {}, id)?.tape.text),
      ),
    );
    expect(Object.keys(tapeWords).filter((code) => !used.has(code))).toEqual([]);
  });

  it.each(bodyKinds)('%s: shows a toy that sits laid down or on its feet for its height', (kind) => {
    const heights = traitValues.posture.map((posture) =>
      JSON.stringify(diagram(kind, { ...usualTraits, posture }, {}, 'height')),
    );
    expect(new Set(heights).size).toBe(1);
  });

  it('has no tape for a measure the kind does not have', () => {
    expect(diagram('round', usualTraits, {}, 'paw-girth')).toBeNull();
    expect(viewOf('four-legged', usualTraits, 'hip-girth')).toBeNull();
  });
});

describe('the figure', () => {
  it.each(bodyKinds)('%s: is the same for a toy of any size, and for the typical toy', (kind) => {
    const one = JSON.stringify(figure(kind, usualTraits, typicalKnowns(kind), 'front'));
    expect(JSON.stringify(figure(kind, usualTraits, typicalKnowns(kind, 3), 'front'))).toBe(one);
    expect(JSON.stringify(figure(kind, usualTraits, {}, 'front'))).toBe(one);
  });

  it('leans on what was measured, not on what was estimated', () => {
    const right = typicalKnowns('upright');
    const guessed = { ...right, 'paw-girth': { value: 900, from: 'estimate', give: 300 } } as const;
    expect(figure('upright', usualTraits, guessed, 'front')).toEqual(figure('upright', usualTraits, right, 'front'));
  });

  it.each(bodyKinds)('%s: every trait it shows changes it, from some side', (kind) => {
    for (const trait of shown[kind]) {
      const pictures = traitValues[trait].map((value) =>
        (['front', 'side', 'back'] as const).map((view) => figure(kind, { ...usualTraits, [trait]: value }, {}, view)),
      );
      expect(new Set(pictures.map((picture) => JSON.stringify(picture))).size, trait).toBe(traitValues[trait].length);
    }
  });

  it.each(bodyKinds)('%s: the pictures to choose a trait by differ', (kind) => {
    for (const trait of [
      ...shown[kind],
      'stuffing',
      'head',
      ...(kind === 'upright' ? (['build'] as const) : []),
    ] as const) {
      const pictures = traitValues[trait].map((value) => JSON.stringify(traitPicture(kind, trait, value)));
      expect(new Set(pictures).size, trait).toBe(traitValues[trait].length);
    }
  });

  it.each(bodyKinds)('%s: each mark of step zero glows in its turn, and none in a portrait', (kind) => {
    for (const mark of marksOf[kind]) {
      const glowing = markPicture(kind, usualTraits, {}, [mark]).shapes.filter(({ look }) => look === 'glow');
      expect(glowing.length, mark).toBeGreaterThan(0);
    }
    expect(portrait(kind, usualTraits, {}).shapes.every(({ layer }) => layer === 'toy')).toBe(true);
  });

  it('is drawn in few enough bytes for a phone', () => {
    for (const [kind, id] of steps) {
      const drawn = diagram(kind, usualTraits, {}, id);
      expect(
        pathsOf(drawn?.figure ?? { frame: { width: 0, height: 0 }, view: 'front', shapes: [] }, drawn?.tape).join('')
          .length,
        id,
      ).toBeLessThan(40_000);
    }
  });
});
