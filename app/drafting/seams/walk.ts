import type { Mm } from '../../body';
import type { Join, Notch, Seam } from '../draft-types';
import { chainCorners, chainLength } from '../drawing/chain';
import type { Drawing } from '../drawing/draw';
import { type Garment, refsOf, seamsIn } from '../rows/garment';
import type { AnyNames, SeamRow as Row } from '../rows/rows';

type SeamRow = Row<AnyNames>;

import { notchesOf } from './notches';

/** Two edges sewn as they are may differ by this much: the width of a pencil line is ten times it. */
export const SEAM_MATCH_MM = 0.05;
/** What a seam can ease in without a gather, as a ratio (common practice, no source). */
export const MOST_EASED = 1.03;
/** A ratio solved for a limit may miss it by this. */
const EASED_EXACT = 2e-5;
/** How far two corners that are joined may be off a straight run, radians: three degrees. */
const SMOOTH = (3 * Math.PI) / 180;

/** Something the walk found wrong: always our own fault, never the maker's. */
export type Defect = { readonly seam: string; readonly code: 'lengths' | 'corner' | 'shorter'; readonly by: number };

export type Walked = {
  readonly seams: readonly Seam[];
  readonly notches: ReadonlyMap<string, readonly Notch[]>;
  readonly defects: readonly Defect[];
};

/** Walks every edge beside the edge it is sewn to: lengths, joins, paired notches, and corners that run on smoothly. */
export function walk(garment: Garment, drawing: Drawing): Walked {
  const rows = seamsIn(garment, drawing);
  const seams = rows.map((row) => seamOf(row, drawing));
  const notches = new Map<string, Notch[]>();
  rows.forEach((row, index) => {
    const seam = seams[index];
    if (!seam || row.kind) return;
    for (const { piece, notch } of notchesOf(seam, drawing, row.tellsFront)) {
      const there = notches.get(piece) ?? [];
      if (!there.some((each) => each.edge === notch.edge && Math.abs(each.at - notch.at) < SEAM_MATCH_MM))
        there.push(notch);
      notches.set(piece, there);
    }
  });
  return { seams, notches, defects: rows.flatMap((row, index) => defectsOf(row, seams[index], drawing)) };
}

function seamOf(row: SeamRow, drawing: Drawing): Seam {
  const [ours, theirs] = [refsOf(row.first, drawing), refsOf(row.second, drawing)];
  const [one, two] = [chainLength(ours, drawing), chainLength(theirs, drawing)];
  // What is laid is always the second: it has nothing to ease in.
  const swapped = !row.kind && theirs.length > 0 && one > two + SEAM_MATCH_MM;
  const [first, second] = swapped ? [theirs, ours] : [ours, theirs];
  const [firstLength, secondLength] = swapped ? [two, one] : [one, two];
  const ratio = theirs.length > 0 ? Math.max(secondLength / firstLength, 1) : 1;
  return {
    name: row.name,
    join: joinOf(row, firstLength, secondLength, drawing),
    sewn: row.sewn,
    first,
    second,
    firstLength,
    secondLength,
    ratio,
  };
}

function joinOf(row: SeamRow, first: Mm, second: Mm, { choices, wearer }: Drawing): Join {
  if (row.kind) return row.kind;
  if (Math.abs(second - first) <= SEAM_MATCH_MM) return 'sewn';
  const longer = typeof row.longer === 'function' ? row.longer(choices) : row.longer;
  return second / first <= 1 + wearer.cloth.easesIn + EASED_EXACT ? 'eased' : (longer ?? 'eased');
}

function defectsOf(row: SeamRow, seam: Seam | undefined, drawing: Drawing): Defect[] {
  if (!seam || row.kind === 'folded') return [];
  const over = seam.ratio - MOST_EASED;
  if (seam.join === 'eased' && over > 1e-9)
    return [{ seam: row.name, code: 'lengths', by: seam.secondLength - seam.firstLength }];
  if (row.kind || row.cornered || (seam.join !== 'sewn' && seam.join !== 'eased')) return [];
  const [ours, theirs] = [chainCorners(seam.first, drawing), chainCorners(seam.second, drawing)];
  // A dart runs on across its mouth alone: it ends in a point.
  return (row.openDart ? [0] : [0, 1]).flatMap((end) => {
    const [one = 0, two = 0] = [ours[end], theirs[end]];
    const off = one + two - Math.PI;
    return Math.abs(off) > SMOOTH && !(straight(one) && straight(two))
      ? [{ seam: row.name, code: 'corner' as const, by: off }]
      : [];
  });
}

/** A seam that ends where both edges run straight on, as at an opening, bends nothing. */
function straight(angle: number): boolean {
  return Math.abs(angle - Math.PI) < SMOOTH;
}
