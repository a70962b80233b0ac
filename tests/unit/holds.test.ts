import { expect, test } from 'vitest';
import type { Flag } from '../../app/body';
import { draft, fullOrder } from '../../app/drafting/draft';
import type { Draft, Edge, InnerLine, Piece, Seam } from '../../app/drafting/draft-types';
import { translatePath } from '../../app/drafting/geometry';
import { bodyFrom, demoCards } from '../../app/measuring';
import { brokenIn } from '../holds';
import { unkindlyRefused } from '../holds/refused';

/** What must hold is itself held to notice a near miss: a draft that holds, and the same with one thing a little off. */
function drafted(garment: string, choices: Record<string, string | boolean>, cloth = 'quilting-cotton'): Draft {
  const card = demoCards.find((each) => each.toy.body === 'upright');
  const full = fullOrder({ garment, choices, cloth }, '2026-11-20');
  if (!card || !full.ok) throw new RangeError('no toy or no order');
  const outcome = draft(bodyFrom(card), full.order, full.garment, card.toy.name);
  if (!outcome.ok) throw new RangeError(outcome.flags.map((flag) => flag.code).join());
  return outcome.draft;
}

type Change = { piece?: (piece: Piece) => Piece; seam?: (seam: Seam) => Seam; flags?: [] };

function changed(made: Draft, { piece = (each) => each, seam = (each) => each, flags }: Change): Draft {
  return { ...made, pieces: made.pieces.map(piece), seams: made.seams.map(seam), flags: flags ?? made.flags };
}

const lines = (piece: Piece, move: (line: InnerLine) => InnerLine): Piece => ({
  ...piece,
  lines: piece.lines.map(move),
});
const edges = (piece: Piece, change: (edge: Edge) => Edge): Piece => ({ ...piece, edges: piece.edges.map(change) });

const top = drafted('hooded-top', { opening: 'none', hood: 'three' });
const fleece = drafted('tee', { opening: 'back' }, 'polar-fleece');
const bound = drafted('tee', { opening: 'back', neck: 'bound', armhole: 'set-in' });

test.each([
  ['a top', top],
  ['a tee in fleece', fleece],
  ['a bound tee', bound],
])('%s holds as it is', (_, made) => expect(brokenIn(made)).toEqual([]));

test.each([
  [
    'a pocket placed a little over the hem',
    top,
    {
      piece: (piece) =>
        lines(piece, (line) =>
          line.name === 'pocket-bottom' ? { ...line, path: translatePath(line.path, 0, 19) } : line,
        ),
    },
    'line pocket-bottom leaves the piece',
  ],
  [
    'a binding laid the wrong way round',
    bound,
    {
      seam: (seam) =>
        seam.name === 'binding-edge'
          ? { ...seam, first: seam.first.map(({ piece, edge, back }) => ({ piece, edge, back: !back as true })) }
          : seam,
    },
    'a fold lies over an opening',
  ],
  [
    'fleece eased like cotton',
    fleece,
    { seam: (seam) => (seam.name === 'armhole' ? { ...seam, join: 'eased' as const, ratio: 1.02 } : seam) },
    'polar-fleece eased by 1.02',
  ],
  ['fleece that says nothing', fleece, { flags: [] }, 'without the note neck-in-scrap'],
  [
    'a round cuff turned as far as a straight one',
    top,
    {
      piece: (piece) =>
        edges(piece, (edge) => (edge.name === 'neckline' ? { ...edge, role: 'hem', allowance: 12 } : edge)),
    },
    'a curved hem turned by 12 mm',
  ],
] as [string, Draft, Change, string][])('%s is found', (_, made, change, said) => {
  expect(brokenIn(changed(made, change)).join('\n')).toContain(said);
});

test('a coat is kindly refused only for its corner, with the simple coat beside it and nothing else', () => {
  const flags = (...codes: string[]): Flag[] =>
    codes.map((code) => ({ code, severity: 'impossible', measures: [], values: {} }));
  const kind = ['coat-corner-not-drawn', 'wears-coat'];
  expect(unkindlyRefused('fitted-coat', flags(...kind))).toEqual([]);
  expect(unkindlyRefused('coat', flags(...kind))).toHaveLength(2);
  expect(unkindlyRefused('fitted-coat', flags('coat-corner-not-drawn'))).toHaveLength(1);
  expect(unkindlyRefused('fitted-coat', flags(...kind, 'draft-defect'))).toHaveLength(3);
});
