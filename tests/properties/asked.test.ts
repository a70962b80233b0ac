import { expect, test } from 'vitest';
import { type Body, judge, type MeasureId, usualTraits } from '../../app/body';
import { draft, type FullOrder, fullOrder } from '../../app/drafting/draft';
import { type Choice, type Garment, garments } from '../../app/drafting/garments';
import type { Choices } from '../../app/drafting/heads';
import { active } from '../../app/drafting/rows/garment';
import { asking, bodyFrom } from '../../app/measuring';
import { randomCard, seeded } from '../toys/random';

/** Where nothing has changed on so many toys, nothing will. */
const MOST_TOYS = 12;
/** The measure as it is, times these: within reason. */
const VARIED = [1.15, 0.85, 1.08, 0.93];
/**
 * The height moves no line: it is asked as a check on slips of the others, so a slip must be seen beside it. A tail's
 * thickest place matters on a tail that is a tuft, an ear's base where ears are broad and flat, how far apart they are where
 * they nearly meet: none of the random toys is built so.
 */
const VARIED_MORE: { readonly [M in MeasureId]?: readonly number[] } = {
  height: [2.54, 1 / 2.54, 10, 0.1],
  'tail-girth': [3],
  'ear-base': [...VARIED, 2.5],
  'ear-inset': [...VARIED, 0.3],
};

const values = (choice: Choice) =>
  choice.kind === 'one' ? choice.of : choice.kind === 'yes' ? [true, false] : [choice.min, choice.max];

const rows = garments.flatMap((garment) => [
  [garment.id, 'as it comes', '', garment, {}] as const,
  ...Object.entries(garment.choices).flatMap(([name, choice]) =>
    values(choice).map((value) => [garment.id, name, value, garment, { [name]: value }] as const),
  ),
]);

/** Does the choice of this name decide whether a number is asked for? Such are tried with each of its values, the rest as the garment comes. */
function decides(garment: Garment, name: string, id: MeasureId): boolean {
  const choice = garment.choices[name];
  if (!choice) return true;
  const asks = values(choice).map((value) => askedFor(garment, { [name]: value }).includes(id));
  return new Set(asks).size > 1;
}

function askedFor(garment: Garment, choices: Choices): readonly MeasureId[] {
  const { order } = orderOf(garment, choices);
  const looks = { kind: garment.bodies[0] ?? 'upright', traits: usualTraits } as const;
  return asking(looks, active(garment.needs, order.choices)).asked;
}

/** Nothing is asked that changes nothing: a step costs her time, and a number that goes nowhere her trust. */
test.each(rows)(
  '%s, %s %s: each number asked for moves a line, or can be doubted',
  (_, name, _value, garment, choices) => {
    const making = orderOf(garment, choices);
    const kind = garment.bodies[0] ?? 'upright';
    const random = seeded(31);
    let idle: readonly MeasureId[] = [];
    for (let n = 0; n < MOST_TOYS && (n === 0 || idle.length > 0); n++) {
      const body = bodyFrom(randomCard(random, kind, { full: true }));
      const { asked, guessed } = asking(body, active(garment.needs, making.order.choices));
      const told = asTold(body, new Set(asked), guessed);
      const open = n === 0 ? asked.filter((id) => decides(garment, name, id)) : idle;
      const before = open.length > 0 ? outcomeOf(told, making) : '';
      idle = open.filter((id) => !matters(told, before, id, making));
    }
    expect(idle).toEqual([]);
  },
);

function orderOf(garment: Garment, choices: Choices): Making {
  const full = fullOrder({ garment: garment.id, choices }, '2026-01-01');
  if (!full.ok) throw new RangeError(full.fault.where);
  return { garment, order: full.order };
}

type Making = { readonly garment: Garment; readonly order: FullOrder };

/** The body when she took what is asked for and nothing else. */
function asTold(body: Body, asked: ReadonlySet<string>, guessed: readonly MeasureId[]): Body {
  const sizes = Object.fromEntries(
    Object.entries(body.sizes).filter(([id, known]) => asked.has(id) && known.from === 'tape'),
  );
  const readings = Object.fromEntries(Object.entries(sizes).map(([id, known]) => [id, [known.value]]));
  const told = bodyFrom({ toy: { body: body.kind, traits: body.traits }, readings });
  for (const id of guessed) if (told.sizes[id]?.from === 'tape') throw new RangeError(`${id} is quiet, and told`);
  return told;
}

function matters(body: Body, before: string, id: MeasureId, making: Making): boolean {
  const known = body.sizes[id];
  if (known?.from !== 'tape') return false;
  return (VARIED_MORE[id] ?? VARIED).some((times) => {
    const sizes = { ...body.sizes, [id]: { ...known, value: known.value * times } };
    return outcomeOf({ ...body, sizes }, making) !== before;
  });
}

/** What is cut, how it opens and what is told of it; and what is doubted of the numbers. */
function outcomeOf(body: Body, { garment, order }: Making): string {
  const outcome = draft(body, order, garment, '');
  const flags = judge(body, order).filter(({ severity }) => severity !== 'note');
  const doubts = flags.map(({ code, measures }) => `${code} ${measures.join(' ')}`);
  const told = outcome.ok && outcome.draft.flags.map(({ code }) => code);
  return JSON.stringify([outcome.ok && [outcome.draft.pieces, outcome.draft.openings], told, doubts]);
}
