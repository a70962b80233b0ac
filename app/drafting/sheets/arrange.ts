// All that goes on paper, pieces and furniture, arranged on as few sheets as are found: the first page tidy where that costs none.

import type { Mm } from '../../body';
import type { Draft } from '../draft-types';
import type { Box } from '../packing';
import { among } from './among';
import type { Area } from './area';
import { bareBoard, headedBoard, plainBoard } from './boards';
import type { Fitting } from './figure';
import { freshSheet, type Item, isFigure, isLoose, relaid, type Sheet, withLaid } from './fill';
import { freeHead, type Head, shortHead, stripReach, wholeHead } from './furniture';
import { held, unfolded } from './held';
import { leastSheets } from './least';
import { isOfFirst, type Loose, type LooseKind, loose, looseChecks, looseHead, standing } from './loose';
import type { Mapped } from './map';
import { airier, careSizes, holdings, keySizes, noteSizes } from './notes';
import { boxOf } from './page';
import { type Effort, fewestSheets, type Turns } from './search';
import { squeezed } from './squeeze';

export type ToArrange = Effort & {
  readonly draft: Draft;
  readonly area: Area;
  /** Every piece that fits a page, in its turns. */
  readonly fitting: readonly (readonly Fitting[])[];
  /** Pages that show part of a piece. */
  readonly tiles: readonly Sheet[];
  /** Those pages, and as many more as there may be. */
  readonly mapped: readonly Mapped[];
  readonly roll: boolean;
};

/** No fewer sheets could be than `least`. */
type Bounded = ToArrange & { readonly least: number };

/** Places weighed for each filling, and where pieces and furniture are laid at once, the last that is tried. */
const STEPS = 1000;
const TOGETHER = 15_000;

/** By how much effort grows from one try to the next. */
const LADDER = 4;

/** How much is looked at to prove that no fewer sheets could be: at first, and before more than a moment is spent on fewer. */
const PROOF = { first: 4000, last: 300_000 } as const;

/** The sheets, what the first of them begins with, and every piece and all furniture laid on them. */
type Laying = { readonly head: Head; readonly sheets: readonly Sheet[] };

/** No arrangement could use fewer sheets than `least`. */
export type Arranged = Laying & { readonly least: number };

/** Pieces on sheets that carry nothing else but their strip. */
export function piecesOnly(asked: ToArrange): Omit<Arranged, 'head'> {
  const { area, fitting, tiles } = asked;
  const least = leastSheets({ fitting, area, tiles: tiles.length });
  const wanted = { ...asked, least: least(PROOF.first) };
  const first = fitting.length > 0 ? [freshSheet('first', plainBoard(area))] : [];
  const sheets = fewest(wanted, [...first, ...tiles], []).filter(
    ({ kind, laid }) => kind !== 'first' || laid.length > 0,
  );
  const last = sheets.length > wanted.least ? { ...asked, least: least(PROOF.last) } : wanted;
  return { least: last.least, sheets: squeezeAll(last, sheets, [], stripReach(area)) };
}

export function arranged(asked: ToArrange): Arranged {
  const { area, fitting, tiles } = asked;
  const least = leastSheets({ fitting, area, tiles: tiles.length });
  const first = { ...asked, least: least(PROOF.first) };
  const tidy = tidied(first);
  if (tidy.sheets.length <= first.least || asked.roll) return { ...roomy(asked, tidy), least: first.least };
  const last = { ...asked, least: least(PROOF.last) };
  const fewest = ladder(asked.effort).reduce((best, effort) => {
    const more = best.sheets.length;
    return (more > last.least ? furnishedLast({ ...last, effort }, more) : undefined) ?? best;
  }, tidy);
  return { ...roomy(asked, fewest), least: last.least };
}

/** All under a head across the first page: on one page where that can be. */
function tidied(wanted: Bounded): Laying {
  const { draft, area, tiles, mapped, least } = wanted;
  const joins = tiles.length > 0;
  const whole = wholeHead(area, mapped);
  const rest: readonly LooseKind[] = joins ? ['card', 'square', 'joining', 'long'] : ['card', 'square', 'long'];
  const tidy = (kinds: readonly LooseKind[], items: readonly Turns[]): Laying => {
    const first = withLaid(
      firstSheet(area, whole.box),
      kinds.flatMap((kind) => placedIn(whole, kind, area)),
    );
    return { head: whole, sheets: filled(wanted, first, items) };
  };
  const alone = loose('words', noteSizes(draft, holdings.words));
  if (least === 1) {
    const one = tidy([...rest, 'key'], [alone]);
    if (one.sheets.length === 1) return one;
  }
  return tidy(rest, [loose('notes', noteSizes(draft, holdings.notes))]);
}

/** Ever more effort, so that what little finds, more finds too. */
function ladder(effort: number): readonly number[] {
  return effort > 1 ? [...ladder(Math.floor(effort / LADDER)), effort] : [1];
}

/**
 * Pieces on as few sheets as are found with nothing but pieces, and furniture on no more: beside pieces under a short head,
 * within them, without a head across the page. Undefined where none of that saves a sheet.
 */
function furnishedLast(wanted: Bounded, more: number): Laying | undefined {
  const { draft, area, tiles, mapped } = wanted;
  const joins = tiles.length > 0;
  const items = [
    ...looseChecks(joins),
    loose('told', noteSizes(draft, holdings.told)),
    loose('care', careSizes),
    loose('key', keySizes),
  ];
  const bare = piecesAlone(wanted, freshSheet('first', bareBoard(area)), 0);
  const least = bare.length;
  if (least >= more) return undefined;
  const pages = [...mapped.filter(({ tile }) => tile), ...mapped.slice(0, more - tiles.length)];
  const head = shortHead(area, pages);
  const first = firstSheet(area, head.box);
  const enough = { ...wanted, least };
  const beside = squeezeAll(enough, filled(enough, first, items), items, head.box.height);
  if (beside.length <= least) return { head, sheets: beside };
  const headed = piecesAlone(enough, first, head.box.height);
  const within = headed.length <= least ? among(draft, area, headed, items) : undefined;
  if (within) return { head, sheets: within };
  const free = joins ? undefined : among(draft, area, bare, [...looseHead(mapped.slice(0, least)), ...items]);
  const found = free ?? (joins ? undefined : together(enough, bare, [...looseHead(mapped.slice(0, least)), ...items]));
  if (found) return { head: headIn(found, area), sheets: found };
  return beside.length < more ? { head, sheets: beside } : undefined;
}

/** Pieces and furniture laid at once on as many pages as the pieces took alone: what pieces hold goes where they go. */
function together(
  { draft, area, fitting, seed, effort }: ToArrange,
  bare: readonly Sheet[],
  furniture: readonly (readonly Loose[])[],
): readonly Sheet[] | undefined {
  const alone = bare.filter(({ kind }) => kind === 'bare').flatMap(({ laid }) => laid.filter(isFigure));
  const full = new Set(alone.map(({ turned }) => turned.figure.piece));
  const moving = fitting.filter(([turned]) => turned && !full.has(turned.figure.piece));
  const { items, rest, holds } = held(draft, area, moving, furniture);
  const ofFirst = (item: Item): boolean =>
    [item, ...(holds.get(item) ?? []).map(({ turned }) => turned)].some((each) => 'kind' in each && isOfFirst(each));
  const to = { area, items: [...items, ...rest], head: 0, seed, steps: TOGETHER * effort, ofFirst };
  const sheets = squeezed([...bare, freshSheet('plain', plainBoard(area))], to);
  return sheets?.map((sheet) =>
    relaid(
      sheet,
      sheet.laid.flatMap((laid) => unfolded(laid, holds)),
    ),
  );
}

function headIn([first]: readonly Sheet[], area: Area): Head {
  const boxes = (first?.laid ?? []).filter(isLoose).map((laid) => ({ kind: laid.turned.kind, box: boxOf(laid, area) }));
  const [title, map] = (['title', 'map'] as const).map((kind) => boxes.find((each) => each.kind === kind)?.box);
  return title ? freeHead(title, map) : shortHead(area, []);
}

function piecesAlone(wanted: Bounded, first: Sheet, head: Mm): readonly Sheet[] {
  return squeezeAll(wanted, filled(wanted, first, []), [], head);
}

/** Ever fewer sheets, as long as a lay is found. */
function squeezeAll(wanted: Bounded, sheets: readonly Sheet[], more: readonly Turns[], head: Mm): readonly Sheet[] {
  const { area, fitting, least, seed, effort } = wanted;
  if (sheets.length <= least) return sheets;
  const to = { area, items: [...fitting, ...more], head, seed, steps: STEPS * effort };
  const fewer = squeezed(sheets, to);
  return fewer ? squeezeAll(wanted, fewer, more, head) : sheets;
}

function roomy({ draft, roll }: ToArrange, { head, sheets }: Laying): Laying {
  return { head, sheets: roll ? sheets : airier(draft, sheets) };
}

function firstSheet(area: Area, head: Box): Sheet {
  return freshSheet('first', headedBoard(area, head));
}

function filled(wanted: Bounded, first: Sheet, items: readonly Turns[]): readonly Sheet[] {
  return fewest(wanted, [first, ...wanted.tiles], items);
}

function fewest(
  { area, fitting, roll, least, ...effort }: Bounded,
  started: readonly Sheet[],
  items: readonly Turns[],
): readonly Sheet[] {
  const fresh = { plain: plainBoard(area), bare: bareBoard(area), alone: area.print === 'large' };
  return fewestSheets([...fitting, ...items], started, fresh, { ...effort, enough: roll ? 0 : least });
}

const PLACES = { card: 'card', square: 'square', joining: 'aside', key: 'aside', long: 'long' } as const;

function placedIn({ places }: Head, kind: LooseKind, { x, y }: Area) {
  const box = kind in PLACES ? places[PLACES[kind as keyof typeof PLACES]] : undefined;
  return box ? standing(kind, { ...box, x: box.x - x, y: box.y - y }) : [];
}
