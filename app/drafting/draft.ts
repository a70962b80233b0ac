/**
 * The drafting module's door: a body and an order in, an Outcome out. Pure and deterministic; the same in the browser,
 * in a worker and in Node. No DOM, no storage and no sentences ever live here: codes and numbers only.
 */
import { type Body, type Flag, findMeasure, judge, type MeasureId, scaleOf } from '../body';
import type { FullOrder, Outcome } from './draft-types';
import type { Drawing } from './drawing/draw';
import { ENGINE } from './engine';
import { fitOf, misfits, tentOf, widerThanAsked } from './fit';
import { garments } from './garments';
import type { Looks } from './heads/head';
import { looksRead } from './looks';
import { notesOf } from './notes';
import { notionsOf } from './notions';
import { isCuttable } from './pieces/cuttable';
import { evenHems } from './pieces/hems';
import { pieceOf } from './pieces/piece';
import { withShorter } from './pieces/shorter';
import { type Garment, refsOf, seamsIn } from './rows/garment';
import type { Refs } from './rows/names';
import type { AnyNames, SeamRow } from './rows/rows';
import { walk } from './seams/walk';
import { settleGarment, suit } from './settling/settle';
import { sewingOrder } from './sewing/order';
import { allowancesFor } from './sizes/allowances';
import { clothOf, cloths } from './sizes/cloths';
import { type Fit, fits, softPass } from './sizes/ease';
import { wearerOf } from './sizes/wearer';

export type { Draft, FullOrder, Outcome } from './draft-types';
export { ENGINE } from './engine';
export { fullOrder, type OrderFault, type OrderResult } from './order';

/** A casing is turned this much deeper than its elastic is wide, mm (common practice, no source). */
const CASING_OVER_MM = 8;

/** An estimate vaguer than this share of its value is no ground to cut cloth on. */
const VAGUEST = 1;
/**
 * Drafts a garment for a body. Refuses, with flags and never an exception, a body the garment does not suit, an
 * impossible one, one with a measure that nobody can estimate, and a seam that cannot be made to match. `order` comes
 * from `fullOrder`, `garment` with it; `toy` is the name to print.
 */
export function draft(body: Body, order: FullOrder, garment: Garment, toy: string): Outcome {
  if (!garment.bodies.includes(body.kind)) return refuse([impossible('body-not-suited', []), ...wearsInstead(body)]);
  const cloth = clothOf(order);
  if (!cloth) return refuse([impossible('unknown-cloth', [])]);
  const scale = scaleOf(body);
  const allowances = allowancesFor(cloth, order.allowances, scale);
  const { kind, sizes, corrections } = body;
  const traits = looksRead(body.traits, garment.looks);
  const suited = suit(garment, order.choices, { kind, traits });
  const needed = new Set(neededFor(garment, suited.choices, { kind, traits }));
  const flags = judge(body, { ...order, choices: suited.choices }, { measures: needed });
  const stops = [...flags.filter((flag) => flag.severity === 'impossible'), ...unknown(body, needed)];
  if (stops.length > 0) return refuse(stops);

  const share = fits[order.fit as Fit];
  const beneath = cloths.find(({ id }) => id === order.over)?.thickness ?? 0;
  const dress = (choices: FullOrder['choices']) =>
    wearerOf({ kind, traits, sizes }, needed, {
      cloth,
      share,
      choices,
      scale,
      hem: allowances.hem,
      beneath,
      softPass: softPass(choices),
    });
  const { matched, opened, adjustments, stopped } = settleGarment(garment, suited.choices, dress, corrections);
  if (stopped.length > 0) return refuse(stopped);
  if (matched.failed) return refuse([impossible(`${matched.failed.what}-cannot-match`, matched.failed.check)]);
  const { drawing } = matched;
  const fit = fitOf(garment, drawing);
  // Edges of no length cannot be walked: what does not fit is found before.
  const unworn = misfits(fit, body).map(({ place, ease }) => ({ [`${place}-ease`]: ease }));
  if (unworn.length > 0) return refuse(unworn.map(defect));
  const tent = tentOf(garment, drawing);
  if (tent) {
    const round = TRUNK_GIRTHS.filter((id) => needed.has(id));
    return refuse([{ ...impossible('side-cannot-reach', round), values: tent }]);
  }
  const walked = walk(garment, drawing);
  if (walked.defects.length > 0)
    return refuse(walked.defects.map(({ seam, code, by }) => defect({ [`${seam}-${code}`]: by })));
  const rows = seamsIn(garment, drawing);
  const making = { allowances, hems: evenHems(garment, drawing, allowances), bound: boundIn(rows, drawing) };
  const { pieces, adjustments: shortened } = withShorter(
    [...drawing.drawn.values()].map((drawn) =>
      pieceOf(drawn, drawing, making, walked.notches.get(drawn.row.name) ?? []),
    ),
    drawing.choices,
  );
  if (!pieces.every(isCuttable))
    return refuse([impossible('cannot-be-cut', doubtedIn(flags)), ...flags, ...firstOf(body)]);
  return {
    ok: true,
    draft: {
      engine: ENGINE,
      order: { ...order, choices: drawing.choices },
      toy,
      pieces,
      seams: walked.seams,
      fit,
      openings: opened.rows,
      adjustments: [...suited.adjustments, ...adjustments, ...shortened, ...widerThanAsked(garment, drawing, body)],
      flags: [...flags, ...opened.flags, ...notesOf(garment, drawing)],
      sewing: sewingOrder(walked.seams, rows, drawing),
      notions: notionsOf(garment, drawing, { pieces, seams: walked.seams }, allowances.casing - CASING_OVER_MM),
    },
  };
}

/** The girths that a side runs from and to. */
const TRUNK_GIRTHS: readonly MeasureId[] = ['chest-girth', 'body-girth', 'hem-girth', 'waist-girth'];

function neededFor({ needs }: Garment, choices: FullOrder['choices'], looks: Looks): readonly MeasureId[] {
  return needs.filter(({ when }) => when?.(choices, looks) ?? true).map(({ measure }) => measure);
}

/** The edges that a strip is folded over and the strip's own, and those of a facing that is laid along them. */
function boundIn(rows: readonly SeamRow<AnyNames>[], drawing: Drawing): ReadonlySet<string> {
  const keys = (refs: Refs<AnyNames>) => refsOf(refs, drawing).map(({ piece, edge }) => `${piece}.${edge}`);
  const bound = new Set(rows.flatMap((row) => (row.bound ? [...keys(row.first), ...keys(row.second)] : [])));
  const laid = rows.filter(({ kind, first }) => kind === 'laid' && keys(first).every((edge) => bound.has(edge)));
  return new Set([...bound, ...laid.flatMap(({ second }) => keys(second))]);
}

/** As many garments that do suit this kind of body are named, at most. */
const MOST_NAMED = 3;

function wearsInstead({ kind }: Body): Flag[] {
  return garments
    .filter((garment) => garment.bodies.includes(kind))
    .slice(0, MOST_NAMED)
    .map(wears);
}

/** The easiest that suit this kind of body: what has few pieces can be cut for nearly any. */
function firstOf({ kind }: Body): Flag[] {
  const first = garments.filter(({ bodies, level }) => level === 'first' && bodies.includes(kind));
  return first.slice(0, MOST_NAMED).map(wears);
}

const wears = ({ id }: Pick<Garment, 'id'>): Flag => ({
  code: `wears-${id}`,
  severity: 'note',
  measures: [],
  values: {},
});

/** The measures that some flag doubts. */
const doubtedIn = (flags: readonly Flag[]): readonly MeasureId[] => [
  ...new Set(flags.filter(({ severity }) => severity === 'unlikely').flatMap(({ measures }) => measures)),
];

function unknown(body: Body, needed: ReadonlySet<MeasureId>): Flag[] {
  return [...needed].flatMap((id) => {
    const known = body.sizes[id];
    const row = findMeasure(id);
    // What is wished for may be suggested: no tape could tell it.
    const vague = known && known.give > known.value * VAGUEST && !row?.optional && row?.nature !== 'wish';
    return known && !vague ? [] : [impossible('cannot-estimate', [id])];
  });
}

function impossible(code: string, measures: readonly MeasureId[]): Flag {
  return { code, severity: 'impossible', measures, values: {} };
}

/** Our own fault, never the body's: the numbers that show it. */
function defect(values: Flag['values']): Flag {
  return { ...impossible('draft-defect', []), values };
}

function refuse(flags: readonly Flag[]): Outcome {
  return { ok: false, flags };
}
