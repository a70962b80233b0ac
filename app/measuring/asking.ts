import { type Body, findMeasure, type MeasureId, mostTelling } from '../body';

/** The whole way takes every measure that shapes the garment; the short way the few that tell most, the rest guessed. */
export type Way = 'whole' | 'short';

/** The one number every maker knows: asked first whatever is made, never required, and a check on all others. */
const FIRST: MeasureId = 'height';
/** Of the short way, beside the height and the page of wishes: eight steps in all. */
const SHORT_COUNT = 6;
/** What a garment that asks for it goes on over: guessed, it may not go on at all. */
const PASSES: readonly MeasureId[] = ['head-girth'];

export type Asking = {
  /** Everything the garment is drafted from. */
  readonly needs: readonly MeasureId[];
  /** What is asked for: the height, what the tape must tell, the wishes. */
  readonly asked: readonly MeasureId[];
  /** What is estimated instead; may be taken later. */
  readonly guessed: readonly MeasureId[];
};

type Need = { readonly measure: MeasureId; readonly quiet?: true };

/**
 * What a toy's maker is asked for, from what garments need with the choices made. Depends on how the toy looks and never on
 * what was read, so that a plan taken up again is the same plan. A measure that one garment asks for is no other's quiet one.
 */
export function asking(
  { kind, traits }: Pick<Body, 'kind' | 'traits'>,
  active: readonly Need[],
  way: Way = 'whole',
): Asking {
  const known = active.filter(({ measure }) => findMeasure(measure)?.typical[kind]);
  const needs = [...new Set(known.map(({ measure }) => measure))];
  const loud = needs.filter((id) => known.some(({ measure, quiet }) => measure === id && !quiet));
  const taped = loud.filter((id) => !isWish(id));
  const asked = way === 'whole' ? taped : shortOf({ kind, traits }, taped);
  const all = [...new Set([FIRST, ...asked, ...loud.filter(isWish)])];
  return {
    needs,
    asked: all,
    guessed: needs.filter((id) => !all.includes(id)),
  };
}

/** The measures that tell most of a toy not measured yet; what must pass is among them, whatever it tells of the rest. */
function shortOf(looks: Pick<Body, 'kind' | 'traits'>, taped: readonly MeasureId[]): readonly MeasureId[] {
  const telling = mostTelling({ ...looks, sizes: {} }, { needs: taped, asked: taped, count: taped.length });
  const passes = taped.filter((id) => PASSES.includes(id));
  return [...new Set([...passes, ...telling.map(({ measure }) => measure)])].slice(0, SHORT_COUNT);
}

export const isWish = (id: MeasureId): boolean => findMeasure(id)?.nature === 'wish';
