import { type Body, estimate, findMeasure, type Known, type Measure, type MeasureId, type View } from '../body';
import { viewOf } from './figure';
import { followers } from './follows';

/** One thing to measure or to choose. Steps keep their place whatever is done, so that a resumed plan is the same plan. */
export type Step = {
  readonly measure: MeasureId;
  /** The side of the toy that faces the maker. */
  readonly view: View;
  /** The toy is turned before this step; never for a wish, which needs no tape. */
  readonly turn: boolean;
  readonly state: 'open' | 'done' | 'skipped';
  /** What a wish may well be, from the measures so far; null for what only the tape can say, or while nothing is known. */
  readonly suggested: Known | null;
};

export type Plan = {
  readonly steps: readonly Step[];
  /** How often the toy is turned over or round. */
  readonly turns: number;
  /** Needed, and exactly worked out from what the steps give. */
  readonly worksOut: readonly MeasureId[];
};

/**
 * What has been answered already; measures the body has from tape or photo count as done without being named. `believed`
 * is the body as far as nothing speaks against its readings: what is suggested is built on that.
 */
export type Progress = {
  readonly done?: readonly MeasureId[];
  readonly skipped?: readonly MeasureId[];
  readonly believed?: Body;
};

/** One side after the other, so that the toy is turned as rarely as possible; on each side once from head to tail. */
const views: readonly View[] = ['front', 'side', 'back'];
const regions: readonly Measure['region'][] = [
  'whole',
  'head',
  'neck',
  'front',
  'back',
  'arm',
  'waist',
  'leg',
  'tail',
  'wish',
];

/**
 * The steps for everything `needs` names (of one garment or several; repeats count once): what the tape must tell, one
 * side of the toy at a time, then the wishes with suggested values. What follows exactly from others is not asked,
 * unless one of those was skipped. Measures the body's kind does not have are left out.
 */
export function plan(
  needs: readonly MeasureId[],
  body: Body,
  { done = [], skipped = [], believed = body }: Progress = {},
): Plan {
  const wanted = new Set(needs.filter((id) => findMeasure(id)?.typical[body.kind]));
  const answered = new Set([...done, ...[...wanted].filter((id) => isTaken(body.sizes[id]))]);
  const worksOut = followers(
    [...wanted].filter((id) => !skipped.includes(id) || answered.has(id)),
    answered,
  );
  const rows = [...wanted].filter((id) => !worksOut.includes(id)).flatMap((id) => seenFrom(body, id) ?? []);
  const steps: Step[] = [];
  let facing: View = 'front';
  for (const { id, nature, view } of inOrder(rows)) {
    const turn = nature !== 'wish' && view !== facing;
    if (turn) facing = view;
    const state = answered.has(id) ? 'done' : skipped.includes(id) ? 'skipped' : 'open';
    steps.push({ measure: id, view, turn, state, suggested: nature === 'wish' ? estimate(believed, id) : null });
  }
  return { steps, turns: steps.filter((step) => step.turn).length, worksOut };
}

/** A measure's row, with the side its picture shows: what the maker turns the toy to. */
function seenFrom({ kind, traits }: Body, id: MeasureId): Row | undefined {
  const row = findMeasure(id);
  return row && { ...row, view: viewOf(kind, traits, id) ?? row.view };
}

const isTaken = (known: Known | undefined) => known?.from === 'tape' || known?.from === 'photo';

type Row = Measure<MeasureId>;

/** Taped before wished, view by view, each from the head down; then what speaks of another measure moves behind it. */
function inOrder(rows: readonly Row[]): readonly Row[] {
  const place = ({ nature, view, region }: Row) =>
    (nature === 'wish' ? 1000 : 0) + 100 * views.indexOf(view) + regions.indexOf(region);
  const sorted = [...rows].sort((a, b) => place(a) - place(b));
  const placed: Row[] = [];
  for (const row of sorted) put(row);
  return placed;

  function put(row: Row) {
    if (placed.includes(row)) return;
    for (const before of sorted) if (row.after.includes(before.id)) put(before);
    placed.push(row);
  }
}
