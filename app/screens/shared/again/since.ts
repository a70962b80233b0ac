import type { MeasureId, Mm } from '../../../body';
import { type Head, USUAL_CLOTH, USUAL_FIT } from '../../../drafting/catalogue';
import type { Made } from '../../../storage';

type Length<N extends string> = { readonly name: N; readonly before: Mm; readonly now: Mm };
export type Chosen = string | boolean | number;

/** What is another way than it was: the garment's finished sizes, and why: numbers, choices, the engine itself. */
export type Since = {
  readonly sizes: readonly Length<string>[];
  readonly measures: readonly Length<MeasureId>[];
  readonly choices: readonly { readonly name: string; readonly before: Chosen; readonly now: Chosen }[];
  /** Null where the same engine drew both. */
  readonly engine: { readonly before: string; readonly now: string } | null;
};

const USUAL = { fit: USUAL_FIT, cloth: USUAL_CLOTH, over: 'nothing' } as const;
/** Less than anybody sews, mm. */
const ALIKE_MM = 0.5;

/** What has changed from one to the other. Numbers of another toy are no change of this one's: they are left out. */
export function since(before: Made, now: Made, head: Pick<Head, 'choices'>, sameToy: boolean): Since {
  return {
    sizes: lengths(before.sizes, now.sizes),
    measures: sameToy ? (lengths(before.measures, now.measures) as readonly Length<MeasureId>[]) : [],
    choices: chosen(before, now, head),
    engine: before.engine === now.engine ? null : { before: before.engine, now: now.engine },
  };
}

export const isSame = ({ sizes, measures, choices }: Since): boolean =>
  sizes.length + measures.length + choices.length === 0;

type Lengths = { readonly [name: string]: Mm | undefined };

function lengths(before: Lengths, now: Lengths): readonly Length<string>[] {
  return Object.entries(now).flatMap(([name, length]) => {
    const earlier = before[name];
    if (earlier === undefined || length === undefined || Math.abs(length - earlier) < ALIKE_MM) return [];
    return [{ name, before: earlier, now: length }];
  });
}

function chosen(before: Made, now: Made, { choices }: Pick<Head, 'choices'>): Since['choices'] {
  const told = Object.entries(choices).map(([name, { fallback }]) => ({
    name: `choice.${name}`,
    before: before.order.choices?.[name] ?? fallback,
    now: now.order.choices?.[name] ?? fallback,
  }));
  const whole = (['fit', 'cloth', 'over'] as const).map((name) => ({
    name,
    before: before.order[name] ?? USUAL[name],
    now: now.order[name] ?? USUAL[name],
  }));
  return [...told, ...whole].filter((each) => each.before !== each.now);
}
