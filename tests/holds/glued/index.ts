// What must hold of a garment once it is sewn, judged by gluing a draft's pieces along its seams: one surface, no edge
// sewn twice, as many openings as such a garment has, points that lie flat, edges that cross seams without step or corner.

import type { Draft, Seam } from '../../../app/drafting/draft-types';
import { looseEdges } from '../loose';
import { chainsOf, type Joint, layeredIn } from './chains';
import { halvesOf } from './halves';
import { gluing, handsOf, isSelf } from './hands';
import { openingsOf } from './openings';
import { flatness } from './places';
import { glue } from './surface';

/** `code` is what is wrong, `where` the edge or seam, `told` the numbers. */
export type Fault = { readonly code: string; readonly where: string; readonly told: string };

/** Two edges sewn as they are end together, mm; beyond this the edges they meet show a step. */
const STEP_MM = 0.2;
/** Places where seams meet others on both sides of a seam: half a millimetre is the width of a pencil line. */
const JOINT_MM = 0.5;
/** A hood's strip is sewn beside its side, the shoulder's seam lies where it will. */
const APART: readonly string[] = ['hood-neck-front', 'hood-neck-back'];
const SAME_ALLOWANCE_MM = 0.01;

export function gluedFaults(draft: Draft): Fault[] {
  const halves = halvesOf(draft);
  const { seams, twice } = onceEach(gluing(draft), draft);
  const { hands, twisted } = handsOf(seams);
  const { joints, rings, missing } = chainsOf(seams, halves, hands);
  const { surfaces, badRings } = glue(halves, joints, rings);
  const main = surfaces.filter(({ halves: own }) => own.some((half) => half.piece === draft.pieces[0]));
  const rims = main.reduce((sum, surface) => sum + surface.rims.length, 0);
  const wanted = openingsOf(draft);
  // Two layers joined at more than one ring.
  const lined = draft.pieces.some((piece) => piece.name.endsWith('lining')) || draft.order.choices.neck === 'in-one';
  const layered = layeredIn(seams, halves);
  return [
    ...looseEdges(draft).map((where) => ({ code: 'raw', where, told: 'ends without a finish' })),
    ...twice.map((where) => ({ code: 'sewn-twice', where, told: 'is in two seams' })),
    ...twisted.map((where) => ({ code: 'twisted', where, told: 'joins a right side to a wrong one' })),
    ...missing.map((told) => ({ code: 'copies', where: told.split(':')[0] ?? '', told })),
    ...uncounted(seams, draft, layered),
    ...badRings.map((where) => ({ code: 'ring', where, told: 'does not go round' })),
    ...(wanted === rims
      ? []
      : [
          {
            code: 'openings',
            where: draft.order.garment,
            told: `${rims} where ${wanted ?? 'nobody says how many'} belong`,
          },
        ]),
    ...main
      .filter(({ handles }) => !lined && handles !== 0)
      .map(({ handles }) => ({ code: 'handles', where: draft.order.garment, told: `${handles} of them` })),
    ...joints.flatMap(steps),
    ...seams.flatMap((seam) => unequalAllowances(seam, draft)),
    ...main.flatMap((surface) => flatness(surface, layered)),
  ];
}

/** An edge is in one seam: what is caught between two others (a turned collar under a facing) is not glued a second time. */
function onceEach(all: readonly Seam[], draft: Draft) {
  const layered = layeredIn(all, halvesOf(draft));
  const keys = ({ first, second }: Seam) => [...first, ...second].map((ref) => `${ref.piece}.${ref.edge}`);
  const shared = (seam: Seam) =>
    all.some((other) => other !== seam && keys(other).some((key) => keys(seam).includes(key)));
  const caught = all.filter(
    (seam) => !isSelf(seam) && shared(seam) && [...seam.first, ...seam.second].some((ref) => layered.has(ref.piece)),
  );
  const seams = all.filter((seam) => !caught.includes(seam));
  const used = seams.flatMap((seam) => [...new Set(keys(seam))]);
  return { seams, twice: [...new Set(used.filter((key, at) => used.indexOf(key) < at))] };
}

/** Every copy of a sewn edge is sewn: a pair left and right, a strip once, a layer with the other. */
function uncounted(seams: readonly Seam[], draft: Draft, layered: ReadonlySet<string>): Fault[] {
  return draft.pieces.flatMap((piece) => {
    const copies = piece.copies * (piece.onFold ? 2 : 1);
    return piece.edges.flatMap((edge) => {
      const uses = seams.flatMap((seam) =>
        [...seam.first, ...seam.second]
          .filter((ref) => ref.piece === piece.name && ref.edge === edge.name)
          .map((ref) => seam.sewn * (ref.times ?? 1)),
      );
      const sewn = uses.reduce((sum, each) => sum + each, 0);
      const fine = uses.length === 0 || sewn === copies || (layered.has(piece.name) && sewn === copies / 2);
      return fine ? [] : [{ code: 'copies', where: `${piece.name}.${edge.name}`, told: `${copies} cut, ${sewn} sewn` }];
    });
  });
}

/** Chains sewn as they are end together; where as many seams meet this one on both sides, they meet each other. */
function steps({ seam, one, two }: Joint): Fault[] {
  const [ours, theirs] = [walked(one), walked(two)];
  const step = Math.abs(ours.length - theirs.length);
  if (seam.join === 'sewn' && step > STEP_MM)
    return [{ code: 'step', where: seam.name, told: `${step.toFixed(2)} mm` }];
  if (ours.seams.length !== theirs.seams.length || APART.includes(seam.name) || !['sewn', 'eased'].includes(seam.join))
    return [];
  const scale = ours.length / theirs.length;
  const apart = Math.max(0, ...ours.seams.map((each, n) => Math.abs(each - (theirs.seams[n] ?? 0) * scale)));
  return apart > JOINT_MM ? [{ code: 'seams-apart', where: seam.name, told: `${apart.toFixed(2)} mm` }] : [];
}

/** A chain's length, and where along it one edge ends and another begins; a strip's fold is no such place. */
function walked(chain: Joint['one']): { readonly length: number; readonly seams: readonly number[] } {
  let length = 0;
  const seams: number[] = [];
  chain.forEach(({ half, side }, n) => {
    const before = chain[n - 1];
    if (before && (before.half.piece !== half.piece || before.side !== side)) seams.push(length);
    length += half.sides.find((each) => each.name === side)?.length ?? 0;
  });
  return { length, seams };
}

/** Sewn edge on edge, both have the same allowance. */
function unequalAllowances(seam: Seam, draft: Draft): Fault[] {
  const widths = [...seam.first, ...seam.second].flatMap((ref) => {
    const edge = draft.pieces.find((piece) => piece.name === ref.piece)?.edges.find((each) => each.name === ref.edge);
    return edge ? [edge.allowance] : [];
  });
  const [least, most] = [Math.min(...widths), Math.max(...widths)];
  return widths.length > 0 && most - least > SAME_ALLOWANCE_MM
    ? [{ code: 'allowances', where: seam.name, told: `${least} to ${most} mm` }]
    : [];
}
