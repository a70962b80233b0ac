import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { longestTie, scaleOf } from '../../app/body';
import { cutsOf } from '../../app/drafting/cloth';
import type { Draft, Notion, NotionKind } from '../../app/drafting/draft-types';
import { garments } from '../../app/drafting/garments';
import { guideOf } from '../../app/drafting/guide';
import { notionWords } from '../../app/drafting/notions/words';
import { toJson } from '../../app/drafting/output';
import { ringArea } from '../../app/drafting/packing';
import { howMany } from '../../app/drafting/pieces/how-many';
import { elasticFor, fastened } from '../../app/drafting/sizes/fastening';
import { PAST_CENTRE_MM, TAPE_MM } from '../../app/drafting/sizes/scale';
import { createSay } from '../../app/words';
import { made, reading } from '../measured/made';
import { buildCard, builds } from '../toys/builds';
import { demoDrafts } from '../toys/demo-drafts';

const say = await createSay('en');
const cards = new Map(builds.map((build) => [build.name, buildCard(build)]));

function drafted(build: string, garment: string, choices: Record<string, string | boolean> = {}): Draft {
  const card = cards.get(build) ?? expect.fail(`no build ${build}`);
  return made(card, garment, { choices }) ?? expect.fail(`${garment} refused`);
}

const of = (draft: Draft, kind: NotionKind): readonly Notion[] => draft.notions.filter((each) => each.kind === kind);
const spanOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
const only = (draft: Draft, kind: NotionKind): Notion => {
  const [first, ...more] = of(draft, kind);
  expect(more).toEqual([]);
  return first ?? expect.fail(`no ${kind}`);
};

// Elastic: a tenth less than the waist, and a lap to join it; common practice, no source.
test.each([
  ['bear', 481, 6],
  ['tiny', 175, 5],
])('an elastic skirt for %s: nine tenths of a waist of %i, and 20 to join, %i wide', (build, _, wide) => {
  const elastic = only(drafted(build, 'skirt', { skirt: 'elastic' }), 'elastic');
  const waist = drafted(build, 'skirt').fit.find(({ place }) => place === 'waist')?.body ?? 0;
  expect(elastic.length).toBeCloseTo(waist * 0.9 + 20, 6);
  expect(elastic.width).toBe(wide);
});

test('what is wanted twice is told as two, an elastic or a piece of hook and loop too', () => {
  const told = (draft: Draft, kind: NotionKind) =>
    of(draft, kind).map((each) => ({ twice: each.count === 2, words: notionWords(each, say, 'cm') }));
  const lines = [...told(drafted('bear', 'pants'), 'elastic'), ...told(drafted('bear', 'dungarees'), 'hook-and-loop')];
  expect(lines.map(({ twice }) => twice)).toEqual([false, true, true]);
  for (const { twice, words } of lines) expect(/: 2 pieces .* each /.test(words)).toBe(twice);
});

test('thread is told in the whole metres or yards that the maker thinks in', () => {
  const thread = { kind: 'thread', place: 'all', length: 20 * 914.4 } as const;
  expect(notionWords(thread, say, 'in')).toBe('Thread: about 20\u00a0yd.');
  expect(notionWords(thread, say, 'cm')).toBe('Thread: about 19\u00a0m.');
});

test('elastic for a girth is shorter than the girth where the girth is not tiny', () => {
  expect(elasticFor(300)).toBe(290);
  expect(elasticFor(300)).not.toBe(300 * 0.9);
});

// Hook and loop 6, 10 and 20 wide by the chest, and edges that lap by 3 more; common practice, no source.
test.each([
  [219.9, 6],
  [220, 10],
  [449.9, 10],
  [450, 20],
])('a chest of %d has hook and loop %d wide, and laps by 3 more', (value, wide) => {
  const scale = scaleOf({
    sizes: { 'chest-girth': { value, from: 'tape', give: 0 } },
  });
  expect(TAPE_MM[scale]).toBe(wide);
  expect(2 * PAST_CENTRE_MM[scale]).toBe(wide + 3);
});

test.each(['small', 'usual', 'large'] as const)(
  'what closes a %s toy fits its lap, and no tie is over 220',
  (scale) => {
    for (const kind of ['hook-and-loop', 'snaps', 'ribbon'] as const)
      expect(fastened(kind, 100, scale).width).toBeLessThan(2 * PAST_CENTRE_MM[scale]);
    expect(fastened('ribbon', 100, scale).length).toBeLessThanOrEqual(longestTie('cm'));
  },
);

test('snaps stand at both ends and at even distances between, or one alone', () => {
  expect(fastened('snaps', 20, 'small')).toEqual({
    length: 6,
    width: 6,
    count: 1,
  });
  expect(fastened('snaps', 50, 'small').count).toBe(3);
  expect(fastened('snaps', 51, 'small').count).toBe(4);
});

describe('who dresses it', () => {
  const tee = (choices: Record<string, string | boolean>) => drafted('rabbit', 'tee', choices);
  const kinds = (draft: Draft) => of(draft, 'snaps').length + of(draft, 'ribbon').length + of(draft, 'buttons').length;

  test('a small child: roomy, open all the way, heads as they are, and nothing that comes off', () => {
    const draft = tee({
      dresser: 'small-child',
      closedBy: 'snaps',
      buttons: true,
    });
    expect(draft.order.fit).toBe('roomy');
    expect(['front', 'back']).toContain(draft.order.choices.opening);
    expect(draft.openings.find(({ through }) => through === 'neck')?.needs).toBe(
      draft.fit.length > 0 ? reading(cards.get('rabbit') ?? expect.fail('no rabbit'), 'head-girth') : 0,
    );
    expect(kinds(draft)).toBe(0);
    expect(of(draft, 'hook-and-loop')).toHaveLength(1);
  });

  test('what she chose herself stays: a close fit, no opening', () => {
    const draft = made(cards.get('rabbit') ?? expect.fail('no rabbit'), 'tee', {
      fit: 'close',
      choices: { dresser: 'small-child', opening: 'none' },
    });
    expect(draft?.order.fit).toBe('close');
    expect(draft?.order.choices.opening).toBe('none');
  });

  test('on a shelf it closes with snaps; buttons lie over them, never over ties', () => {
    const shown = tee({ dresser: 'display', opening: 'front', buttons: true });
    expect(only(shown, 'snaps').count).toBe(only(shown, 'buttons').count);
    expect(of(shown, 'hook-and-loop')).toEqual([]);
    const tied = tee({ opening: 'front', closedBy: 'ties', buttons: true });
    expect([of(tied, 'buttons'), of(tied, 'ribbon').length]).toEqual([[], 1]);
  });
});

// Cloth over 1.5 mm makes no binding; common practice, no source.
test.each([
  ['tee', { neck: 'bound' }, ['binding']],
  ['tank', { neck: 'bound' }, ['armhole-binding', 'binding']],
  ['dress', { sleeve: 'puffed', armhole: 'set-in' }, ['binding', 'cuff-band']],
] as const)('a %s of thick cloth is bound in thin cotton, and says so of each strip', (garment, choices, strips) => {
  const [thick, thin] = ['minky', 'quilting-cotton'].map(
    (cloth) => made(cards.get('rabbit') ?? expect.fail(), garment, { choices, cloth }) ?? expect.fail(),
  );
  const ofCotton = (draft: Draft | undefined) => draft?.pieces.filter(({ of }) => of === 'thin-cotton') ?? [];
  expect(
    ofCotton(thick)
      .map(({ name }) => name)
      .sort(),
  ).toEqual(strips);
  expect(ofCotton(thin)).toEqual([]);
  for (const piece of ofCotton(thick)) expect(howMany(piece, false, say)).toMatch(/, of thin cotton$/);
  const told = thick ? of(thick, 'bias').map((notion) => notionWords(notion, say, 'cm')) : [];
  for (const words of told) expect(words).toMatch(/thin cotton/);
  expect(cutsOf(thick ? [thick] : []).some(({ layer }) => layer === 'thin-cotton')).toBe(true);
});

test('an opening down the back is closed along all of it', () => {
  const draft = drafted('tiny', 'tee', { opening: 'back' });
  const tape = only(draft, 'hook-and-loop');
  const centre = draft.pieces.find(({ name }) => name === 'back')?.edges.find(({ name }) => name === 'centre');
  expect(tape).toEqual({ kind: 'hook-and-loop', place: 'back-closure', length: centre?.length, width: 6 });
  expect(of(drafted('tiny', 'tee', { opening: 'none' }), 'hook-and-loop')).toEqual([]);
});

test('strips are told as cut, on the bias where they lie aslant', () => {
  const draft = drafted('rabbit', 'tank', { opening: 'none' });
  const [neck, arms] = of(draft, 'bias');
  const strip = draft.pieces.find(({ name }) => name === 'binding')?.edges.find(({ name }) => name === 'top');
  expect(neck?.length).toBeGreaterThan(2 * (strip?.length ?? Infinity));
  expect(arms).toMatchObject({ place: 'armhole-binding', count: 2 });
});

describe('cloth', () => {
  test.each(demoDrafts().map((draft) => [`${draft.toy}, ${draft.order.garment}`, draft] as const))(
    '%s: never less than its pieces, never more than if each had a row of its own',
    (_, draft) => {
      const told = of(draft, 'cloth');
      for (const { place, length, width = 0 } of told) {
        const cuts = cutsOf([draft]).filter(({ layer }) => layer === place);
        const area = cuts.reduce((sum, { outline }) => sum + Math.abs(ringArea(outline)), 0);
        expect(length * width).toBeGreaterThan(area);
        const along = cuts.map(({ outline }) => spanOf(outline.map(({ x }) => x)));
        expect(length).toBeGreaterThan(Math.max(...along));
        expect(length).toBeLessThanOrEqual(along.reduce((sum, each) => sum + each + 2, 0) + 1e-9);
      }
      expect(told.map(({ place }) => place)).toContain('main');
    },
  );

  test('a lining and facings are told apart from the cloth', () => {
    expect(of(drafted('rabbit', 'tank', { neck: 'lined' }), 'cloth').map(({ place }) => place)).toEqual([
      'main',
      'lining',
    ]);
  });

  // Common practice, no source: cut with the rest, and of thin cotton where the rest is thick.
  test.each([
    ['quilting-cotton', ['main']],
    ['minky', ['main', 'thin-cotton']],
  ])("a waist's strip, of %s, is counted with the cloth it is cut from", (cloth, layers) => {
    const draft = made(cards.get('bear') ?? expect.fail(), 'trousers', { cloth, choices: { waist: 'faced' } });
    expect(draft?.pieces.some(({ name }) => name === 'waist-facing')).toBe(true);
    expect(of(draft ?? expect.fail(), 'cloth').map(({ place }) => place)).toEqual(layers);
  });
});

test('thread is about three times what is sewn', () => {
  const draft = drafted('bear', 'tee');
  const sewn = draft.seams.reduce((sum, seam) => sum + seam.firstLength * seam.sewn, 0);
  expect(only(draft, 'thread').length).toBeCloseTo(3 * sewn, 6);
});

test('every notion of every garment is one line of words', () => {
  for (const { id, bodies } of garments) {
    if (!bodies.includes('upright')) continue;
    for (const notion of drafted('tiny', id).notions) {
      const words = notionWords(notion, say, 'cm');
      expect(words).toMatch(/\d/);
      expect(words).not.toMatch(/\{\{|seam\.|piece\.|layer\.|notion\./);
    }
  }
});

test('a draft written before there were notions is still read', () => {
  const schema: object = JSON.parse(readFileSync('assets/schema/draft-1.json', 'utf8'));
  const valid = new Ajv2020({ strict: false }).compile(schema);
  const { notions, ...old } = JSON.parse(JSON.stringify(toJson(drafted('bear', 'tee'))));
  expect(valid(old)).toBe(true);
  expect(valid({ ...old, notions })).toBe(true);
  expect(valid({ ...old, notions: [{ kind: 'elastic', place: 'waist' }] })).toBe(false);
});

// No needle meets a zip's teeth: they end beside what is sewn across them; common practice, no source.
test.each([
  ['rabbit', { collar: 'band', hem: 'turned' }, 5, 0],
  ['rabbit', { collar: 'hood', hem: 'rib' }, 5, 5],
  ['huge', { collar: 'flat', hem: 'rib' }, 8, 8],
])('a zip of %s with %o ends %i mm below the neck and %i above a rib', (build, choices, above, below) => {
  const draft = drafted(build, 'jacket', { closedBy: 'zip', ...choices });
  const opening = draft.pieces.find(({ name }) => name === 'front')?.edges.find(({ name }) => name === 'centre');
  expect(only(draft, 'zip').length).toBeCloseTo((opening?.length ?? 0) - above - below, 6);
  const { steps } = guideOf(draft);
  const at = steps.findIndex(({ notes }) => notes.some(({ code }) => code === 'close-zip'));
  const told = steps[at]?.notes.find(({ code }) => code === (below > 0 ? 'zip-ends-both' : 'zip-ends'));
  expect(told?.values.by).toBeCloseTo(above, 6);
  const hemmed = steps.findIndex(({ seams }) => seams.some(({ name }) => name === 'hem'));
  expect(hemmed).toBeLessThan(at);
});
