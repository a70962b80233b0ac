import type { MeasureId, Mm, SizeId } from '../../../body';
import type { Draft } from '../../../drafting/draft-types';

export const wrongs = ['tight', 'loose', 'short', 'long'] as const;
export type Wrong = (typeof wrongs)[number];

/**
 * Finished sizes that are turned together, each by a share of what is asked, and what then measures the change. `lead` is the
 * size it is told and remembered by.
 */
export type Turn = {
  readonly lead: SizeId;
  readonly sizes: { readonly [S in SizeId]?: number };
  readonly measured: (draft: Draft) => Mm | null;
};

/** A place where a garment may sit badly: where it lies on the figure, and what is turned, the first that answers. */
export type TriedPoint = {
  readonly id: string;
  readonly spot: string;
  /** At the viewer's left, where the right has many. */
  readonly atLeft?: true;
  /** Turned for width (tight, loose) or for length (short, long). */
  readonly width: readonly Turn[];
  readonly length: readonly Turn[];
  /** What was perhaps measured wrong, where it is the same again and again. */
  readonly check: MeasureId;
};

/** The finished girth or length of a row of the fit table. */
const fit =
  (place: string) =>
  ({ fit: rows }: Draft): Mm | null =>
    rows.find((row) => row.place === place)?.garment ?? null;

/** The length of an edge; of a pair or a half, one of it. */
const edge =
  (piece: string, name: string) =>
  ({ pieces }: Draft): Mm | null =>
    pieces.find((each) => each.name === piece)?.edges.find((each) => each.name === name)?.length ?? null;

const turn = (lead: SizeId, measured: Turn['measured'], sizes: Turn['sizes'] = { [lead]: 1 }): Turn => ({
  lead,
  sizes,
  measured,
});

/** The lengths of several edges together; null where the draft lacks one. */
const edges =
  (piece: string, ...names: readonly string[]) =>
  (draft: Draft): Mm | null => {
    const lengths = names.map((name) => edge(piece, name)(draft));
    return lengths.reduce<Mm | null>((sum, each) => (sum === null || each === null ? null : sum + each), 0);
  };

/** Only where the draft has such an edge. */
const where =
  (has: Turn['measured'], measured: Turn['measured']): Turn['measured'] =>
  (draft) =>
    has(draft) === null ? null : measured(draft);

/** Round the seat of trousers: half of it in each leg, whose top goes with it. */
const seat = (place: string): Turn =>
  turn('hip', where(edge('leg', 'front-crotch'), fit(place)), { hip: 1, legHalfHip: 0.5, legTop: 0.5 });

const inseam = edge('leg', 'back-inseam');
const crotch = where(inseam, edges('leg', 'front-crotch', 'back-crotch'));

/** A quarter of a girth lies in each half of front and back. */
const QUARTER = 0.25;

export const triedPoints: readonly TriedPoint[] = [
  {
    id: 'hood',
    spot: 'crown',
    width: [turn('hoodDepth', fit('hood-depth'))],
    length: [],
    check: 'hood-depth',
  },
  { id: 'face', spot: 'jaw', width: [turn('hoodFace', fit('face'))], length: [], check: 'face-edge' },
  {
    id: 'neck',
    spot: 'neckDrop',
    width: [
      turn('neckHalfWidth', fit('neck'), { neckHalfWidth: 0.2 }),
      turn('capeNeck', fit('neck'), { capeNeck: 0.5 }),
    ],
    length: [],
    check: 'neck-girth',
  },
  {
    id: 'under-arm',
    spot: 'underarm',
    width: [
      turn('armhole', fit('armhole')),
      turn('armholeDepth', fit('armhole'), { armholeDepth: 0.5 }),
      turn('bicep', fit('bicep')),
    ],
    length: [],
    check: 'armhole-depth',
  },
  {
    id: 'upper-arm',
    spot: 'elbowOuter',
    atLeft: true,
    width: [turn('bicep', fit('bicep'))],
    length: [],
    check: 'upper-arm-girth',
  },
  {
    id: 'wrist',
    spot: 'cuffOuter',
    width: [turn('cuff', fit('cuff')), turn('cuff', edge('sleeve', 'cuff'))],
    length: [turn('sleeveLength', edge('sleeve', 'front-underarm'), { sleeveLength: 1, underarmLength: 1 })],
    check: 'arm-length',
  },
  {
    id: 'chest',
    spot: 'chest',
    // Where the side leans as far as it may, the chest is as wide as the tummy leaves it.
    width: [turn('chest', fit('chest'), { chest: 1, inset: QUARTER }), turn('tummy', fit('chest'))],
    length: [],
    check: 'chest-girth',
  },
  {
    id: 'tummy',
    spot: 'tummy',
    width: [turn('tummy', fit('tummy'))],
    length: [],
    check: 'body-girth',
  },
  {
    id: 'waist',
    spot: 'waist',
    width: [turn('waist', fit('waist')), seat('waist')],
    length: [],
    check: 'waist-girth',
  },
  {
    id: 'seat',
    spot: 'hip',
    width: [seat('hip')],
    length: [turn('legRise', crotch, { legRise: 0.5, crotchSeam: 1 })],
    check: 'body-rise',
  },
  {
    id: 'leg-hem',
    spot: 'insideHem',
    width: [turn('legHem', edge('leg', 'hem')), turn('tubeHem', edge('leg', 'hem'))],
    length: [turn('legInside', inseam), turn('tubeLength', edge('leg', 'front-crotch'))],
    check: 'inside-leg-length',
  },
  {
    id: 'brim',
    spot: 'brimMiddle',
    width: [turn('hatRound', fit('brim'), { hatRound: 1, goreRound: 1 })],
    length: [turn('goreOver', (draft) => edge('gore', 'side')(draft) ?? edge('gore-front', 'side')(draft))],
    check: 'head-girth',
  },
  {
    id: 'over-arms',
    spot: 'upperArm',
    width: [turn('capeHem', fit('over-arms'), { capeHem: 0.5 })],
    length: [],
    check: 'over-arms-girth',
  },
  {
    id: 'hem',
    spot: 'hem',
    width: [turn('hem', fit('hem'))],
    length: [
      turn('skirtLength', edge('skirt-front', 'side')),
      turn('capeLength', edge('cape', 'centre'), { capeLength: 1, capeFront: 1 }),
      turn('frontLength', edge('front', 'centre'), { frontLength: 1, backLength: 1, sideLevel: 1 }),
    ],
    check: 'body-length',
  },
];

/** What can be said of a point on this draft. */
export function wrongsAt({ width, length }: TriedPoint, draft: Draft): readonly Wrong[] {
  const has = (turns: readonly Turn[]) => turns.some(({ measured }) => measured(draft) !== null);
  return wrongs.filter((wrong) => has(wrong === 'tight' || wrong === 'loose' ? width : length));
}

export const turnsFor = ({ width, length }: TriedPoint, wrong: Wrong): readonly Turn[] =>
  wrong === 'tight' || wrong === 'loose' ? width : length;
