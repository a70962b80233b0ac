import type { Seam, SewingStep } from '../draft-types';
import type { Drawing } from '../drawing/draw';
import type { AnyNames, SeamRow } from '../rows/rows';
import { inOneGo } from './one-go';
import { type Sewn, sewnOf } from './sewn';

const verbs: Readonly<Record<Seam['join'], string>> = {
  sewn: 'sew',
  eased: 'ease',
  gathered: 'gather',
  stretched: 'stretch',
  pleated: 'pleat',
  laid: 'lay',
  folded: 'turn',
};

/**
 * The order of sewing, worked out from the seams alone. A seam that crosses another comes first; a seam that closes a
 * piece into a tube comes after what is sewn along the tube's end while it still lies flat; what is turned back, or
 * stitched down over a seam, comes after the seams that end there; but what is sewn over the end of a fold comes after it. A
 * piece sewn to its own other half is made up before it is joined to others, unless it lies along an end that is still flat.
 * Darts come before all that touches their piece, what is laid on a piece is made ready while that lies flat, and a slit is faced
 * as soon as the seam above it is sewn. Of several
 * that may come next, one that joins pieces not yet joined is sewn before one that closes a ring; other ties keep the order of
 * the rows, and what a row says itself goes before all this.
 */
export function sewingOrder(
  seams: readonly Seam[],
  rows: readonly SeamRow<AnyNames>[],
  drawing: Drawing,
): SewingStep[] {
  const after = new Map(rows.map((row) => [row.name, row.after?.(drawing.choices, drawing.sizes) ?? []]));
  const goes = inOneGo(seams, rows);
  const all = goes.map(({ seam }) => sewnOf(seam, after.get(seam.name) ?? [], drawing));
  const before = new Map(
    all.map((late) => [late, all.filter((early) => early !== late && comesBefore(early, late, all))]),
  );
  const left = [...all];
  const steps: SewingStep[] = [];
  const joined = new Map<string, string>();
  while (left.length > 0) {
    const ready = left.filter((sewn) => !before.get(sewn)?.some((early) => left.includes(early)));
    const next =
      ready.find((sewn) => sewn.dart || sewn.slit) ??
      ready.find((sewn) => joins(sewn, joined)) ??
      ready.find((sewn) => sewn.inside) ??
      ready.find((sewn) => left.some((other) => other.inside && before.get(other)?.includes(sewn))) ??
      ready.find((sewn) => !sewn.finishes) ??
      ready[0] ??
      left[0];
    if (!next) break;
    left.splice(left.indexOf(next), 1);
    steps.push({ step: verbs[next.seam.join], seams: goes[all.indexOf(next)]?.names ?? [] });
    join(next, joined);
  }
  return steps;
}

/** The piece that stands for everything a piece is joined to so far. */
function groupOf(piece: string, joined: ReadonlyMap<string, string>): string {
  const to = joined.get(piece);
  return to === undefined ? piece : groupOf(to, joined);
}

function groupsOf({ pieces }: Sewn, joined: ReadonlyMap<string, string>): string[] {
  return [...new Set(pieces.map((piece) => groupOf(piece, joined)))];
}

function joins(sewn: Sewn, joined: ReadonlyMap<string, string>): boolean {
  return groupsOf(sewn, joined).length > 1;
}

function join(sewn: Sewn, joined: Map<string, string>): void {
  const [whole, ...others] = groupsOf(sewn, joined);
  for (const other of others) if (whole !== undefined) joined.set(other, whole);
}

function comesBefore(early: Sewn, late: Sewn, all: readonly Sewn[]): boolean {
  if (late.after.includes(early.seam.name)) return true;
  if (early.after.includes(late.seam.name)) return false;
  if (late.dart) return false;
  if (early.dart) return touches(early, late);
  if (early.inside) return !late.inside && !hemsOf(late, early) && touches(early, late);
  if (late.inside) return hemsOf(early, late);
  if (early.finishes && late.finishes) return early.closure && endsOver(late, early);
  if (endsOver(early, late)) return false;
  if (late.finishes) return late.chains.some(({ around }) => around.some((edge) => holds(early, edge)));
  if (early.finishes) return endsOver(late, early) || isHemOfPleats(early, late);
  if (early.mirrored !== late.mirrored && late.pieces.some((piece) => early.pieces.includes(piece))) {
    const [own, other] = early.mirrored ? [early, late] : [late, early];
    const flat = all.some((sewn) => sewn !== own && closes(sewn, other));
    return flat !== early.mirrored;
  }
  return crosses(early, late) || closes(late, early) || all.some((other) => closesRound(late, early, other));
}

const holds = ({ first, second }: Sewn, edge: string) => first.has(edge) || second.has(edge);
const pairs = ({ first, second }: Sewn, [a, b]: readonly [string, string]) =>
  (first.has(a) && second.has(b)) || (first.has(b) && second.has(a));

/** Joins the two edges that meet where the other passes from one piece to the next, or to its own mirror. */
function crosses(sewn: Sewn, other: Sewn): boolean {
  return other.chains.some(
    ({ joints, ends }) =>
      joints.some((joint) => pairs(sewn, joint)) || (sewn.mirrored && pairs(sewn, [ends[1], ends[1]])),
  );
}

/** Joins the far ends of one side of the other: sewn first, it would close that side into a ring. */
function closes(sewn: Sewn, other: Sewn): boolean {
  return other.chains.some(({ ends }) => pairs(sewn, ends));
}

/**
 * Sewn first, it would close two pieces into a ring round a third that either is sewn to along its end: a side under a
 * raglan sleeve.
 */
function closesRound(sewn: Sewn, one: Sewn, other: Sewn): boolean {
  if (one === other || sewn === other || other.finishes) return false;
  const across = ({ chains }: Sewn, at: ReadonlySet<string>) =>
    chains.find(({ ends }) => ends.some((end) => at.has(end)))?.across;
  const round = (a: ReadonlySet<string>, b: ReadonlySet<string>) => {
    const third = across(one, a);
    return third !== undefined && !sewn.pieces.includes(third) && third === across(other, b);
  };
  return round(sewn.first, sewn.second) || round(sewn.second, sewn.first);
}

/**
 * Ends where an edge turned by the other begins, and that edge does not run on across the seam as a hem does: a neck is bound
 * over the fold of an opening, a hood sewn on once its face is hemmed.
 */
function endsOver({ chains }: Sewn, { turned }: Sewn): boolean {
  const met = [0, 1].map((end) => chains.filter(({ ends }) => turned.has(ends[end] ?? '')).length);
  return met.includes(1) && !met.includes(2);
}

/** A hem is turned while it lies flat, before pleats are laid above it. */
function isHemOfPleats({ seam, pieces }: Sewn, late: Sewn): boolean {
  const pleated = late.seam.join === 'pleated' ? late.seam.second.map(({ piece }) => piece) : [];
  return seam.join === 'folded' && pieces.every((piece) => pleated.includes(piece));
}

/** Turns back an edge of what is to be laid on another piece. */
function hemsOf({ seam }: Sewn, laid: Sewn): boolean {
  const pieces = laid.seam.second.map((ref) => ref.piece);
  return seam.join === 'folded' && seam.first.every((ref) => pieces.includes(ref.piece));
}

/** A laid piece is stitched while its ground still lies flat. */
function touches(early: Sewn, late: Sewn): boolean {
  return early.seam.first.some((ref) => late.pieces.includes(ref.piece));
}
