import type { Mm } from '../../body';
import type { InnerLine, NotionKind, Ref, Seam } from '../draft-types';
import { clothOf, THICK_FROM_MM } from '../sizes/cloths';
import { after, before, isSewnOn } from './beside';
import { handOf } from './cloth-hand';
import { isEnclosed } from './enclosed';
import type { Kind, Note } from './guide-types';
import { isHollow, isRound } from './hollow';
import { hasRawEdge, isSelf, kindOf } from './kind';
import type { Known } from './known';
import { runsOverFold } from './runs';
import { bothSides } from './twice';

/** How near the stitches an allowance is snipped; what is left of a trimmed one (common practice, no source). */
const SNIP_TO_MM = 2;
const TRIM_TO_MM = 3;
/** Finished rounds shorter than this are hard to turn under a machine (common practice, no source). */
const SMALL_ROUND_MM = 160;

/** What a step must know beside its own seams. */
export type Standing = {
  /** The garment has been closed into a round before, or is at this step. */
  readonly closes: boolean;
  readonly closed: boolean;
  /** What is sewn already. */
  readonly done: readonly Seam[];
  /** What is sewn next. */
  readonly next: readonly Seam[];
};

/** What closes an opening, or lies over it. */
const closings: readonly NotionKind[] = ['hook-and-loop', 'zip', 'snaps', 'ribbon', 'buttons'];

const joined: readonly Kind[] = ['join', 'ease', 'gather', 'stretch', 'pleat', 'ring', 'dart-open', 'place'];
const seamed: readonly Kind[] = ['join', 'ease', 'gather', 'stretch', 'pleat', 'ring', 'dart-open'];

/** Some edge of what is sewn here is closed by hand, last: it is turned while that is open. */
const closesByHand = (refs: readonly Ref[], known: Known): boolean =>
  known.draft.seams.some(
    (seam) =>
      seam.join === 'laid' &&
      kindOf(seam, known) === 'by-hand' &&
      [...seam.first, ...seam.second].some(({ piece }) => refs.some((ref) => ref.piece === piece)),
  );

/** Two layers are turned out once all round them is sewn that is sewn from inside: how, by what is open still. */
function turning(
  kind: Kind,
  seams: readonly Seam[],
  { done, next, later }: Pick<Standing, 'done' | 'next'> & { readonly later: readonly Seam[] },
  known: Known,
): readonly string[] {
  const refs = seams.flatMap(({ first, second }) => [...first, ...second]);
  const pieces = new Set(refs.map(({ piece }) => piece));
  const within = ({ first, second }: Seam) => [...first, ...second].some(({ piece }) => pieces.has(piece));
  const fromInside = next.some((seam) => within(seam) && ['bag', 'slit'].includes(kindOf(seam, known)));
  const byGap = known.draft.seams.some((seam) => kindOf(seam, known) === 'gap');
  if ((kind !== 'bag' && kind !== 'slit') || fromInside) return [];
  if (closesByHand(refs, known)) return byGap ? [] : ['turn-flat'];
  if (kind === 'bag' && isTube(seams, later, known)) return ['turn-through'];
  return isOpenInside(pieces, [...done, ...seams], known) ? ['turn-inside'] : [];
}

/** All edges are sewn but some that are still to be stitched down, inside or on another piece. */
function isOpenInside(pieces: ReadonlySet<string>, sewn: readonly Seam[], known: Known): boolean {
  const left = known.draft.seams.filter((seam) => !sewn.some(({ name }) => name === seam.name));
  const inside = left.filter((seam) => ['inside', 'place'].includes(kindOf(seam, known)));
  const edges = [...pieces].flatMap((piece) =>
    known.piece(piece).edges.flatMap(({ name, role }) => (role === 'fold' ? [] : [{ piece, edge: name }])),
  );
  const open = edges.filter((ref) => !isSewnOn(ref, sewn));
  return open.length > 0 && open.every((ref) => isSewnOn(ref, inside));
}

/** How the free edge of a strip is stitched down. */
const stitchedInside: readonly Kind[] = ['inside', 'bind-over', 'turn-in'];

/** What to mind at a step, in the order it is done: before, while and after the stitches. */
export function notesOf(kind: Kind, seams: readonly Seam[], standing: Standing, known: Known): readonly Note[] {
  const cloth = clothOf(known.draft.order);
  const refs = seams.flatMap(({ first, second }) => [...first, ...second]);
  const edges = refs.flatMap((ref) => known.edge(ref) ?? []);
  const hollow = edges.some(({ path, allowance }) => allowance > SNIP_TO_MM && isHollow(path));
  const bulky = (cloth?.thickness ?? 0) >= THICK_FROM_MM;
  const allowed = edges.some(({ allowance }) => allowance > 0);
  const length = lengthOf(seams, known);
  const one = new Set(refs.map(({ piece }) => piece)).size === 1;
  const note = (when: boolean, code: string, values: Note['values'] = {}): Note[] => (when ? [{ code, values }] : []);
  // A narrow band's ends are turned as little as its edges, and close all the same.
  const closes = kind === 'closure' || kind === 'turn' ? closing(seams, known) : [];
  const turns = kind === 'hem' || kind === 'casing';
  const later = joinedLater(refs, [...standing.done, ...seams], known);
  const isRing = standing.closed && later.length === 0;
  const folds = turns || kind === 'turn' || kind === 'closure';
  const firm = handOf(known.draft.order.cloth).gives && (kind === 'dart' || kind === 'dart-open');
  return [
    ...note(firm, 'firm-dart'),
    ...note(standing.closes && seamed.includes(kind), 'try-closing'),
    ...note(kind === 'closure' || closes.length > 0, closes.includes('zip') ? 'try-zip' : 'try-closure'),
    ...closes.flatMap((each) => note(true, `close-${each}`)),
    ...zipEnds(kind, seams, known),
    ...note(turns && isRing && !standing.closes, 'try-hem'),
    ...note(kind === 'raw-hem', cloth?.frays === false ? 'raw-safe' : 'raw-frays'),
    ...note(kind === 'gather', 'two-threads'),
    ...note(kind === 'ease', 'ease-below'),
    ...note(kind === 'bind' && endsInCasing(refs, known), 'runs-on'),
    ...note(kind === 'gap', 'turn-out'),
    ...note(kind === 'gap' && isFilled(refs, known), 'fill'),
    ...note(kind === 'gap' && closesTurned(refs, known), 'close-turned'),
    ...note(bothSides(kind, seams, known), 'other-side'),
    ...note(kind === 'hem' && refs.some(({ piece }) => known.piece(piece).lines.some(isShorter)), 'one-shorter'),
    ...note(kind === 'hem' && isRing && one && length < SMALL_ROUND_MM, 'small-round'),
    ...note(kind === 'bag' || (bulky && allowed && seamed.includes(kind)), 'trim', { to: TRIM_TO_MM }),
    ...note((kind === 'bag' || seamed.includes(kind)) && hollow, 'snip', { to: SNIP_TO_MM }),
    ...note(kind === 'bag' && edges.some(({ path }) => isRound(path)), 'notch-out'),
    ...note(kind === 'bag' && isFacing(refs, known), 'understitch', { from: SNIP_TO_MM }),
    ...turning(kind, seams, { ...standing, later }, known).flatMap((code) => note(true, code)),
    ...note(
      seamed.includes(kind) && (cloth?.frays ?? false) && !seams.every((each) => isEnclosed(each, known)),
      'overcast',
    ),
    ...note(
      stitchedInside.includes(kind) && holdsElastic(seams, known),
      isLoop(refs, known) ? 'elastic-round' : 'elastic',
    ),
    ...note(
      joined.includes(kind) || folds,
      handOf(known.draft.order.cloth).heat === 'never' ? 'finger-press' : 'press',
    ),
    ...note(
      standing.next.length === 0 && (closesInside(known) || closesAtNeck(known)),
      isTied(known) ? 'tie-turned' : 'close-turned',
    ),
    ...note(standing.next.length === 0 && hasLoop(known), 'slit-loop'),
  ];
}

/** Where the shorter of two limbs' pieces ends. */
const isShorter = ({ name }: InnerLine) => name === 'shorter-end';

/** A strip whose ends are turned down with a casing. */
const endsInCasing = (refs: readonly Ref[], { isStrip, piece }: Known): boolean =>
  refs.some((ref) => isStrip(ref.piece) && piece(ref.piece).edges.some(({ role }) => role === 'casing'));

/** A strip whose own ends are joined to each other. */
const isLoop = (refs: readonly Ref[], { draft }: Known): boolean =>
  draft.seams.some(
    (seam) => isSelf(seam) && seam.join === 'sewn' && refs.some(({ piece }) => piece === seam.first[0]?.piece),
  );

/** An elastic lies between a strip and what it is stitched to, where a notion is placed at the strip. */
function holdsElastic(seams: readonly Seam[], { draft }: Known): boolean {
  return draft.notions.some(
    ({ kind, place }) => kind === 'elastic' && seams.some(({ name }) => name === place || name.startsWith(`${place}-`)),
  );
}

/** What closes these edges, and what is sewn on over that. */
function closing(seams: readonly Seam[], { draft }: Known): readonly string[] {
  const here = draft.notions.filter(({ place }) => seams.some(({ name }) => name === place));
  return here.map(({ kind }) => kind).filter((kind) => closings.includes(kind));
}

/** A pillow. */
const isFilled = (refs: readonly Ref[], { draft }: Known): boolean =>
  draft.notions.some(({ kind, place }) => kind === 'filling' && refs.some(({ piece }) => piece === place));

/** What closes it goes on an edge that was turned right side out here. */
const closesTurned = (refs: readonly Ref[], known: Known): boolean =>
  known.draft.seams.some(
    (seam) =>
      closing([seam], known).length > 0 &&
      kindOf(seam, known) === 'bag' &&
      seam.first.some(({ piece }) => refs.some((ref) => ref.piece === piece)),
  );

/** What closes an opening has no fold to be sewn to where that is lined: it is sewn on once all is turned. */
const closesInside = ({ draft }: Known): boolean =>
  draft.notions.some(({ kind, place }) => closings.includes(kind) && !draft.seams.some(({ name }) => name === place));

/** Its hemmed fronts lap no farther than at the neck, as a cape's do: they are closed there once that is finished. */
export const closesAtNeck = (known: Known): boolean =>
  known.draft.notions.some(
    ({ kind, place }) =>
      closings.includes(kind) && known.draft.seams.some((seam) => seam.name === place && kindOf(seam, known) === 'hem'),
  );

/** Ribbons lap nowhere: they are tied. */
const isTied = ({ draft }: Known): boolean => draft.notions.some(({ kind }) => kind === 'ribbon');

/** A slit's button and loop are no step: they are sewn on when all else is. */
const hasLoop = ({ draft }: Known): boolean => draft.notions.some(({ kind }) => kind === 'loop');

/** How far the teeth of a zip stay from what is sewn on at the neck, and, where rib is, at the hem. */
function zipEnds(kind: Kind, seams: readonly Seam[], known: Known): readonly Note[] {
  const { draft, edge } = known;
  const zip = draft.notions.find((each) => each.kind === 'zip' && seams.some(({ name }) => name === each.place));
  const opening = seams.flatMap(({ first }) => first).map((ref) => edge(ref)?.length ?? 0);
  if (kind !== 'closure' || !zip) return [];
  const both = seams.flatMap(({ first }) => first).some((ref) => isSewnOn(before(ref, known), draft.seams));
  const left = Math.max(...opening) - zip.length;
  return [{ code: both ? 'zip-ends-both' : 'zip-ends', values: { by: both ? left / 2 : left } }];
}

/** Seams that are still to join what lies beside these edges: until then they lie flat. */
function joinedLater(refs: readonly Ref[], sewn: readonly Seam[], known: Known): readonly Seam[] {
  const beside = refs.flatMap((ref) => (known.edge(ref) ? [before(ref, known), after(ref, known)] : []));
  const later = known.draft.seams.filter(({ name }) => !sewn.some((each) => each.name === name));
  return later.filter(
    (seam) => ['join', 'ring'].includes(kindOf(seam, known)) && beside.some((ref) => isSewnOn(ref, [seam])),
  );
}

/** What is turned here ends at an opening, at an edge that is bound, or at a seam still to be sewn: it lies flat. */
export const isFlat = (refs: readonly Ref[], sewn: readonly Seam[], known: Known): boolean =>
  refs
    .flatMap((ref) => [before(ref, known), after(ref, known)])
    .some(
      (ref) =>
        known.edge(ref)?.role !== 'fold' &&
        (known.edge(ref)?.role === 'edge' || !isSewnOn(ref, sewn)) &&
        !refs.some(({ piece, edge }) => piece === ref.piece && edge === ref.edge),
    );

/** Two layers sewn on both sides of a shoulder that is closed, their sides open: a half that opens can still be pulled through. */
const isTube = (seams: readonly Seam[], later: readonly Seam[], known: Known): boolean =>
  later.length > 0 &&
  seams.some(({ first }) => {
    const pieces = new Set(first.map(({ piece }) => piece));
    return pieces.size > 1 && [...pieces].some((name) => known.piece(name).mirrored);
  });

/** Stitched to a piece that ends within the garment: one of its own edges is left as cut or stitched down. */
function isFacing(refs: readonly Ref[], known: Known): boolean {
  const names = [...new Set(refs.map((ref) => ref.piece))];
  const gaps = known.draft.seams.some(
    (seam) => kindOf(seam, known) === 'gap' && seam.first.some((ref) => names.includes(ref.piece)),
  );
  return names.length > 1 && !gaps && names.some((name) => hasRawEdge(known.piece(name), known));
}

/** How long the stitches are at one place, mm: over the middle, both halves. */
export function lengthOf(seams: readonly Seam[], known: Known): Mm {
  return seams.reduce(
    (sum, seam) => sum + seam.firstLength * (seam.sewn === 2 && runsOverFold(seam, known) ? 2 : 1),
    0,
  );
}
