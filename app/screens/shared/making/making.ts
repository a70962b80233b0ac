import { useMemo } from 'preact/hooks';
import { type Body, type Flag, judge, type MeasureId, type Order, type Taught } from '../../../body';
import type { Head } from '../../../drafting/catalogue';
import { type Asking, asking, isWish, marksFor, plan, type Step, type Way } from '../../../measuring';
import { type Garment, type ReadingsByMeasure, readingsOf, type Toy } from '../../../storage';
import { believedOf, guessedFrom } from './believed';
import { bodyOf, lengthsOf } from './body-of';

export type Choices = Readonly<Record<string, string | boolean | number>>;

/** A garment being made for a toy: everything the screens of the flow speak of, worked out from what is kept. */
export type Making = {
  readonly toy: Toy;
  readonly garment: Garment;
  readonly row: Head;
  /** Of an outfit the garments beside the first: measured with it, once for all. */
  readonly also: readonly Ordered[];
  readonly choices: Choices;
  readonly readings: ReadingsByMeasure;
  readonly taught?: Taught | undefined;
  readonly body: Body;
  readonly way: Way;
  /** Everything it is drafted from, and what of that is guessed where nobody took it. */
  readonly needs: Asking['needs'];
  readonly guessed: Asking['guessed'];
  readonly steps: readonly Step[];
  /** Screens to the end: a step for each measure, one page for all wishes. */
  readonly screens: number;
  /** Needed, but worked out exactly from the others: never asked. */
  readonly worksOut: readonly MeasureId[];
  /** Doubts about these numbers that the maker has not set aside. */
  readonly flags: readonly Flag[];
};

export type Ordered = { readonly garment: Garment; readonly row: Head };

type Given = Pick<Making, 'toy' | 'garment' | 'row' | 'readings' | 'taught' | 'way'> & Partial<Pick<Making, 'also'>>;

export function useMaking({ toy, garment, row, readings, taught, way, also }: Given & Pick<Making, 'also'>): Making {
  return useMemo(
    () => makingOf({ toy, garment, row, readings, taught, way, also }),
    [toy, garment, row, readings, taught, way, also],
  );
}

/** All of it for one garment of one toy. */
export function makingOf({ toy, garment, row, readings, taught, way, also = [] }: Given): Making {
  const choices = choicesOf(row, garment.order);
  const read = bodyOf({ toy, readings }, taught);
  const all = [{ garment, row }, ...also];
  const wanted = all.flatMap((each) => needsOf(each.row, toy, each.garment.order));
  const { needs, asked, guessed } = asking(read, wanted, way);
  const heard = { measures: new Set([...needs, ...asked]), readings: lengthsOf(readings) };
  const flags = doubtsOf(all, read, heard).filter((flag) => !isKept(toy, flag, read));
  const believed = believedOf({ toy, readings }, flags, taught) ?? read;
  const body = guessedFrom(believed, read);
  const { steps, worksOut } = plan(asked, body, { believed });
  return {
    ...{ toy, garment, row, also, readings, taught, way, choices, body, needs, steps, worksOut, flags },
    guessed: guessed.filter((id) => !worksOut.includes(id)),
    screens: pagesOf(steps),
  };
}

/** What speaks against the numbers for any of the garments, each doubt once. */
function doubtsOf(all: readonly Ordered[], read: Body, heard: Parameters<typeof judge>[2]): readonly Flag[] {
  const each = all.flatMap(({ garment: { order }, row }) =>
    judge(read, { ...order, choices: choicesOf(row, order) }, heard),
  );
  return [...new Map(each.map((flag) => [flagKey(flag), flag])).values()];
}

/** The measures that are asked for, in their order. */
export const askedFor = (given: Omit<Given, 'way'>): readonly MeasureId[] =>
  makingOf({ ...given, way: 'whole' }).steps.map(({ measure }) => measure);

const pagesOf = (steps: readonly Step[]) => tapedOf(steps).length + (wishesOf(steps).length > 0 ? 1 : 0);

/** The steps that the tape takes, and the wishes, which share a page. */
export const tapedOf = (steps: readonly Step[]) => steps.filter(({ measure }) => !isWish(measure));
export const wishesOf = (steps: readonly Step[]) => steps.filter(({ measure }) => isWish(measure));

/** The doubts about a measure by what is on the disk this moment, not by what the screen last heard. */
export async function doubtsNow(
  { toy, garment, row, taught, way, also }: Making,
  measure: MeasureId,
): Promise<readonly Flag[]> {
  const readings = await readingsOf(toy.id);
  return flagsAt(makingOf({ toy, garment, row, readings, taught, way, also }).flags, measure);
}

/** What a garment asks of a toy that looks like this, with its choices as they were made: some are left to the toy's looks. */
export function needsOf(row: Head, looks: Pick<Toy, 'kind' | 'traits'>, order: Order): Head['needs'] {
  const said = saidOf(row, order);
  return row.needs.filter(({ when }) => when?.(said, looks) ?? true);
}

const saidOf = (row: Head, order: Order): Choices =>
  Object.fromEntries(
    Object.entries(row.choices).map(([name, choice]) => [name, order.choices?.[name] ?? choice.fallback]),
  );

/** Every choice of a garment: the maker's, or the usual one; what is left to us starts as the garment says. */
export function choicesOf(row: Head, order: Order): Choices {
  const all = Object.entries(saidOf(row, order));
  return Object.fromEntries(all.map(([name, value]) => [name, value === 'auto' ? (row.auto[name] ?? value) : value]));
}

/** The name under which "keep it" is remembered, and the numbers it was said of: it holds for these and no others. */
export const flagKey = ({ code, measures }: Flag): string => `${code} ${measures.join(' ')}`;
export const flagNumbers = (flag: Flag, body: Body): string =>
  flag.measures.map((id) => Math.round((body.sizes[id]?.value ?? 0) * 100) / 100).join(' ');

/** Whether the maker has set this doubt aside, for these very numbers. */
export const isKept = (toy: Toy, flag: Flag, body: Body): boolean =>
  toy.kept[flagKey(flag)] === flagNumbers(flag, body);

/** Flags that a maker is asked about at a step: those its number has a part in. */
export const flagsAt = (flags: readonly Flag[], measure: MeasureId): readonly Flag[] =>
  flags.filter((flag) => flag.severity !== 'note' && flag.measures.includes(measure));

/** The next measure that is not taken yet, after the one at hand; null where the wishes come next, or the review. */
export function nextStep(
  { steps, readings }: Pick<Making, 'steps' | 'readings'>,
  measure?: MeasureId,
): MeasureId | null {
  const at = steps.findIndex((step) => step.measure === measure);
  return tapedOf(steps.slice(at + 1)).find((step) => !readings[step.measure])?.measure ?? null;
}

/** The page behind the last measure. */
export const afterTape = ({ steps }: Pick<Making, 'steps'>): 'wishes' | 'review' =>
  wishesOf(steps).length > 0 ? 'wishes' : 'review';

/** Where measuring begins or goes on, as the tail of an address: marks only where a step not read yet speaks of them. */
export function onwardOf(making: Making): readonly string[] {
  return marksOpen(making).length > 0 ? ['marks'] : measureOf(making);
}

export function measureOf(making: Making): readonly string[] {
  const first = nextStep(making);
  return first ? ['measure', first] : [afterTape(making)];
}

/** The marks that what the tape has not told yet speaks of; a length to choose is suggested, and sends nobody to mark it. */
export const marksOpen = ({ toy, steps, readings }: Making) =>
  marksFor(
    toy.kind,
    tapedOf(steps)
      .map(({ measure }) => measure)
      .filter((id) => !readings[id]),
  );

/** Those; or, looked at again when all is read, the marks of every step. */
export const marksShown = (making: Making) => {
  const open = marksOpen(making);
  return open.length > 0 ? open : marksOpen({ ...making, readings: {} });
};

/** The body, once a single reading is there to judge the rest by. */
export const bodyKnown = ({ body, readings }: Pick<Making, 'body' | 'readings'>): Body | null =>
  Object.keys(readings).length > 0 ? body : null;
