import type { Body, Flag, Known, MeasureId, Mm, SizeId, Traits } from '../../body';
import type { Adjustment } from '../draft-types';
import type { Cloth } from './cloths';
import { easedGirth, easedLength, LEAST_EASE_MM } from './ease';

/** The finished sizes, by name: a block's only input. */
export type Sizes = Readonly<Record<string, Mm>>;

/** Choices with every default filled in and every `auto` still to be settled. */
export type Choices = Readonly<Record<string, string | boolean | number>>;

/** A body as the size makers see it: its measures, the fit and the cloth, ready to be eased. */
export type Wearer = {
  readonly traits: Traits;
  readonly cloth: Cloth;
  readonly share: number;
  readonly choices: Choices;
  /** Hem allowance at a straight edge, mm: what a side or sleeve must at least leave room for. */
  readonly hem: Mm;
  readonly known: (id: MeasureId) => Known;
  readonly of: (id: MeasureId) => Mm;
  readonly taken: (id: MeasureId) => boolean;
  /** Eased girth of a measure; `seams` lengthwise seams cross it. */
  readonly girth: (id: MeasureId, seams: number, least?: Mm) => Mm;
  readonly surface: (id: MeasureId, least?: Mm) => Mm;
};

/** What one size maker adds: sizes, and what it had to adjust. */
export type Made = {
  readonly sizes: Sizes;
  readonly adjustments?: readonly Adjustment[];
  /** What makes these sizes impossible together. */
  readonly stops?: readonly Flag[];
};

/** Body measures into finished sizes; sees the sizes made before it. */
export type SizeMaker = (wearer: Wearer, sizes: Sizes) => Made;

type Settings = {
  readonly cloth: Cloth;
  readonly share: number;
  readonly choices: Choices;
  readonly hem: Mm;
};

/** Throws a RangeError for a measure the body lacks: a garment's size makers may use only what its `needs` name. */
export function wearerOf(body: Body, settings: Settings): Wearer {
  const known = (id: MeasureId): Known => {
    const found = body.sizes[id];
    if (!found) throw new RangeError(`measure not known: ${id}`);
    return found;
  };
  const of = (id: MeasureId) => known(id).value;
  return {
    ...settings,
    traits: body.traits,
    known,
    of,
    taken: (id) => ['tape', 'photo'].includes(body.sizes[id]?.from ?? ''),
    girth: (id, seams, least = LEAST_EASE_MM) => easedGirth(of(id), settings.share, settings.cloth, least, seams),
    surface: (id, least = LEAST_EASE_MM) => easedLength(of(id), settings.share, least),
  };
}

/** Makes all sizes in turn, then lays the corrections learnt from trying on over them. */
export function finishedSizes(
  wearer: Wearer,
  makers: readonly SizeMaker[],
  corrections: Body['corrections'],
): Required<Made> {
  const sizes: Record<string, Mm> = {};
  const adjustments: Adjustment[] = [];
  const stops: Flag[] = [];
  for (const make of makers) {
    const made = make(wearer, sizes);
    Object.assign(sizes, made.sizes);
    adjustments.push(...(made.adjustments ?? []));
    stops.push(...(made.stops ?? []));
    for (const id of Object.keys(made.sizes) as SizeId[]) sizes[id] = (sizes[id] ?? 0) + (corrections[id] ?? 0);
  }
  return { sizes, adjustments, stops };
}
