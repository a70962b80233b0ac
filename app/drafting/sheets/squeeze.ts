import { type Field, type Job, type Place, packFields, stockOf } from '../packing';
import type { Area } from './area';
import { PIECE_GAP_MM } from './figure';
import { type Item, type Laid, relaid, type Sheet } from './fill';
import { stripReach } from './furniture';
import type { Turns } from './search';
import { shapeOfItem } from './shapes';

/** Pages lie this far apart where all are seen at once, mm. */
const PAGES_APART_MM = 1000;

/** Above this share of the paper no lay of many pieces was ever found. */
const FULLEST = 0.92;

export type ToSqueeze = {
  readonly area: Area;
  /** Every item in its turns, as they were laid. */
  readonly items: readonly Turns[];
  /** How far down the first page its head reaches, mm. */
  readonly head: number;
  /** Places weighed at most. */
  readonly steps: number;
  readonly seed: number;
  /** Whether an item belongs on the first page. */
  readonly ofFirst?: (item: Item) => boolean;
};

/** The same items on one sheet fewer, all of them moved at once, where a lay is found; what lies on tiles and on pages of one piece stays there. */
export function squeezed(
  sheets: readonly Sheet[],
  { area, items, head, steps, seed, ofFirst = () => false }: ToSqueeze,
): readonly Sheet[] | undefined {
  const open = sheets.filter(({ kind }) => kind === 'first' || kind === 'plain').slice(0, -1);
  const stay = new Set(
    sheets
      .filter(({ kind }) => kind === 'tile' || kind === 'bare')
      .flatMap(({ laid }) => laid.map(({ turned }) => nameOf(turned))),
  );
  const moving = items.filter(([turned]) => turned && !stay.has(nameOf(turned)));
  const fields = open.map((_, page): Field => {
    const left = page * (area.width + PAGES_APART_MM);
    const taken = page === 0 ? head : stripReach(area);
    const top = taken > 0 ? taken + PIECE_GAP_MM : 0;
    return { left, top, right: left + area.width, bottom: area.height };
  });
  const { job, turned } = jobOf(moving, ([one]) => (one && ofFirst(one) ? fields[0] : undefined));
  if (open.length === 0 || taken(job) > FULLEST * room(fields)) return undefined;
  const places = found(job, fields, steps, seed);
  if (!places) return undefined;
  const settled = open.map((sheet, page) => {
    const { left = 0, right = 0 } = fields[page] ?? {};
    const here = places.flatMap(({ shape, x, y }): Laid[] => {
      const one = turned[shape];
      return one && x >= left && x < right ? [{ turned: one, x: x - left, y }] : [];
    });
    return relaid(sheet, here);
  });
  return sheets.flatMap((sheet) => {
    const at = open.indexOf(sheet);
    return at < 0 ? (sheet.kind === 'plain' ? [] : [sheet]) : (settled[at] ?? []);
  });
}

/** Every turn of every item as a shape; `turned` says which shape is which. */
function jobOf(
  items: readonly Turns[],
  only: (turns: Turns) => Field | undefined,
): { readonly job: Job; readonly turned: readonly Item[] } {
  const turned = items.flat();
  const stock = stockOf(turned.map(shapeOfItem), PIECE_GAP_MM);
  let at = 0;
  const pieces = items.map((turns) => {
    const field = only(turns);
    return { turns: turns.map(() => at++), ...(field && { only: field }) };
  });
  return { job: { stock, pieces }, turned };
}

function found(job: Job, fields: readonly Field[], steps: number, seed: number): readonly Place[] | undefined {
  for (const each of packFields(job, fields, seed)) {
    if (each.best.places) return each.best.places;
    if (each.steps > steps) return undefined;
  }
  return undefined;
}

const taken = ({ stock, pieces }: Job): number =>
  pieces.reduce((sum, { turns }) => sum + Math.min(...turns.map((turn) => stock.shapes[turn]?.area ?? 0)), 0);

const room = (fields: readonly Field[]): number =>
  fields.reduce((sum, { left, top, right, bottom }) => sum + (right - left) * (bottom - top), 0);

const nameOf = (one: Item): string => ('figure' in one ? `piece ${one.figure.piece}` : one.kind);
