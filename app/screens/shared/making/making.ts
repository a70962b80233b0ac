import { useMemo } from 'preact/hooks';
import { type Body, type Flag, judge, type MeasureId, type Order } from '../../../body';
import type { Head } from '../../../drafting/catalogue';
import { plan, type Step } from '../../../measuring';
import { type Garment, type ReadingsByMeasure, readingsOf, type Toy } from '../../../storage';
import { bodyOf, lengthsOf } from './body-of';

export type Choices = Readonly<Record<string, string | boolean | number>>;

/** A garment being made for a toy: everything the screens of the flow speak of, worked out from what is kept. */
export type Making = {
  readonly toy: Toy;
  readonly garment: Garment;
  readonly row: Head;
  readonly choices: Choices;
  readonly readings: ReadingsByMeasure;
  readonly body: Body;
  readonly steps: readonly Step[];
  /** Needed, but worked out exactly from the others: never asked. */
  readonly worksOut: readonly MeasureId[];
  /** Doubts about these numbers that the maker has not set aside. */
  readonly flags: readonly Flag[];
};

type Given = Pick<Making, 'toy' | 'garment' | 'row' | 'readings'>;

export function useMaking({ toy, garment, row, readings }: Given): Making {
  return useMemo(() => makingOf({ toy, garment, row, readings }), [toy, garment, row, readings]);
}

function makingOf({ toy, garment, row, readings }: Given): Making {
  const choices = choicesOf(row, garment.order);
  const body = bodyOf({ toy, readings });
  const needs = needsOf(row, toy, garment.order);
  const heard = { measures: new Set(needs), readings: lengthsOf(readings) };
  const flags = judge(body, { ...garment.order, choices }, heard);
  const { steps, worksOut } = plan(needs, body);
  const doubts = flags.filter((flag) => !isKept(toy, flag, body));
  return { toy, garment, row, readings, choices, body, steps, worksOut, flags: doubts };
}

/** The measures that are asked for, in their order. */
export const askedFor = (given: Given): readonly MeasureId[] => makingOf(given).steps.map(({ measure }) => measure);

/** The doubts about a measure by what is on the disk this moment, not by what the screen last heard. */
export async function doubtsNow({ toy, garment, row }: Making, measure: MeasureId): Promise<readonly Flag[]> {
  const readings = await readingsOf(toy.id);
  return flagsAt(makingOf({ toy, garment, row, readings }).flags, measure);
}

/** What a garment asks of a toy that looks like this, with its choices as they were made: some are left to the toy's looks. */
export function needsOf(row: Head, looks: Pick<Toy, 'kind' | 'traits'>, order: Order): readonly MeasureId[] {
  const said = Object.fromEntries(saidOf(row, order));
  return row.needs.filter(({ when }) => when?.(said, looks) ?? true).map(({ measure }) => measure);
}

const saidOf = (row: Head, order: Order) =>
  Object.entries(row.choices).map(([name, choice]) => [name, order.choices?.[name] ?? choice.fallback] as const);

/** Every choice of a garment: the maker's, or the usual one; what is left to us starts as the garment says. */
export function choicesOf(row: Head, order: Order): Choices {
  const all = saidOf(row, order);
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

/** Where to go after a step: the next one that is not taken yet, then those left out before. */
export function nextStep(
  { steps, readings }: Pick<Making, 'steps' | 'readings'>,
  measure: MeasureId,
): MeasureId | null {
  const at = steps.findIndex((step) => step.measure === measure);
  return steps.slice(at + 1).find((step) => !readings[step.measure])?.measure ?? null;
}

/** The body, once a single reading is there to judge the rest by. */
export const bodyKnown = ({ body, readings }: Pick<Making, 'body' | 'readings'>): Body | null =>
  Object.keys(readings).length > 0 ? body : null;
