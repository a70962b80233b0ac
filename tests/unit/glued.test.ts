import { describe, expect, test } from 'vitest';
import type { Draft, Edge, Piece, Seam } from '../../app/drafting/draft-types';
import { line, splitPath } from '../../app/drafting/geometry';
import { gluedFaults } from '../holds/glued';
import { type Chosen, made } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

/** The gluing is itself held to notice a near miss: a garment that holds, and the same with one thing a little off. */
function drafted(garment: string, choices: Chosen): Draft {
  const huge = builds.find((build) => build.name === 'huge');
  const draft = huge && made(buildCard(huge), garment, { choices });
  if (!draft) throw new RangeError('no draft');
  return draft;
}

const tee = drafted('tee', { opening: 'none', armhole: 'set-in', sleeve: 'long', neck: 'bound' });
const opened = drafted('tee', { opening: 'back', armhole: 'set-in', neck: 'band' });
const bib = drafted('bib', {});
const bibSeam = bib.seams[0] as Seam;
const skirt = drafted('skirt', { skirt: 'tiers' });

const found = (draft: Draft) => gluedFaults(draft).map(({ code, where }) => `${code} ${where}`);

const seam = (draft: Draft, name: string, change: (seam: Seam) => Seam): Draft => ({
  ...draft,
  seams: draft.seams.map((each) => (each.name === name ? change(each) : each)),
});
const piece = (draft: Draft, name: string, change: (piece: Piece) => Piece): Draft => ({
  ...draft,
  pieces: draft.pieces.map((each) => (each.name === name ? change(each) : each)),
});
const edge = (draft: Draft, of: string, name: string, change: (edge: Edge) => Edge): Draft =>
  piece(draft, of, (each) => ({
    ...each,
    edges: each.edges.map((every) => (every.name === name ? change(every) : every)),
  }));
const without = (draft: Draft, name: string): Draft => ({
  ...draft,
  seams: draft.seams.filter((each) => each.name !== name),
});

describe('a garment glued along its seams', () => {
  test.each([
    ['a tee', tee],
    ['tiers, rings of unlike panels', skirt],
  ])('%s holds as it is', (_, draft) => expect(gluedFaults(draft)).toEqual([]));

  test.each<[string, Draft, string]>([
    [
      'a side sewn the wrong way up',
      seam(tee, 'side', (each) => ({ ...each, second: each.second.map((ref) => ({ ...ref, back: true as const })) })),
      'twisted side',
    ],
    [
      'a side 2 mm longer in front',
      edge(tee, 'front', 'side', (each) => ({ ...each, length: each.length + 2 })),
      'step side',
    ],
    [
      'sleeves cut alike, not as a pair',
      piece(tee, 'sleeve', (each) => ({ ...each, mirrored: false })),
      'copies armhole',
    ],
    ['one sleeve alone', piece(tee, 'sleeve', (each) => ({ ...each, copies: 1 })), 'copies sleeve.front-cap'],
    ['a side left open', without(tee, 'side'), 'raw front.side'],
    ['a hem nobody turns', without(tee, 'hem'), 'raw front.hem'],
    [
      'a sleeve set into the side as well',
      { ...tee, seams: [...tee.seams, { ...(tee.seams.find((each) => each.name === 'side') as Seam), name: 'again' }] },
      'sewn-twice front.side',
    ],
    [
      'a front side drawn straight where the back curves',
      edge(tee, 'front', 'side', (each) => ({ ...each, path: [straight(each)] })),
      'point armhole+side+underarm',
    ],
    [
      'a front hem that meets its side aslant',
      edge(tee, 'front', 'side', (each) => ({ ...each, path: [straight(each)] })),
      'corner back.hem+front.hem',
    ],
    [
      'seams with unlike allowances',
      edge(tee, 'back', 'side', (each) => ({ ...each, allowance: 10 })),
      'allowances side',
    ],
    [
      'a hem turned farther in front',
      edge(tee, 'front', 'hem', (each) => ({ ...each, allowance: 20 })),
      'turned-unequally back.hem+front.hem',
    ],
    [
      'shoulders 4 mm beside the notch of the sleeve',
      edge(
        edge(tee, 'sleeve', 'front-cap', (each) => ({ ...each, length: each.length + 4 })),
        'sleeve',
        'back-cap',
        (each) => ({ ...each, length: each.length - 4 }),
      ),
      'seams-apart armhole',
    ],
    [
      'a tier with a panel too few',
      piece(skirt, 'tier-2', (each) => ({ ...each, copies: each.copies - 1 })),
      'copies tier-2.top',
    ],
  ])('%s is found', (_, draft, said) => expect(found(draft)).toContain(said));

  test('two layers with a gap left at the fold can be turned; sewn shut all round they cannot', () => {
    const gapped = piece(bib, 'bib', (each) => ({
      ...each,
      edges: each.edges.flatMap((every) => (every.name === 'bottom' ? halved(every) : [every])),
    }));
    const closed = {
      ...bibSeam,
      name: 'bib-gap',
      join: 'folded' as const,
      first: [{ piece: 'bib', edge: 'gap' }],
      second: [],
    };
    const openings = (draft: Draft) => gluedFaults(draft).filter(({ code }) => code === 'openings');
    expect(openings({ ...gapped, seams: [...gapped.seams, closed] })).toEqual([]);
    expect(
      openings({
        ...gapped,
        seams: [...gapped.seams, { ...bibSeam, name: 'bib-gap', first: closed.first, second: closed.first }],
      }),
    ).toHaveLength(1);
  });

  test('a turned collar caught between a neck and its facing is not sewn twice; a second facing is', () => {
    const [faced, collared] = [
      drafted('tee', { neck: 'faced', opening: 'none', armhole: 'set-in' }),
      drafted('tee', { neck: 'flat', opening: 'none', armhole: 'set-in' }),
    ];
    const own = <T extends { readonly name: string }>(rows: readonly T[], word: string) =>
      rows.filter(({ name }) => name.includes(word));
    const both = {
      ...collared,
      pieces: [...collared.pieces, ...own(faced.pieces, 'facing')],
      seams: [...collared.seams, ...own(faced.seams, 'facing')],
    };
    expect(gluedFaults(collared)).toEqual([]);
    expect(gluedFaults(both).map(({ code }) => code)).toContain('sewn-twice');
  });

  test('a standing collar joined into a ring round a neck that opens is found', () => {
    const ends = { piece: 'collar-band', edge: 'side' };
    const ring = {
      name: 'collar-end',
      join: 'sewn' as const,
      sewn: 1 as const,
      first: [ends],
      second: [ends],
      firstLength: 1,
      secondLength: 1,
      ratio: 1,
    };
    const closed = { ...without(opened, 'collar-end'), seams: [...without(opened, 'collar-end').seams, ring] };
    const codes = (draft: Draft) => gluedFaults(draft).filter(({ code }) => code === 'openings');
    expect(codes(without(opened, 'collar-end'))).toEqual([]);
    expect(codes(closed)).toHaveLength(1);
  });
});

function halved(whole: Edge): Edge[] {
  const [bottom, gap] = splitPath(whole.path, whole.length * 0.7);
  return [
    { ...whole, path: bottom, length: whole.length * 0.7 },
    { ...whole, name: 'gap', path: gap, length: whole.length * 0.3 },
  ];
}

function straight({ path }: Edge) {
  const [from, to] = [path[0]?.from, path[path.length - 1]?.to];
  if (!from || !to) throw new RangeError('no side');
  return line(from, to);
}
