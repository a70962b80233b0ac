import { expect, test } from 'vitest';
import type { Draft } from '../../app/drafting/draft-types';
import { guideOf, kindWords, seamFrom, timeOf, titleOf } from '../../app/drafting/guide';
import { createSay } from '../../app/words';
import { sewnRound } from '../holds/flat';
import { guideFaults } from '../holds/guide';
import { made } from '../measured/made';
import { beasts } from '../toys/beasts';
import { buildCard, builds } from '../toys/builds';

const cards = builds.map((build) => buildCard(build));
const drafted = (id: string, choices: Record<string, string | boolean> = {}, build = 1): Draft => {
  const card = cards[build];
  const draft = card && made(card, id, { choices });
  if (!draft) throw new Error(`no ${id}`);
  return draft;
};
const ids = (draft: Draft) => guideOf(draft).steps.map(({ seams }) => seams.map(({ name }) => name).join('+'));

test('a side and the underarm of its sleeve are one line of stitches, the cuff of a short sleeve hemmed before them', () => {
  const steps = ids(drafted('tee', { armhole: 'set-in' }));
  const pass = steps.indexOf('side+underarm');
  expect(pass).toBeGreaterThan(steps.indexOf('armhole'));
  expect(steps.indexOf('cuff')).toBeLessThan(pass);
  expect(steps.indexOf('hem')).toBeGreaterThan(pass);
});

test.each([
  ['tee', { sleeve: 'puffed' }, 1, 'side+underarm+cuff-band-end'],
  ['tee', { sleeve: 'long', wrist: 'elastic' }, 3, 'side+underarm'],
  ['tee', { neck: 'flat', armhole: 'raglan' }, 3, 'side+underarm'],
  ['dress', { bodice: 'tank', armhole: 'raglan' }, 3, 'side+underarm'],
] as const)('so they are whatever ends sleeve and neck: %s %o', (id, choices, build, pass) => {
  const draft = drafted(id, choices, build);
  expect(ids(draft)).toContain(pass);
  const { steps } = guideOf(draft);
  const flat = steps.filter(({ seams }) => seams.some(({ name }) => name === 'cuff'));
  for (const { notes } of flat) expect(notes.map(({ code }) => code)).not.toContain('small-round');
});

test('the ends of a bow lap and show a raw edge to its knot alone; what closes its band is told where it is sewn on', () => {
  const { steps } = guideOf(drafted('bow-tie'));
  const step = (id: string) => steps.find((each) => each.id === id);
  expect(step('bow-ends')?.kind).toBe('lap');
  expect(step('bow-long')?.notes.map(({ code }) => code)).not.toContain('overcast');
  const codes = step('neck-band-end')?.notes.map(({ code }) => code);
  expect(codes).toEqual(expect.arrayContaining(['try-closure', 'close-hook-and-loop']));
  expect(drafted('vest').notions.filter(({ kind }) => kind === 'thread')).toEqual([]);
});

test('it is tried on where its sides close, not at the crown of a hood that goes on behind the ears', () => {
  const { steps } = guideOf(drafted('hooded-top', { ears: 'open', opening: 'none' }, 1));
  const tried = steps.filter(({ notes }) => notes.some(({ code }) => code === 'try-closing'));
  expect(tried.map(({ id }) => id)).toEqual(['side']);
  expect(steps.map(({ id }) => id)).toContain('hood-crown-back');
});

test.each([
  ['cape', {}, []],
  ['cape', { hood: 'three' }, []],
  ['tank', { neck: 'lined', opening: 'back' }, ['side']],
  ['dress', { sleeve: 'none', neck: 'lined' }, ['side']],
] as const)('%s %o: a cape is closed at its neck, last; a lined top is tried on at its sides', (id, choices, tried) => {
  const { steps } = guideOf(drafted(id, choices));
  const noted = (code: string) =>
    steps.filter(({ notes }) => notes.some((note) => note.code === code)).map((step) => step.id);
  expect(noted('try-closing')).toEqual(tried);
  expect(noted('close-turned')).toEqual([steps.at(-1)?.id]);
  if (id === 'cape') expect([...noted('try-hem'), ...noted('small-round')]).toEqual([]);
});

test('two layers are sewn all round in one go, turned through the gap, and closed last', () => {
  const { steps } = guideOf(drafted('bib'));
  const [round, gap] = steps.slice(-2);
  expect(round).toMatchObject({ kind: 'bag' });
  expect(round?.seams.map(({ name }) => name)).toEqual(expect.arrayContaining(['bib-round', 'bib-end', 'bib-neck']));
  expect(gap).toMatchObject({ kind: 'gap' });
  expect(gap?.notes.map(({ code }) => code)).toEqual(expect.arrayContaining(['turn-out', 'close-turned']));
});

test('a slit left in a seam does not make two layers of what it joins: above and below it, edges are joined and zigzagged', () => {
  const bird = beasts.find(({ toy }) => toy.name === 'penguin');
  const draft = bird && made(bird, 'tunic', { choices: { wings: 'flat' } });
  const kinds = draft && guideOf(draft).steps.flatMap(({ kind, seams }) => seams.map(({ name }) => `${name} ${kind}`));
  expect(kinds).toEqual(expect.arrayContaining(['wing-above join', 'wing-below join', 'wing-before turn']));
});

test('layers that open are turned through their shoulders, and what closes them is sewn on last', () => {
  const { steps } = guideOf(drafted('tank', { neck: 'lined', opening: 'back' }));
  const noted = (code: string) =>
    steps.filter(({ notes }) => notes.some((note) => note.code === code)).map(({ id }) => id);
  expect(noted('turn-through')).toEqual(['lining-armhole']);
  expect(noted('close-turned')).toEqual([steps.at(-1)?.id]);
});

test.each([
  ['tank', { neck: 'lined' }, []],
  ['dress', { neck: 'lined' }, ['side+underarm', 'skirt-back', 'skirt-side']],
  ['jacket', { collar: 'flat' }, ['shoulder', 'armhole', 'side+underarm']],
  ['tee', { sleeve: 'puffed', opening: 'none' }, ['shoulder', 'armhole', 'side+underarm+cuff-band-end']],
  ['tee', { hem: 'rib', opening: 'none' }, ['shoulder', 'armhole', 'side+underarm+cuff-rib-end']],
] as const)('edges within a lining, under a band or a facing are not zigzagged: %s', (id, choices, zigzagged) => {
  const { steps } = guideOf(drafted(id, choices, 2));
  const noted = steps.filter(({ notes }) => notes.some(({ code }) => code === 'overcast'));
  expect(noted.map(({ seams }) => seams.map(({ name }) => name).join('+'))).toEqual(zigzagged);
});

test('an elastic is joined in a round, made fast at the ends of what is flat', () => {
  const flat = (id: string, choices: Record<string, string>) =>
    guideOf(drafted(id, { hem: 'casing', ...choices })).steps.find((step) => step.id === 'hem')?.flat;
  expect(flat('tee', { opening: 'none' })).toBeUndefined();
  expect(flat('tee', { opening: 'back' })).toBe(true);
});

test('a puffed sleeve is gathered into its band, sewn a quarter of the band from its edge', () => {
  const draft = drafted('tee', { sleeve: 'puffed', armhole: 'set-in' });
  expect(draft.seams.find(({ name }) => name === 'cuff-band')).toMatchObject({ join: 'gathered' });
  const wide = draft.pieces.find(({ name }) => name === 'cuff-band')?.edges.find(({ name }) => name === 'side')?.length;
  expect(guideOf(draft).steps.find(({ id }) => id === 'cuff-band')?.allowance).toBeCloseTo((wide ?? 0) / 4);
});

test('another toy has its own pieces in the pictures', () => {
  const widths = cards.map((_, build) => guideOf(drafted('cape', {}, build)).steps[0]?.scene.width);
  expect(new Set(widths).size).toBe(cards.length);
});

test('trying on stands before the seam that closes the round, before closures and before the hem', () => {
  const { steps } = guideOf(drafted('tee', { opening: 'back', armhole: 'set-in' }));
  const noted = (code: string) =>
    steps.filter(({ notes }) => notes.some((note) => note.code === code)).map(({ id }) => id);
  expect(noted('try-closing')).toEqual(['side']);
  expect(noted('try-closure')).toEqual(['back-closure']);
  expect(noted('try-hem')).toContain('hem');
});

test('a leg that is hemmed flat, before its inside is sewn, is no ring: it is neither tried on nor sewn inside it', () => {
  const hems = cards.map((_, build) => {
    const { steps } = guideOf(drafted('trousers', {}, build));
    const [hem, inside] = ['leg-hem', 'inseam'].map((id) => steps.findIndex((step) => step.id === id));
    const round = (steps[hem ?? 0]?.notes ?? []).some(({ code }) => code === 'try-hem' || code === 'small-round');
    return { flat: (hem ?? 0) < (inside ?? 0), round };
  });
  expect(new Set(hems.map(({ flat }) => flat))).toEqual(new Set([true, false]));
  for (const { flat, round } of hems) expect(round).toBe(!flat);
});

test.each([
  ['felt', 'raw-safe', 'overcast'],
  ['linen', 'raw-frays', 'raw-safe'],
] as const)('an edge left as it is cut in %s: %s is told', (cloth, told, untold) => {
  const card = cards[0];
  const draft = card && made(card, 'cape', { cloth, choices: { hem: 'raw' } });
  const notes = draft ? (guideOf(draft).steps.find(({ kind }) => kind === 'raw-hem')?.notes ?? []) : [];
  expect(notes.map(({ code }) => code)).toContain(told);
  expect(notes.map(({ code }) => code)).not.toContain(untold);
});

test.each([
  ['dungarees', 'strap-on-waist', 'strap-end'],
  ['bonnet', 'chin-strap', 'chin-strap-end'],
] as const)(
  '%s: the ends of straps are tried on once they hang from it, and what closes them is told',
  (id, on, ends) => {
    const { steps } = guideOf(drafted(id));
    const [hung, end] = [on, ends].map((each) => steps.findIndex((step) => step.id === each));
    expect(hung).toBeLessThan(end ?? -1);
    const codes = steps.slice(end).flatMap(({ notes }) => notes.map(({ code }) => code));
    expect(codes.some((code) => code === 'close-turned' || code === 'close-hook-and-loop')).toBe(true);
  },
);

test('a bib that is sewn all round but below is turned before it is laid on', () => {
  const bib = guideOf(drafted('dungarees')).steps.find(({ seams }) =>
    seams.some(({ name }) => name === 'bib-front-side'),
  );
  expect(bib?.notes.map(({ code }) => code)).toContain('turn-inside');
});

test('what is eased in is told as long as it is', async () => {
  const say = await createSay('en');
  const { steps } = guideOf(drafted('dress', { skirt: 'gathered' }));
  const waist = steps.find(({ id }) => id === 'waist');
  if (!waist) throw new Error('no waist');
  expect(titleOf(waist, say)).toBe('Waist');
  expect(kindWords(waist, { say, unit: 'cm', way: 'hand' })).toMatch(/^Gather the edge of Skirt front and Skirt back/);
});

test.each([
  ['trousers', { waist: 'faced' }],
  ['trousers', { waist: 'turned', trousers: 'elastic' }],
  ['skirt', { skirt: 'elastic' }],
  ['tee', { hem: 'casing' }],
] as const)('%s %j: the elastic is drawn in at a step', (garment, choices) => {
  const draft = drafted(garment, choices);
  expect(draft.notions.some(({ kind }) => kind === 'elastic')).toBe(true);
  expect(guideFaults(draft)).toEqual([]);
  const untold = { ...draft, notions: draft.notions.map((each) => ({ ...each, place: `${each.place}?` })) };
  expect(guideFaults(untold).join('\n')).toMatch(/no step draws in the elastic/);
});

test('by hand it takes longer than by machine', () => {
  const guide = guideOf(drafted('hooded-top'));
  expect(timeOf(guide, 'hand')).toBeGreaterThan(timeOf(guide, 'machine'));
});

test.each([
  [25.4, 6.35],
  [22.225, 7.9375],
  [38.1, 0],
])('a middle strip of %d mm says seams of %d mm', (middle, seam) => expect(seamFrom(middle)).toBeCloseTo(seam, 9));

test.each([0, 13.9, 38.2, Number.NaN])('no middle strip measures %d mm', (middle) =>
  expect(seamFrom(middle)).toBeNull(),
);

test.each<[string, RegExp, (draft: Draft) => Draft]>([
  ['sewn backwards', /before/, (draft) => ({ ...draft, sewing: draft.sewing.toReversed() })],
  ['a seam left out', /sews/, (draft) => ({ ...draft, sewing: draft.sewing.slice(1) })],
  [
    'an edge that nothing finishes',
    /no finish for front\.hem/,
    (draft) => ({
      ...draft,
      seams: draft.seams.filter(({ name }) => name !== 'hem'),
      sewing: draft.sewing.filter(({ seams }) => !seams.includes('hem')),
    }),
  ],
  [
    'an armhole sewn in the round',
    /armhole is sewn in the round, after side/,
    (draft) => {
      const armhole = draft.sewing.filter(({ seams }) => seams.includes('armhole'));
      return { ...draft, sewing: [...draft.sewing.filter((step) => !armhole.includes(step)), ...armhole] };
    },
  ],
])('%s is found', (_, fault, spoil) => {
  const draft = drafted('tee', { armhole: 'set-in' });
  expect([...guideFaults(draft), ...sewnRound(draft)]).toEqual([]);
  expect([...guideFaults(spoil(draft)), ...sewnRound(spoil(draft))].join('\n')).toMatch(fault);
});
