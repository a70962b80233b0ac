import type { Draft, Edge, Piece, Ref, Seam } from '../../app/drafting/draft-types';
import { endTangent, startTangent } from '../../app/drafting/geometry';

/** A sewn seam matches within this; an eased one is 0–3 % (drafting: what always holds, 2). */
const SEWN_MM = 0.05;
const MOST_EASED = 1.03;
const RATIO = 1e-6;
/** Corners of a trued joint add to 180° ± 3°. */
const SMOOTH = (3 * Math.PI) / 180;
/** Joints that need not run on: the hood's chin and every gathered, pleated, laid or folded edge. */
const CORNERED = [
  'hood-neck-front',
  'hood-neck-back',
  'collar-neck',
  'facing-neck',
  'collar-end',
  'bib-end',
  'bag-round',
];
/** A diamond's points lie at an angle, and gores meet in one. */
const POINTED = /^(gusset-(front|back)|gores|gore-(front|back)|ear-(above|below))$/;
/** A lining is sewn edge on edge to its twin. */
const TWINS = /^lining-(neck|armhole|hem|top|front|back)$/;
/** Beside these a seam ends at an opening or a closure: nothing runs on. */
const ENDS: readonly string[] = ['opening', 'closure'];
const SAME_SHARE = 1e-6;

/** What is broken in the seams of a draft, judged from its pieces alone. */
export function brokenSeams(draft: Draft): string[] {
  const pieces = new Map(draft.pieces.map((piece) => [piece.name, piece]));
  return [
    ...draft.seams.flatMap((seam) => [...brokenSeam(seam, pieces), ...unpaired(seam, pieces)]),
    ...unlikeSides(draft),
    ...order(draft),
    ...strayNotches(draft),
  ];
}

function brokenSeam(seam: Seam, pieces: ReadonlyMap<string, Piece>): string[] {
  const said = (fault: string) => [`seam ${seam.name}: ${fault}`];
  const missing = [...seam.first, ...seam.second].filter((ref) => lengthOf(ref, pieces) === undefined);
  if (missing.length > 0) return said(`names no edge ${missing.map((ref) => `${ref.piece}.${ref.edge}`)}`);
  const [first, second] = [sum(seam.first, pieces), sum(seam.second, pieces)];
  if (Math.abs(first - seam.firstLength) > SEWN_MM) return said(`first is ${first}, said ${seam.firstLength}`);
  if (seam.join === 'folded') return seam.second.length > 0 ? said('is folded onto something') : [];
  if (Math.abs(second - seam.secondLength) > SEWN_MM) return said(`second is ${second}, said ${seam.secondLength}`);
  const ratio = second / first;
  if (seam.join === 'sewn' && Math.abs(second - first) > SEWN_MM) return said(`sewn, but ${first} to ${second}`);
  if (seam.join === 'eased' && (ratio < 1 || ratio > MOST_EASED)) return said(`eased by ${ratio}`);
  if (['gathered', 'pleated', 'stretched'].includes(seam.join) && (ratio < 1 || Math.abs(ratio - seam.ratio) > RATIO))
    return said(`${seam.join} by ${ratio}`);
  return seam.join === 'sewn' || seam.join === 'eased' ? corners(seam, pieces) : [];
}

function corners(seam: Seam, pieces: ReadonlyMap<string, Piece>): string[] {
  if (CORNERED.includes(seam.name) || TWINS.test(seam.name) || POINTED.test(seam.name)) return [];
  return (['start', 'end'] as const).flatMap((side) => {
    if (isPoint(seam, side, pieces)) return [];
    const [ours, theirs] = [seam.first, seam.second].map((refs) =>
      corner(side === 'start' ? refs[0] : refs[refs.length - 1], side, pieces),
    );
    const off = (ours ?? 0) + (theirs ?? 0) - Math.PI;
    const straight = [ours, theirs].every((angle) => Math.abs((angle ?? 0) - Math.PI) < SMOOTH);
    const ends = [seam.first, seam.second].some((refs) =>
      beside(side === 'start' ? refs[0] : refs[refs.length - 1], side, pieces).some((edge) => ENDS.includes(edge.role)),
    );
    return Math.abs(off) > SMOOTH && !straight && !ends
      ? [`seam ${seam.name}: its ${side} is bent by ${((off * 180) / Math.PI).toFixed(1)}°`]
      : [];
  });
}

/** A dart ends where its own two edges meet. */
function isPoint({ first, second }: Seam, side: 'start' | 'end', pieces: ReadonlyMap<string, Piece>): boolean {
  const names = [...first, ...second].map(({ piece, edge }) => `${piece}.${edge}`);
  const met = beside(side === 'start' ? first[0] : first[first.length - 1], side, pieces);
  return met.length > 0 && met.every(({ name }) => names.includes(`${first[0]?.piece}.${name}`));
}

/** Interior angle of the piece where a chain starts or ends, by turning from one edge to the next. */
function corner(ref: Ref | undefined, side: 'start' | 'end', pieces: ReadonlyMap<string, Piece>): number {
  const [before, after] = beside(ref, side, pieces);
  if (!before || !after) return Number.NaN;
  const [arriving, leaving] = [endTangent(before.path), startTangent(after.path)];
  const turn = Math.atan2(
    arriving.x * leaving.y - arriving.y * leaving.x,
    arriving.x * leaving.x + arriving.y * leaving.y,
  );
  return Math.PI - turn;
}

/** The edges that meet where a chain starts or ends, in the order of the ring. */
function beside(ref: Ref | undefined, side: 'start' | 'end', pieces: ReadonlyMap<string, Piece>): readonly Edge[] {
  const edges = (ref && pieces.get(ref.piece)?.edges) ?? [];
  const at = edges.findIndex((edge) => edge.name === ref?.edge);
  const atStart = (side === 'start') !== Boolean(ref?.back);
  const [before, after] = [
    edges[atStart ? (at + edges.length - 1) % edges.length : at],
    edges[atStart ? at : (at + 1) % edges.length],
  ];
  return before && after ? [before, after] : [];
}

function lengthOf(ref: Ref, pieces: ReadonlyMap<string, Piece>): number | undefined {
  const piece = pieces.get(ref.piece);
  return [...(piece?.edges ?? []), ...(piece?.lines ?? [])].find((each) => each.name === ref.edge)?.length;
}

function sum(refs: readonly Ref[], pieces: ReadonlyMap<string, Piece>): number {
  return refs.reduce((total, ref) => total + (lengthOf(ref, pieces) ?? Number.NaN) * (ref.times ?? 1), 0);
}

/** A side is as long in front as behind, unless the draft says that one of them is gathered in. */
function unlikeSides(draft: Draft): string[] {
  const said = draft.adjustments.some((each) => each.code === 'side-gathered');
  return draft.seams
    .filter(
      (seam) =>
        PARTNERS.includes(seam.name) &&
        seam.join !== 'sewn' &&
        !said &&
        seam.secondLength - seam.firstLength > UNSAID_MM,
    )
    .map((seam) => `seam ${seam.name}: ${seam.firstLength} to ${seam.secondLength}, and nothing says why`);
}

/** Seams whose two edges are partners; less than this much is no news to the maker. */
const PARTNERS = ['side', 'shoulder', 'underarm', 'skirt-side', 'hood-crown'];
const UNSAID_MM = 0.55;

/** Every seam is sewn once, and every edge with the role of a seam is in one. */
function order(draft: Draft): string[] {
  const sewn = draft.sewing.flatMap((step) => step.seams).sort();
  const named = draft.seams.map((seam) => seam.name).sort();
  const used = new Set(
    draft.seams.flatMap((seam) => [...seam.first, ...seam.second].map((ref) => `${ref.piece}.${ref.edge}`)),
  );
  const loose = draft.pieces.flatMap((piece) =>
    piece.edges
      .filter((edge) => edge.role === 'seam' && !used.has(`${piece.name}.${edge.name}`))
      .map((edge) => `${piece.name}.${edge.name} is sewn to nothing`),
  );
  return [...(sewn.join() === named.join() ? [] : ['the order of sewing does not name every seam once']), ...loose];
}

function strayNotches(draft: Draft): string[] {
  return draft.pieces.flatMap((piece) =>
    piece.notches
      .filter((notch) => {
        const edge = piece.edges.find((each) => each.name === notch.edge);
        return !edge || !(notch.at >= -SAME_SHARE) || notch.at > edge.length + SAME_SHARE;
      })
      .map((notch) => `${piece.name}: a notch beside its edge ${notch.edge}`),
  );
}

/** How far apart two paired notches may come to lie when their edges are laid together, mm. */
const NOTCH_MM = 0.02;

/** Every notch on one chain meets a notch, or the end of an edge, at the same share of the other. */
function unpaired(seam: Seam, pieces: ReadonlyMap<string, Piece>): string[] {
  if (seam.join === 'folded' || seam.join === 'laid') return [];
  const [first, second] = [marksOf(seam.first, pieces), marksOf(seam.second, pieces)];
  const alone = [
    ...first.notches.filter((share) => ![...second.notches, ...second.ends].some((each) => near(each, share, seam))),
    ...second.notches.filter((share) => ![...first.notches, ...first.ends].some((each) => near(each, share, seam))),
  ];
  return alone.map((share) => `seam ${seam.name}: a notch at ${share.toFixed(4)} of it meets nothing`);
}

function near(a: number, b: number, seam: Seam): boolean {
  return Math.abs(a - b) * seam.firstLength < NOTCH_MM;
}

type Marks = { readonly notches: readonly number[]; readonly ends: readonly number[] };

/** Where along a chain its notches and its edges' ends lie, as shares of it, walked in order. */
function marksOf(refs: readonly Ref[], pieces: ReadonlyMap<string, Piece>): Marks {
  const whole = refs.reduce((total, ref) => total + (lengthOf(ref, pieces) ?? 0), 0);
  const notches: number[] = [];
  const ends: number[] = [0];
  let walked = 0;
  for (const ref of refs) {
    const length = lengthOf(ref, pieces) ?? 0;
    for (const notch of pieces.get(ref.piece)?.notches ?? []) {
      if (notch.edge === ref.edge) notches.push((walked + (ref.back ? length - notch.at : notch.at)) / whole);
    }
    walked += length;
    ends.push(walked / whole);
  }
  return { notches, ends };
}
