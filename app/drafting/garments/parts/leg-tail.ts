import type { Traits } from '../../../body';
import type { Tails } from '../../heads/choices';
import type { Instead, SeamRow, Unsuited } from '../../rows/rows';
import type { Sizes } from '../../sizes/maker';
import type { Wearer } from '../../sizes/wearer';
import { type LegNames, lapsAtTail, leavesTail } from './leg-names';

/** A tail so many times as thick as its root is a knob: it goes in from the waist, and nothing but its root lies in the slit. */
const KNOB = 2;

type Tail = { readonly sizes: Sizes<'tailLong'>; readonly wearer: Pick<Wearer, 'of'> };

/** It does not come through a slit, or is so thick beside its root. */
export const isKnob = ({ sizes, wearer }: Tail): boolean =>
  wearer.of('tail-girth') > Math.min(2 * sizes.tailLong, KNOB * wearer.of('tail-base-girth'));

/** Through a slit, or from the waist down: what closes above the tail, and the edges beside it. */
export const tailSeams: readonly SeamRow<LegNames>[] = [
  {
    name: 'tail-closure',
    sewn: 2,
    kind: 'folded',
    first: [{ piece: 'leg', edge: 'tail-closure' }],
    second: [],
    when: lapsAtTail,
  },
  {
    name: 'tail',
    sewn: 2,
    kind: 'folded',
    first: (choices) => [
      ...(lapsAtTail(choices) ? [{ piece: 'leg', edge: 'tail-end' } as const] : []),
      { piece: 'leg', edge: 'tail' },
    ],
    second: [],
    when: leavesTail,
  },
];

/** Where there is no tail to be let out, none is; said where that was asked for. */
export const noTail = <C>(tailless: (traits: Traits, choices: C) => boolean) => [
  { choice: 'tail', from: 'auto', to: 'covered', when: tailless } as const,
  ...(['open', 'waist'] as const).map(
    (from) => ({ choice: 'tail', from, to: 'covered', code: 'no-tail', when: tailless }) as const,
  ),
];

/** A tail that is there, and left inside. */
export const tailInside = {
  code: 'tail-inside',
  measures: [],
  told: ({ wearer }: { readonly wearer: Pick<Wearer, 'traits'> }) => (wearer.traits.tail ? {} : null),
  when: ({ tail }: Tails) => tail === 'covered',
} as const;

/** A knob does not come through a slit. */
export const knobToWaist = {
  choice: 'tail',
  from: 'open',
  to: 'waist',
  code: 'tail-to-waist',
  because: 'thick-tail',
  check: ['tail-girth', 'tail-base-girth', 'waist-to-tail'],
  onlyAuto: true,
} as const;

export const tailUnsuited: readonly Unsuited<LegNames>[] = noTail<LegNames['choices']>(({ tail }) => !tail);

export const tailToWaist: Instead<LegNames> = { ...knobToWaist, when: isKnob };
